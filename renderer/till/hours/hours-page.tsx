import { ActionIcon, Button, Group, SegmentedControl, Stack } from '@mantine/core';
import { IconChevronLeft, IconChevronRight, IconPlus } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useSearchParams } from 'react-router';
import type { ClockEntry, ClockedHours } from '../../../shared/contract/till/index.ts';
import { useRunningClocks } from '../../common/clock/use-clock.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Page, QueryView } from '../../common/page.tsx';
import { useToday } from '../../common/shop.tsx';
import { EntriesCard } from './entries-card.tsx';
import { EntryDialog } from './entry-dialog.tsx';
import { beside, type HoursPeriod, periodOf, searchOf } from './hours-period.ts';
import { HoursTable } from './hours-table.tsx';
import { RunningCard } from './running-card.tsx';

const REFRESH = 60_000;

/** Who worked when and on what: a week or a day, and where it is corrected. */
export function HoursPage() {
  const today = useToday();
  const format = useFormat();
  const running = useRunningClocks();
  const [search, setSearch] = useSearchParams();
  const [open, setOpen] = useState<ClockEntry | 'new' | null>(null);
  const period = periodOf(search, today);
  const query = useQuery({
    ...deskQuery.till.clockedHours.queryOptions({
      input: { from: period.from, until: period.until },
      refetchInterval: REFRESH,
    }),
    placeholderData: keepPreviousData,
  });
  const show = (span: HoursPeriod['span'], on: string) =>
    setSearch(searchOf(span, on), { replace: true });

  return (
    <Page
      title="Hours"
      description={
        period.span === 'day'
          ? format.date(period.from)
          : `${format.date(period.from)} to ${format.date(period.until)}`
      }
      actions={
        <>
          <SegmentedControl
            aria-label="Show"
            data={[
              { value: 'week', label: 'Week' },
              { value: 'day', label: 'Day' },
            ]}
            value={period.span}
            onChange={(span) =>
              show(span === 'day' ? 'day' : 'week', holds(period, today) ? today : period.from)
            }
          />
          <Group gap={4} wrap="nowrap">
            <ActionIcon
              variant="default"
              size={40}
              aria-label={period.span === 'week' ? 'The week before' : 'The day before'}
              onClick={() => show(period.span, beside(period, -1))}
            >
              <IconChevronLeft size={20} aria-hidden />
            </ActionIcon>
            <Button variant="default" onClick={() => show(period.span, today)}>
              {period.span === 'week' ? 'This week' : 'Today'}
            </Button>
            <ActionIcon
              variant="default"
              size={40}
              aria-label={period.span === 'week' ? 'The week after' : 'The day after'}
              onClick={() => show(period.span, beside(period, 1))}
            >
              <IconChevronRight size={20} aria-hidden />
            </ActionIcon>
          </Group>
          <Button leftSection={<IconPlus size={20} aria-hidden />} onClick={() => setOpen('new')}>
            Enter hours
          </Button>
        </>
      }
    >
      <Stack gap="md">
        <RunningCard entries={running} onCorrect={setOpen} />
        <QueryView query={query}>
          {(hours: ClockedHours) => (
            <>
              <HoursTable hours={hours} onDay={(date) => show('day', date)} />
              <EntriesCard hours={hours} onCorrect={setOpen} />
            </>
          )}
        </QueryView>
      </Stack>
      {open !== null && (
        <EntryDialog entry={open === 'new' ? null : open} onClose={() => setOpen(null)} />
      )}
    </Page>
  );
}

const holds = ({ from, until }: HoursPeriod, date: string): boolean =>
  date >= from && date <= until;
