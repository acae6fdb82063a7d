import { Alert, Text } from '@mantine/core';
import { IconCircleCheck } from '@tabler/icons-react';
import { useSearchParams } from 'react-router';
import { LongWorkId } from '../../../shared/contract/ids.ts';
import { Card } from '../../common/card.tsx';
import { useWork } from './use-work.ts';
import { WorkProgress } from './work-progress.tsx';

/**
 * A back-up that is being brought back from here, as the page's address says, or from another station; when it
 * is done, what came of it.
 * @param elsewhere one that is under way, whoever began it
 */
export function BroughtBack({ elsewhere }: { elsewhere: LongWorkId | null }) {
  const [address] = useSearchParams();
  const id = LongWorkId.safeParse(address.get('broughtBack'));
  const { work } = useWork(id.success ? id.data : elsewhere);
  if (work === undefined) return null;
  if (work.state !== 'done')
    return (
      <Card title="Bringing a back-up back">
        {work.state === 'running' && (
          <Text size="sm" mb="sm" maw="65ch">
            Everything can be looked at meanwhile, and nothing can be written.
          </Text>
        )}
        <WorkProgress work={work} />
      </Card>
    );
  return (
    <Alert
      role="status"
      color="green"
      variant="light"
      icon={<IconCircleCheck aria-hidden />}
      title="The back-up was brought back"
    >
      {work.backUp !== null && <>What was here before is kept as {work.backUp.fileName}.</>}
    </Alert>
  );
}
