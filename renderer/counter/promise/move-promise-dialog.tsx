import { Button, Group, Modal, Radio, Stack, Text, Textarea } from '@mantine/core';
import { type SyntheticEvent, useState } from 'react';
import type { JobDossier, PaperCard } from '../../../shared/contract/counter/index.ts';
import {
  APPROVAL_WAY_LABELS,
  APPROVAL_WAYS,
  type ApprovalWay,
} from '../../../shared/work/vocabulary.ts';
import { DateField } from '../../common/date-field.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { fieldErrors, RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import { NewPapers } from '../amend/new-papers.tsx';

const NOT_YET = 'not-yet';
type Told = ApprovalWay | typeof NOT_YET;
const TOLD: readonly Told[] = [...APPROVAL_WAYS, NOT_YET];

const isTold = (text: string): text is Told => TOLD.some((told) => told === text);

interface Draft {
  promisedFor: string | null;
  reason: string;
  told: Told | null;
}

const EMPTY: Draft = { promisedFor: null, reason: '', told: null };

interface MovePromiseDialogProps {
  job: JobDossier;
  onClose: () => void;
}

/** Promises another day: which, why, and whether the customer knows. */
export function MovePromiseDialog({ job, onClose }: MovePromiseDialogProps) {
  const by = useBy();
  const format = useFormat();
  const [draft, setDraft, clear] = useDraft(`promise.${job.code}`, EMPTY);
  const [papers, setPapers] = useState<PaperCard[]>([]);
  const move = useWrite(
    deskQuery.counter.movePromise.mutationOptions({
      onSuccess: ({ tag }) => {
        clear();
        if (tag === null) onClose();
        else setPapers([tag]);
      },
    }),
  );
  const change = (part: Partial<Draft>) => setDraft((before) => ({ ...before, ...part }));
  const { promisedFor, reason, told } = draft;
  const complete = promisedFor !== null && reason.trim() !== '' && told !== null;
  const submit = (event: SyntheticEvent) => {
    event.preventDefault();
    if (promisedFor !== null && told !== null)
      move.mutate({
        by,
        jobId: job.id,
        promisedFor,
        reason,
        told: told === NOT_YET ? null : told,
      });
  };
  const refusal = move.error === null ? null : refusalOf(move.error);
  const ofDay = refusal?.code === 'PROMISED_IN_THE_PAST' || refusal?.code === 'SAME_DAY';
  return (
    <Modal opened onClose={onClose} title={`Promise another day for ${job.code}`} size="40rem">
      {papers.length > 0 ? (
        <NewPapers papers={papers} onClose={onClose} />
      ) : (
        <form onSubmit={submit} aria-label="Promise another day">
          <Stack gap="sm">
            <Text size="sm" c="dimmed">
              {job.customerName}, {job.machine}.{' '}
              {job.promisedFor === null
                ? 'No day is promised.'
                : `Promised for ${format.date(job.promisedFor)}.`}
            </Text>
            <DateField
              label="Promised for"
              required
              data-autofocus
              value={promisedFor}
              onChange={(day) => change({ promisedFor: day })}
              error={ofDay ? refusal.message : fieldErrors(move.error).promisedFor}
            />
            <Textarea
              label="Why"
              required
              autosize
              minRows={2}
              maxLength={300}
              value={reason}
              error={fieldErrors(move.error).reason}
              onChange={(event) => change({ reason: event.currentTarget.value })}
            />
            <Radio.Group
              label="The customer was told"
              required
              value={told ?? ''}
              onChange={(text) => isTold(text) && change({ told: text })}
            >
              <Group gap="sm" mt={4}>
                {TOLD.map((way) => (
                  <Radio
                    key={way}
                    value={way}
                    label={way === NOT_YET ? 'Not yet' : APPROVAL_WAY_LABELS[way]}
                  />
                ))}
              </Group>
            </Radio.Group>
            {!ofDay && <RefusalAlert error={move.error} brief />}
            <Group justify="flex-end" gap="xs">
              <Button variant="default" onClick={onClose}>
                Cancel
              </Button>
              <Button type="submit" loading={move.isPending} disabled={!complete}>
                Promise this day
              </Button>
            </Group>
          </Stack>
        </form>
      )}
    </Modal>
  );
}
