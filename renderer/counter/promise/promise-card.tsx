import { Alert, Button, Group, Stack, Text } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { IconCalendarRepeat, IconPhoneOutgoing } from '@tabler/icons-react';
import type { JobDossier, MovedPromise } from '../../../shared/contract/counter/index.ts';
import { APPROVAL_WAY_LABELS } from '../../../shared/work/vocabulary.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { MovePromiseDialog } from './move-promise-dialog.tsx';
import { PartsExpected } from './parts-expected.tsx';
import classes from './promise.module.css';
import { TellMenu } from './tell-menu.tsx';

/** What day is promised, how it came to be that one, and whether the customer knows. */
export function PromiseCard({ job }: { job: JobDossier }) {
  const format = useFormat();
  const [moving, dialog] = useDisclosure(false);
  const open = job.state !== 'handed-over';
  const last = job.promises.at(-1);
  return (
    <Card
      title="Promised"
      aside={
        open && (
          <Button
            variant="default"
            size="compact-sm"
            h={32}
            leftSection={<IconCalendarRepeat size={16} aria-hidden />}
            onClick={dialog.open}
          >
            {job.promisedFor === null ? 'Promise a day' : 'Another day'}
          </Button>
        )
      }
    >
      <Stack gap="sm">
        <Text>
          <Text span fw={700}>
            {job.promisedFor === null ? 'No day is promised' : format.date(job.promisedFor)}
          </Text>
          {open && job.promisedFor !== null && `, ${format.fromToday(job.promisedFor)}`}
        </Text>
        {job.customerToTell && last !== undefined && (
          <Alert
            role="status"
            variant="light"
            color="orange"
            icon={<IconPhoneOutgoing aria-hidden />}
            title={`${job.customerName} does not know yet`}
          >
            <Group justify="space-between" gap="xs">
              <Text size="sm">{job.customerPhone || 'No telephone number on record.'}</Text>
              <TellMenu promiseId={last.id} customerName={job.customerName} />
            </Group>
          </Alert>
        )}
        <PartsExpected job={job} />
        {job.promises.length > 0 && <History promises={job.promises} />}
      </Stack>
      {moving && <MovePromiseDialog job={job} onClose={dialog.close} />}
    </Card>
  );
}

/** The last change first. */
function History({ promises }: { promises: readonly MovedPromise[] }) {
  const format = useFormat();
  return (
    <ul className={classes.history} aria-label="How the promise was moved">
      {promises.toReversed().map((promise) => (
        <li key={promise.id}>
          <div className={classes.days}>
            {promise.former === null ? 'No day' : format.shortDate(promise.former)} →{' '}
            {format.shortDate(promise.promisedFor)}
          </div>
          <div>{promise.reason}</div>
          <div className={classes.small}>
            {format.instant(promise.at)}, {promise.by}. {toldWords(promise)}
          </div>
        </li>
      ))}
    </ul>
  );
}

const toldWords = ({ told }: MovedPromise): string =>
  told === null ? 'Not told.' : `Told ${lowered(APPROVAL_WAY_LABELS[told.how])} by ${told.by}.`;

const lowered = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);
