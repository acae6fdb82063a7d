import { Anchor, Text } from '@mantine/core';
import { Link, useNavigate, useSearchParams } from 'react-router';
import { Page } from '../../common/page.tsx';
import { useBy, useStation } from '../../common/station.tsx';
import { BringBack } from './bring-back.tsx';

/** The page on which a back-up is looked at and brought back: one of the list, or a file from elsewhere. */
export const bringBackAddress = (fileName?: string): string =>
  fileName === undefined
    ? '/office/store/bring-back'
    : `/office/store/bring-back?file=${encodeURIComponent(fileName)}`;

export function BringBackPage() {
  const [address] = useSearchParams();
  const navigate = useNavigate();
  const by = useBy();
  const { staff } = useStation();
  const file = address.get('file');
  return (
    <Page
      title="Bring a back-up back"
      description={
        <Anchor inherit component={Link} to="/office/store">
          Back-up and journal
        </Anchor>
      }
    >
      {staff?.role === 'owner' ? (
        <BringBack
          key={file ?? ''}
          by={by}
          listed={file}
          // The address says what is going on, for when the screens have loaded anew.
          onBegun={({ id }) => {
            navigate(`/office/store?broughtBack=${id}`, { replace: true });
            window.scrollTo(0, 0);
          }}
        />
      ) : (
        <Text maw="60ch">
          Only an owner can bring a back-up back, because what is in the shop now makes way for it.
          Let the owner take this station, then open this page again.
        </Text>
      )}
    </Page>
  );
}
