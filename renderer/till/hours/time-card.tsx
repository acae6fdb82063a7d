import { Box, Button, Group, Text } from '@mantine/core';
import { IconClock, IconRowInsertBottom } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { ClockedOnJob, LineInput } from '../../../shared/contract/till/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { Card } from '../../common/card.tsx';
import { lastedWords } from '../../common/clock/time-text.ts';
import { workKindLabel } from '../../common/clock/use-clock.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { useJob } from '../../common/job.tsx';
import { QueryView } from '../../common/page.tsx';
import { useMoney, useShop } from '../../common/shop.tsx';
import { EventList } from '../event-list.tsx';
import type { TakenInstead } from '../lines/take-lines.ts';

/** As many as are read at a glance; all of them stand on the page of hours. */
const SHOWN = 5;

interface TimeCardProps {
  /** Puts the clocked time on the bill that is typed; null once there is nothing to type. */
  onTake: ((lines: readonly LineInput[], instead: TakenInstead) => void) | null;
}

/** What was clocked on the job against what the bill holds, and the way to take it over. */
export function TimeCard({ onTake }: TimeCardProps) {
  const job = useJob();
  const query = useQuery(deskQuery.till.clockedOnJob.queryOptions({ input: { jobId: job.id } }));
  return (
    <Card title="Time on this job" icon={<IconClock size={22} aria-hidden />}>
      <QueryView query={query}>{(time) => <ClockedTime time={time} onTake={onTake} />}</QueryView>
    </Card>
  );
}

function ClockedTime({ time, onTake }: TimeCardProps & { time: ClockedOnJob }) {
  const { locale } = useShop();
  const format = useFormat();
  const money = useMoney();
  const [taken, setTaken] = useState(false);
  const { entries, byKind, minutes, billedHours, lines } = time;
  const standing = entries.filter(({ struckOut }) => !struckOut);
  const hours = (thousandths: number) => `${formatQuantity(thousandths, locale)} h`;
  const take = (instead: TakenInstead) => {
    onTake?.(lines, instead);
    setTaken(true);
  };
  if (standing.length === 0)
    return (
      <Text size="sm" c="dimmed">
        Nobody clocked on to this job yet.
      </Text>
    );
  return (
    <>
      <Text fw={600}>{lastedWords(minutes)} clocked</Text>
      <Text size="sm" c="dimmed">
        {byKind.length > 1 &&
          `${byKind.map((kind) => `${workKindLabel(kind.workKind)} ${lastedWords(kind.minutes)}`).join(', ')}. `}
        {billedHours === 0
          ? 'No labour by the hour is on the bill.'
          : `The bill holds ${hours(billedHours)} of labour.`}
        {standing.some(({ endedAt }) => endedAt === null) &&
          ' A clock still runs: its time is put on the bill once it is stopped.'}
      </Text>
      {onTake !== null && lines.length > 0 && (
        <Group gap="xs" mt="xs">
          <Button
            variant="default"
            leftSection={<IconRowInsertBottom size={18} aria-hidden />}
            onClick={() => take('nothing')}
          >
            Put clocked time on the bill
          </Button>
          {billedHours > 0 && (
            <Button variant="default" onClick={() => take('hourly-labour')}>
              In place of the labour there
            </Button>
          )}
          <Text size="sm" role="status" flex="1 1 14rem">
            {taken
              ? 'It stands in the lines above.'
              : lines
                  .map(
                    ({ quantity, unitPrice }) =>
                      `${formatQuantity(quantity, locale)} h at ${money(unitPrice)}`,
                  )
                  .join(', ')}
          </Text>
        </Group>
      )}
      <Box mt="sm">
        <EventList
          label="Clocked time, newest first"
          events={standing
            .toReversed()
            .slice(0, SHOWN)
            .map((entry) => ({
              key: entry.id,
              title: `${entry.staffName}, ${lastedWords(entry.minutes)}`,
              detail: `${[entry.workKind, format.instant(entry.startedAt)].filter(Boolean).join(', ')} ${
                entry.endedAt === null ? 'and still on it' : `to ${format.time(entry.endedAt)}`
              }.`,
            }))}
          empty=""
        />
      </Box>
      {standing.length > SHOWN && (
        <Text size="sm" c="dimmed">
          and {standing.length - SHOWN} more
        </Text>
      )}
    </>
  );
}
