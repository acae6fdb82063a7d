import { Button, Group, Text } from '@mantine/core';
import { IconClockPause, IconClockPlay } from '@tabler/icons-react';
import type { ClockEntry } from '../../../shared/contract/till/index.ts';
import { Card } from '../../common/card.tsx';
import { StopForgotten } from '../../common/clock/stop-forgotten.tsx';
import { lastedWords } from '../../common/clock/time-text.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { EntryWhat } from './entry-what.tsx';
import classes from './hours.module.css';

interface RunningCardProps {
  entries: readonly ClockEntry[];
  onCorrect: (entry: ClockEntry) => void;
}

/** Clocks that run now, forgotten ones with the question when the work stopped. */
export function RunningCard({ entries, onCorrect }: RunningCardProps) {
  const by = useBy();
  const format = useFormat();
  const off = useWrite(deskQuery.till.clockOff.mutationOptions());
  return (
    <Card
      title="Running now"
      icon={<IconClockPlay size={22} aria-hidden />}
      flush
      aside={<Text fw={700}>{entries.length}</Text>}
    >
      {entries.length === 0 ? (
        <Text c="dimmed" size="sm" px="md" pb="md">
          No clock runs. On a job’s page, ‘Clock on’ starts yours.
        </Text>
      ) : (
        <ul className={classes.rows}>
          {entries.map((entry) => (
            <li key={entry.id} className={classes.entry}>
              <span className={classes.who}>
                <span className={classes.name}>{entry.staffName}</span>
                <span className={classes.quiet}>
                  since{' '}
                  {entry.forgotten === 'earlier-day'
                    ? format.instant(entry.startedAt)
                    : format.time(entry.startedAt)}
                </span>
              </span>
              <EntryWhat entry={entry} />
              <span className={classes.lasted}>{lastedWords(entry.minutes)}</span>
              {entry.forgotten === null ? (
                <Group gap="xs" wrap="nowrap" justify="flex-end">
                  <Button variant="subtle" size="sm" onClick={() => onCorrect(entry)}>
                    Correct
                  </Button>
                  <Button
                    variant="default"
                    size="sm"
                    leftSection={<IconClockPause size={18} aria-hidden />}
                    onClick={() => off.mutate({ by, entryId: entry.id })}
                    aria-label={`Clock ${entry.staffName} off`}
                  >
                    Clock off
                  </Button>
                </Group>
              ) : (
                <div className={classes.question}>
                  <Text size="sm" fw={600} mb={4}>
                    Probably forgotten. Ask {entry.staffName} when the work stopped.
                  </Text>
                  <StopForgotten entry={entry} />
                </div>
              )}
            </li>
          ))}
        </ul>
      )}
      <RefusalAlert error={off.error} />
    </Card>
  );
}
