import {
  Button,
  Group,
  Modal,
  NativeSelect,
  SimpleGrid,
  Stack,
  Text,
  TextInput,
} from '@mantine/core';
import { type FormEvent, useState } from 'react';
import { z } from 'zod';
import { SPECIFICATION_UNITS, type Specification } from '../../shared/contract/specbook.ts';
import { dimensionOf, unitLabel } from '../../shared/trade/index.ts';
import { FEATURE_LABELS, FEATURE_UNITS } from '../../shared/work/features.ts';
import { deskQuery } from '../common/desk.ts';
import { printedLimits } from '../common/measure/measure-words.ts';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';
import { NO_SOURCE, SourceChoice, type SourceDraft } from './source-choice.tsx';
import type { BookUnit } from './specification-draft.ts';
import { sourceWords } from './specification-words.ts';
import { useSource } from './use-source.ts';

/** Another source prints other figures: they are written down beside the ones in the book. */
export function ContradictForm({
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
      title="Another source prints other figures"
      size="lg"
    >
      {specification !== null && <Fields specification={specification} onClose={onClose} />}
    </Modal>
  );
}

interface OtherFigures extends SourceDraft {
  low: string;
  high: string;
  unit: BookUnit;
}

const Unit = z.enum(SPECIFICATION_UNITS);

function Fields({
  specification,
  onClose,
}: {
  readonly specification: Specification;
  readonly onClose: () => void;
}) {
  const by = useBy();
  const [tried, setTried] = useState(false);
  const [draft, setDraft] = useState<OtherFigures>({
    ...NO_SOURCE,
    low: '',
    high: '',
    unit: specification.unit,
  });
  const change = (part: Partial<OtherFigures>) => setDraft((before) => ({ ...before, ...part }));
  const source = useSource((sourceId) => change({ sourceId }));
  const contradict = useWrite(deskQuery.specbook.contradict.mutationOptions());
  const refusal = source.error ?? contradict.error;
  const errors: Record<string, string> = {
    ...(tried && draft.sourceId === '' ? { sourceId: 'Choose a source, or write one out.' } : {}),
    ...fieldErrors(refusal),
  };
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    const sourceId = await source.settle(draft);
    if (sourceId === null) return;
    const { low, high, unit, page } = draft;
    contradict.mutate(
      { by, specificationId: specification.id, sourceId, page, low, high, unit },
      { onSuccess: onClose },
    );
  };
  return (
    <form onSubmit={submit}>
      <Stack>
        <Text>
          {FEATURE_LABELS[specification.feature]} in the book:{' '}
          <strong>{printedLimits(specification)}</strong>, from{' '}
          {sourceWords(specification.source, specification.page)}. The other source’s figures are
          shown beside these; neither is changed.
        </Text>
        <SimpleGrid cols={{ base: 1, xs: 3 }}>
          <TextInput
            label="Low"
            description="or empty"
            inputMode="decimal"
            data-autofocus
            value={draft.low}
            onChange={(event) => change({ low: event.currentTarget.value })}
            error={errors.low}
          />
          <TextInput
            label="High"
            description="or empty"
            inputMode="decimal"
            value={draft.high}
            onChange={(event) => change({ high: event.currentTarget.value })}
            error={errors.high}
          />
          <NativeSelect
            size="md"
            label="Unit"
            description="as printed there"
            data={SPECIFICATION_UNITS.filter(
              (each) => dimensionOf(each) === dimensionOf(FEATURE_UNITS[specification.feature]),
            ).map((each) => ({ value: each, label: unitLabel(each) }))}
            value={draft.unit}
            onChange={(event) => change({ unit: Unit.parse(event.currentTarget.value) })}
            error={errors.unit}
          />
        </SimpleGrid>
        <SourceChoice draft={draft} onChange={change} errors={errors} />
        <RefusalAlert error={refusal} />
        <Group justify="flex-end">
          <Button variant="default" onClick={onClose}>
            Close
          </Button>
          <Button type="submit" loading={source.pending || contradict.isPending}>
            Put them beside each other
          </Button>
        </Group>
      </Stack>
    </form>
  );
}
