import { Button, Group, Modal, Stack, Text, Textarea } from '@mantine/core';
import type { FormEvent } from 'react';
import type { HoldPointOnSheet } from '../../shared/contract/bench/index.ts';
import type { JobId } from '../../shared/contract/ids.ts';
import { deskQuery } from '../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useDraft } from '../common/use-draft.ts';
import { useWrite } from '../common/use-write.ts';

export interface ReasonFor {
  readonly point: Pick<HoldPointOnSheet, 'key' | 'label' | 'caution'>;
  readonly what: 'override' | 'reopen';
}

const WORDS = {
  override: {
    title: 'Override a step of the build',
    label: 'Why this may go on without it',
    button: 'Override in my name',
  },
  reopen: {
    title: 'Reopen a step of the build',
    label: 'Why it has to be seen again',
    button: 'Reopen',
  },
} as const;

/** Asks for the reason in writing, without which a point is neither overridden nor reopened. */
export function HoldPointReason({
  jobId,
  wanted,
  onClose,
  onWritten,
}: {
  readonly jobId: JobId;
  readonly wanted: ReasonFor | null;
  readonly onClose: () => void;
  readonly onWritten?: (() => void) | undefined;
}) {
  return (
    <Modal
      opened={wanted !== null}
      onClose={onClose}
      title={wanted === null ? '' : WORDS[wanted.what].title}
      size="lg"
    >
      {wanted !== null && (
        <ReasonForm jobId={jobId} wanted={wanted} onClose={onClose} onWritten={onWritten} />
      )}
    </Modal>
  );
}

function ReasonForm({
  jobId,
  wanted,
  onClose,
  onWritten,
}: {
  readonly jobId: JobId;
  readonly wanted: ReasonFor;
  readonly onClose: () => void;
  readonly onWritten: (() => void) | undefined;
}) {
  const { point, what } = wanted;
  const words = WORDS[what];
  const by = useBy();
  const [draft, setDraft, clear] = useDraft(`hold-point.${jobId}.${point.key}.${what}`, {
    reason: '',
  });
  // With the write itself: once the step stands otherwise, this form is gone and would not be told.
  const onSuccess = () => {
    clear();
    onClose();
    onWritten?.();
  };
  const override = useWrite(deskQuery.bench.overrideHoldPoint.mutationOptions({ onSuccess }));
  const reopen = useWrite(deskQuery.bench.reopenHoldPoint.mutationOptions({ onSuccess }));
  const write = what === 'override' ? override : reopen;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    write.mutate({ by, jobId, key: point.key, reason: draft.reason });
  };
  return (
    <form onSubmit={submit}>
      <Stack>
        <Text fw={600}>{point.label}</Text>
        {point.caution !== '' && <Text>{point.caution}</Text>}
        <Textarea
          data-autofocus
          label={words.label}
          description="It stands on the work order with your name."
          autosize
          minRows={3}
          maxLength={500}
          value={draft.reason}
          onChange={(event) => setDraft({ reason: event.currentTarget.value })}
          error={fieldErrors(write.error).reason}
        />
        {write.isError && <RefusalAlert error={write.error} brief />}
        <Group justify="flex-end">
          <Button variant="default" size="md" h={48} onClick={onClose}>
            Leave it
          </Button>
          <Button type="submit" size="md" h={48} loading={write.isPending}>
            {words.button}
          </Button>
        </Group>
      </Stack>
    </form>
  );
}
