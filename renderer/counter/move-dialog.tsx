import { Anchor, Button, Checkbox, Group, List, Modal, Stack, Text, Textarea } from '@mantine/core';
import type { SyntheticEvent } from 'react';
import { Link } from 'react-router';
import { z } from 'zod';
import type { JobDossier } from '../../shared/contract/counter/index.ts';
import { JOB_STATE_LABELS, type JobState } from '../../shared/work/counter/job-state.ts';
import { deskQuery } from '../common/desk.ts';
import { RefusalAlert, refusalOf } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useDraft } from '../common/use-draft.ts';
import { useWrite } from '../common/use-write.ts';

const OpenPoints = z.object({ open: z.array(z.string()) });

/** What is asked when a job is moved there. */
const QUESTIONS: Partial<Record<JobState, string>> = {
  'waits-for-parts': 'Which parts, and when they are expected',
  stopped: 'Why the work stops',
  'customer-to-decide': 'What the customer has to decide',
};

interface MoveDialogProps {
  job: JobDossier;
  to: JobState;
  onClose: () => void;
}

/** Moves a job, with a word on why; some moves must have one. */
export function MoveDialog({ job, to, onClose }: MoveDialogProps) {
  const by = useBy();
  const [draft, setDraft, clear] = useDraft(`move.${job.code}.${to}`, {
    note: '',
    doNotRun: false,
  });
  const move = useWrite(
    deskQuery.counter.moveJob.mutationOptions({
      onSuccess: () => {
        clear();
        onClose();
      },
    }),
  );
  const submit = (event: SyntheticEvent) => {
    event.preventDefault();
    move.mutate({ by, jobId: job.id, to, ...draft });
  };
  const wanted = move.error !== null && refusalOf(move.error).code === 'REASON_WANTED';
  return (
    <Modal
      opened
      onClose={onClose}
      title={`Move ${job.code} to ‘${JOB_STATE_LABELS[to]}’`}
      size="34rem"
    >
      <form onSubmit={submit}>
        <Stack gap="sm">
          <Text size="sm" c="dimmed">
            <bdi>{job.customerName}</bdi>, {job.machine}. It stands at ‘
            {JOB_STATE_LABELS[job.state]}’ now.
          </Text>
          <Textarea
            label={QUESTIONS[to] ?? 'Why'}
            description="A few words; they stand with the job. Ctrl+Enter moves it."
            data-autofocus
            value={draft.note}
            error={wanted}
            maxLength={500}
            onChange={(event) => setDraft({ ...draft, note: event.currentTarget.value })}
            onKeyDown={(event) => {
              if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) submit(event);
            }}
          />
          {to === 'stopped' && (
            <Checkbox
              label="Unsafe: nobody may run it as it stands"
              description="“DO NOT RUN” and why is printed on a new tag and on the work order."
              checked={draft.doNotRun}
              onChange={(event) => setDraft({ ...draft, doNotRun: event.currentTarget.checked })}
            />
          )}
          <RefusalAlert error={move.error} />
          <StillOpen error={move.error} job={job} onLeave={onClose} />
          <Group justify="flex-end" gap="xs">
            <Button variant="default" onClick={onClose}>
              Cancel
            </Button>
            <Button type="submit" loading={move.isPending}>
              Move to ‘{JOB_STATE_LABELS[to]}’
            </Button>
          </Group>
        </Stack>
      </form>
    </Modal>
  );
}

interface StillOpenProps {
  error: unknown;
  job: JobDossier;
  onLeave: () => void;
}

/** The hold points that keep a job back, by name, and the way to them. */
function StillOpen({ error, job, onLeave }: StillOpenProps) {
  if (error === null || refusalOf(error).code !== 'HOLD_POINT_OPEN') return null;
  const points = OpenPoints.safeParse(refusalOf(error).data);
  return (
    <div>
      {points.success && (
        <List size="sm" mb="xs">
          {points.data.open.map((label) => (
            <List.Item key={label}>{label}</List.Item>
          ))}
        </List>
      )}
      <Anchor component={Link} to={`/job/${job.code}/bench/build`} onClick={onLeave}>
        To the build
      </Anchor>
    </div>
  );
}
