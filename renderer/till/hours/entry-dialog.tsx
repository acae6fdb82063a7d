import { Button, Group, Modal, Select, SimpleGrid, Stack, Text, TextInput } from '@mantine/core';
import { type SyntheticEvent, useState } from 'react';
import { type JobId, StaffId } from '../../../shared/contract/ids.ts';
import type { ClockEntry } from '../../../shared/contract/till/index.ts';
import { spanLasted } from '../../../shared/work/till/clock.ts';
import { TimeField } from '../../common/clock/time-field.tsx';
import { instantAt, lastedWords, spanAt, wallAt } from '../../common/clock/time-text.ts';
import { useWorkKinds, workKindLabel } from '../../common/clock/use-clock.ts';
import { DateField } from '../../common/date-field.tsx';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useShop, useToday } from '../../common/shop.tsx';
import { useStation } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { JobField } from '../../parts/job-field.tsx';

interface EntryDialogProps {
  /** The entry that is corrected; null to enter hours afterwards. */
  entry: ClockEntry | null;
  onClose: () => void;
}

/** Enters hours that nobody clocked, corrects an entry, or strikes it out; each with a reason. */
export function EntryDialog({ entry, onClose }: EntryDialogProps) {
  const { staff, people } = useStation();
  const { timeZone } = useShop();
  const today = useToday();
  const kinds = useWorkKinds();
  const began = entry === null ? null : wallAt(entry.startedAt, timeZone);
  const [staffId, setStaffId] = useState<string>(entry?.staffId ?? staff?.id ?? '');
  const [jobId, setJobId] = useState<JobId | null>(entry?.jobId ?? null);
  const [otherJob, setOtherJob] = useState(entry === null);
  const [workKind, setWorkKind] = useState(entry?.workKind ?? '');
  const [date, setDate] = useState<string | null>(began?.date ?? today);
  const [from, setFrom] = useState<string | null>(began?.time ?? null);
  const [to, setTo] = useState<string | null>(
    entry === null || entry.endedAt === null ? null : wallAt(entry.endedAt, timeZone).time,
  );
  const [reason, setReason] = useState('');
  const [asked, setAsked] = useState(false);

  const done = { onSuccess: onClose };
  const enter = useWrite(deskQuery.till.enterHours.mutationOptions(done));
  const correct = useWrite(deskQuery.till.correctHours.mutationOptions(done));
  const strike = useWrite(deskQuery.till.strikeOutHours.mutationOptions(done));
  const error = enter.error ?? correct.error ?? strike.error;
  const errors = fieldErrors(error);
  const running = entry !== null && entry.endedAt === null;
  const missing = (gone: boolean, words: string) => (asked && gone ? words : undefined);

  const span =
    date === null || from === null || to === null ? null : spanAt({ date, from, to }, timeZone);
  const lasted = span === null ? null : spanLasted(span, span.endedAt);
  const by = staff?.id;

  const clear = () => {
    setAsked(true);
    for (const each of [enter, correct, strike]) each.reset();
  };
  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    clear();
    if (
      by === undefined ||
      jobId === null ||
      date === null ||
      from === null ||
      reason.trim() === ''
    )
      return;
    if (entry === null) {
      if (span !== null)
        enter.mutate({ by, staffId: StaffId.parse(staffId), jobId, workKind, ...span, reason });
    } else if (span !== null || running) {
      const times = span ?? { startedAt: instantAt(date, from, timeZone), endedAt: null };
      correct.mutate({ by, entryId: entry.id, jobId, workKind, ...times, reason });
    }
  };
  const strikeOut = () => {
    clear();
    if (by === undefined || entry === null || reason.trim() === '') return;
    strike.mutate({ by, entryId: entry.id, reason });
  };

  const choices = [...new Set([...kinds, '', workKind])];
  return (
    <Modal
      opened
      onClose={onClose}
      title={entry === null ? 'Enter hours' : `Correct hours of ${entry.staffName}`}
      size="38rem"
    >
      <form onSubmit={send} noValidate>
        <Stack gap="sm">
          {entry === null && (
            <Select
              label="Person"
              data={people.map(({ id, name }) => ({ value: id, label: name }))}
              value={staffId}
              onChange={(id) => setStaffId(id ?? '')}
              error={errors.staffId}
            />
          )}
          {otherJob ? (
            <JobField
              label="Job"
              value={jobId}
              onChange={setJobId}
              error={errors.jobId ?? missing(jobId === null, 'Say which job.')}
            />
          ) : (
            <Group justify="space-between" wrap="nowrap">
              <Text>
                {entry?.jobCode}, <bdi>{entry?.customerName}</bdi>, {entry?.machine}
              </Text>
              <Button
                variant="default"
                size="sm"
                flex="none"
                onClick={() => {
                  setJobId(null);
                  setOtherJob(true);
                }}
              >
                Another job
              </Button>
            </Group>
          )}
          {choices.length > 1 && (
            <Select
              label="Kind of work"
              data={choices.map((kind) => ({ value: kind, label: workKindLabel(kind) }))}
              value={workKind}
              onChange={(kind) => setWorkKind(kind ?? '')}
              error={errors.workKind}
            />
          )}
          <SimpleGrid cols={{ base: 1, xs: 3 }} spacing="sm">
            <DateField
              label="Day"
              value={date}
              onChange={setDate}
              error={missing(date === null, 'Say which day.')}
            />
            <TimeField
              label="From"
              value={from}
              onChange={setFrom}
              error={errors.startedAt ?? missing(from === null, 'Say when it began.')}
            />
            <TimeField
              label="To"
              value={to}
              onChange={setTo}
              after={from}
              error={errors.endedAt ?? missing(to === null && !running, 'Say when it ended.')}
            />
          </SimpleGrid>
          <Text size="sm" fw={500} role="status">
            {lasted === null
              ? running
                ? 'It goes on running unless you say when it ended.'
                : ''
              : `${lastedWords(lasted)}${from !== null && to !== null && to <= from ? ', into the next day' : ''}`}
          </Text>
          <TextInput
            label="Reason"
            required
            maxLength={300}
            value={reason}
            onChange={(event) => setReason(event.currentTarget.value)}
            error={errors.reason ?? missing(reason.trim() === '', 'Say why in a few words.')}
          />
          <RefusalAlert error={error} brief />
          <Text size="xs" c="dimmed">
            What stood before stays on record, with who changed it and why.
          </Text>
          <Group justify={entry === null ? 'flex-end' : 'space-between'} gap="xs">
            {entry !== null && (
              <Button variant="subtle" color="red" loading={strike.isPending} onClick={strikeOut}>
                Strike it out
              </Button>
            )}
            <Group gap="xs">
              <Button variant="default" onClick={onClose}>
                Cancel
              </Button>
              <Button type="submit" loading={enter.isPending || correct.isPending}>
                {entry === null ? 'Enter the hours' : 'Correct it'}
              </Button>
            </Group>
          </Group>
        </Stack>
      </form>
    </Modal>
  );
}
