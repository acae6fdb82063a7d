import { Button, Group, Modal, Stack, Text } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { Specification } from '../../shared/contract/specbook.ts';
import { FEATURE_LABELS } from '../../shared/work/features.ts';
import { deskQuery } from '../common/desk.ts';
import { printedLimits } from '../common/measure/measure-words.ts';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useStation } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';
import { NO_SOURCE, SourceChoice, type SourceDraft } from './source-choice.tsx';
import { sourceWords } from './specification-words.ts';
import { useSource } from './use-source.ts';

/** Somebody else checked the figure against its source, or another source says the same. */
export function ConfirmForm({
  specification,
  onClose,
}: {
  readonly specification: Specification | null;
  readonly onClose: () => void;
}) {
  return (
    <Modal
      opened={specification !== null}
      onClose={onClose}
      title="Confirm a specification"
      size="lg"
    >
      {specification !== null && <Fields specification={specification} onClose={onClose} />}
    </Modal>
  );
}

function Fields({
  specification,
  onClose,
}: {
  readonly specification: Specification;
  readonly onClose: () => void;
}) {
  const { staff } = useStation();
  const [draft, setDraft] = useState<SourceDraft>({
    ...NO_SOURCE,
    sourceId: specification.source.id,
    page: specification.page,
  });
  const change = (part: Partial<SourceDraft>) => setDraft((before) => ({ ...before, ...part }));
  const source = useSource((sourceId) => change({ sourceId }));
  const confirm = useWrite(deskQuery.specbook.confirm.mutationOptions());
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const sourceId = await source.settle(draft);
    if (sourceId === null || staff === null) return;
    confirm.mutate(
      { by: staff.id, specificationId: specification.id, sourceId, page: draft.page },
      { onSuccess: onClose },
    );
  };
  const refusal = source.error ?? confirm.error;
  return (
    <form onSubmit={submit}>
      <Stack>
        <Text>
          {FEATURE_LABELS[specification.feature]}: <strong>{printedLimits(specification)}</strong>,
          entered by {specification.enteredBy} from{' '}
          {sourceWords(specification.source, specification.page)}.
        </Text>
        <Text>
          {staff?.name} vouches for having read the same figure in the source below. Two people, or
          two independent sources, make it confirmed.
        </Text>
        <SourceChoice draft={draft} onChange={change} errors={fieldErrors(refusal)} />
        <RefusalAlert error={refusal} />
        <Group justify="flex-end">
          <Button variant="default" onClick={onClose}>
            Close
          </Button>
          <Button type="submit" data-autofocus loading={source.pending || confirm.isPending}>
            I read the same there
          </Button>
        </Group>
      </Stack>
    </form>
  );
}
