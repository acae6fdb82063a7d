import {
  Anchor,
  Button,
  Group,
  Modal,
  NativeSelect,
  SimpleGrid,
  Stack,
  Text,
  Textarea,
  TextInput,
} from '@mantine/core';
import { isDefinedError } from '@orpc/client';
import { type FormEvent, useState } from 'react';
import { Link } from 'react-router';
import { z } from 'zod';
import type { EngineModelId } from '../../shared/contract/ids.ts';
import type { EngineModel } from '../../shared/contract/specbook.ts';
import { display, parseReading, sweptVolume, toBase } from '../../shared/trade/index.ts';
import { CYCLE_LABELS, CYCLES, type Cycle } from '../../shared/work/vocabulary.ts';
import { deskQuery } from '../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useDraft } from '../common/use-draft.ts';
import { useWrite } from '../common/use-write.ts';

interface ModelFormProps {
  readonly opened: boolean;
  /** What the plate says, to begin with. */
  readonly make: string;
  readonly model: string;
  /** The family, for a variant: what differs from it is written down, and nothing else. */
  readonly family?: EngineModel;
  readonly onClose: () => void;
  readonly onAdded: (id: EngineModelId) => void;
}

interface ModelDraft {
  make: string;
  model: string;
  cycle: Cycle;
  cylinders: string;
  bore: string;
  stroke: string;
  note: string;
}

const CycleChoice = z.enum(CYCLES);

/** Adds an engine model to the spec book. */
export function ModelForm(props: ModelFormProps) {
  return (
    <Modal
      opened={props.opened}
      onClose={props.onClose}
      title={
        props.family === undefined
          ? 'Add an engine model'
          : `Add a variant of ${props.family.make} ${props.family.model}`
      }
      size="lg"
    >
      {props.opened && <Fields {...props} />}
    </Modal>
  );
}

function Fields({ make, model, family, onClose, onAdded }: ModelFormProps) {
  const by = useBy();
  const [tried, setTried] = useState(false);
  const [draft, setDraft, clear] = useDraft<ModelDraft>(
    `engine-model.${family?.id ?? ''}.${make}.${model}`,
    {
      make,
      model,
      cycle: family?.cycle ?? 'four-stroke',
      cylinders: String(family?.cylinders ?? 1),
      bore: '',
      stroke: '',
      note: '',
    },
  );
  const add = useWrite(deskQuery.specbook.addModel.mutationOptions());
  const errors = fieldErrors(add.error);
  const set = (change: Partial<ModelDraft>) => setDraft({ ...draft, ...change });
  const bore = maybeLength(draft.bore);
  const stroke = maybeLength(draft.stroke);
  const taken =
    isDefinedError(add.error) && add.error.code === 'MODEL_TAKEN'
      ? add.error.data.engineModelId
      : null;

  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (bore === undefined || stroke === undefined) return;
    add.mutate(
      {
        by,
        make: draft.make,
        model: draft.model,
        cycle: draft.cycle,
        cylinders: Number(draft.cylinders),
        bore,
        stroke,
        note: draft.note,
        variantOf: family?.id ?? null,
      },
      {
        onSuccess: ({ id }) => {
          clear();
          onAdded(id);
        },
      },
    );
  };
  const length = (key: 'bore' | 'stroke', label: string, value: number | null | undefined) => (
    <TextInput
      label={label}
      inputMode="decimal"
      value={draft[key]}
      onChange={(event) => set({ [key]: event.currentTarget.value })}
      error={
        tried && value === undefined
          ? 'Type a length, such as 54 or 2-1/8 in, or nothing.'
          : errors[key]
      }
    />
  );
  return (
    <form onSubmit={submit} onInvalidCapture={() => setTried(true)}>
      <Stack>
        <SimpleGrid cols={2}>
          <TextInput
            data-autofocus
            label="Make"
            required
            value={draft.make}
            onChange={(event) => set({ make: event.currentTarget.value })}
            error={errors.make}
          />
          <TextInput
            label="Model"
            required
            value={draft.model}
            onChange={(event) => set({ model: event.currentTarget.value })}
            error={errors.model}
          />
          <NativeSelect
            size="md"
            label="Cycle"
            disabled={family !== undefined}
            data={CYCLES.map((cycle) => ({ value: cycle, label: CYCLE_LABELS[cycle] }))}
            value={draft.cycle}
            onChange={(event) => set({ cycle: CycleChoice.parse(event.currentTarget.value) })}
          />
          <NativeSelect
            size="md"
            label="Cylinders"
            data={['1', '2', '3', '4']}
            value={draft.cylinders}
            onChange={(event) => set({ cylinders: event.currentTarget.value })}
          />
          {length('bore', 'Nominal bore, mm', bore)}
          {length('stroke', 'Stroke, mm', stroke)}
        </SimpleGrid>
        <Text size="sm" c="dimmed" aria-live="polite">
          {sweptWords(bore, stroke, Number(draft.cylinders), family)}
        </Text>
        <Textarea
          label="Note"
          description="What tells it from its relatives: where the plate is, what a suffix means"
          autosize
          minRows={2}
          value={draft.note}
          onChange={(event) => set({ note: event.currentTarget.value })}
          error={errors.note}
        />
        {add.isError && <RefusalAlert error={add.error} />}
        {taken !== null && (
          <Anchor component={Link} to={`/spec-book/${taken}`}>
            Open that entry
          </Anchor>
        )}
        <Group justify="flex-end">
          <Button variant="default" onClick={onClose}>
            Close
          </Button>
          <Button type="submit" loading={add.isPending}>
            Add to the spec book
          </Button>
        </Group>
      </Stack>
    </form>
  );
}

/** In mm, whatever unit was typed; null for an empty field, undefined for what is no length. */
function maybeLength(text: string): number | null | undefined {
  if (text.trim() === '') return null;
  try {
    const { value, unit } = parseReading(text, 'mm');
    return toBase(value, unit);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function sweptWords(
  bore: number | null | undefined,
  stroke: number | null | undefined,
  cylinders: number,
  family: EngineModel | undefined,
): string {
  if (family !== undefined && (!bore || !stroke))
    return 'Leave empty what is as in the family; it is taken from there.';
  if (!bore || !stroke || bore < 0 || stroke < 0)
    return 'Bore and stroke may be left empty; with both, the swept volume is computed. Inches may be typed: 2.677".';
  return `Swept volume: ${display(sweptVolume({ bore, stroke, cylinders }), 'cm3')}, from ${display(bore, 'mm')} by ${display(stroke, 'mm')}.`;
}
