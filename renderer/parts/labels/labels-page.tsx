import { Button } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { IconAdjustments } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useEffect } from 'react';
import { useSearchParams } from 'react-router';
import { PartId } from '../../../shared/contract/ids.ts';
import { desk, deskQuery } from '../../common/desk.ts';
import { Page, QueryView } from '../../common/page.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { ChosenParts } from './chosen-parts.tsx';
import { type Wanted, withParts } from './label-list.ts';
import classes from './labels.module.css';
import { PrintLabels } from './print-labels.tsx';
import { SettingsDialog } from './settings-dialog.tsx';

/** Labels for shelves and for parts: which, how many, on what. */
export function LabelsPage() {
  const [address, setAddress] = useSearchParams();
  const [{ list }, setDraft, clear] = useDraft<{ list: Wanted[] }>('parts.labels', { list: [] });
  const [setting, dialog] = useDisclosure(false);
  const settings = useQuery(deskQuery.parts.labelSettings.queryOptions({ input: {} }));
  const asked = address.get('part');

  // A part's page leads here with the part in the address; it is taken onto the list once.
  useEffect(() => {
    const id = PartId.safeParse(asked);
    if (!id.success) return;
    setAddress({}, { replace: true });
    desk.parts.part({ id: id.data }).then(
      ({ part }) => setDraft((draft) => ({ list: withParts(draft.list, [part]) })),
      () => undefined,
    );
  }, [asked, setAddress, setDraft]);

  return (
    <Page
      title="Labels"
      description="With the part’s number as bars or as a QR code, so that a reader finds it."
      actions={
        <Button
          variant="default"
          leftSection={<IconAdjustments size={18} aria-hidden />}
          onClick={dialog.open}
        >
          Sizes and symbol
        </Button>
      }
    >
      <QueryView query={settings}>
        {(laidOut) => (
          <>
            <div className={classes.columns}>
              <ChosenParts
                list={list}
                onChange={(change) => setDraft((draft) => ({ list: change(draft.list) }))}
                onClear={clear}
              />
              <PrintLabels list={list} settings={laidOut} />
            </div>
            {setting && <SettingsDialog settings={laidOut} onClose={dialog.close} />}
          </>
        )}
      </QueryView>
    </Page>
  );
}
