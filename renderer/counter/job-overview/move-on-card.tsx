import { Button, Group, Stack, Text, TextInput } from '@mantine/core';
import { IconArrowRight } from '@tabler/icons-react';
import { useRef, useState } from 'react';
import type { JobDossier } from '../../../shared/contract/counter.ts';
import {
  JOB_STATE_LABELS,
  type JobState,
  MOVES_BY_ACTION,
  WAITS_ON_LABELS,
} from '../../../shared/work/job-state.ts';
import { StateBadge } from '../../common/badges.tsx';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';

/** Moves that are chosen here; the go-ahead and the handover are made by their own action. */
const movesOffered = (job: JobDossier): JobState[] =>
  job.nextStates.filter(
    (to) => !MOVES_BY_ACTION.includes(to) || (job.state === 'waits-for-parts' && to === 'go-ahead'),
  );

/** Where the job stands, whose move it is, and where it may go from here. */
export function MoveOnCard({ job }: { job: JobDossier }) {
  const format = useFormat();
  const by = useBy();
  const [note, setNote] = useState('');
  const field = useRef<HTMLInputElement>(null);
  const move = useWrite(
    deskQuery.counter.moveJob.mutationOptions({
      onSuccess: () => setNote(''),
      onError: (error) => {
        if (refusalOf(error).code === 'REASON_WANTED') field.current?.focus();
      },
    }),
  );
  const reasonWanted = move.error !== null && refusalOf(move.error).code === 'REASON_WANTED';
  const offered = movesOffered(job);
  return (
    <Card title="Where it stands">
      <Stack gap="xs">
        <Group gap="xs">
          <StateBadge state={job.state} />
          <Text size="sm">for {format.since(job.stateSince)}</Text>
        </Group>
        <Text size="sm">
          {job.waitsOn === 'nobody'
            ? 'Waits on nobody.'
            : `Waits on: ${WAITS_ON_LABELS[job.waitsOn].toLowerCase()}.`}
        </Text>
        {job.stateNote !== '' && <Text style={{ overflowWrap: 'anywhere' }}>{job.stateNote}</Text>}
        {offered.length > 0 && (
          <>
            <TextInput
              ref={field}
              label="Note for the move"
              description="What it waits for and until when, or why it stops."
              value={note}
              onChange={(event) => {
                setNote(event.currentTarget.value);
                if (reasonWanted) move.reset();
              }}
              error={reasonWanted ? refusalOf(move.error).message : undefined}
              maxLength={500}
              autoComplete="off"
            />
            <Group gap="xs">
              {offered.map((to) => (
                <Button
                  key={to}
                  variant="default"
                  loading={move.isPending && move.variables.to === to}
                  disabled={move.isPending}
                  leftSection={<IconArrowRight size={16} aria-hidden />}
                  aria-label={`Move to: ${JOB_STATE_LABELS[to]}`}
                  onClick={() => move.mutate({ by, jobId: job.id, to, note })}
                >
                  {JOB_STATE_LABELS[to]}
                </Button>
              ))}
            </Group>
          </>
        )}
        <RefusalAlert error={reasonWanted ? null : move.error} />
      </Stack>
    </Card>
  );
}
