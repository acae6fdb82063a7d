import {
  Button,
  Checkbox,
  Group,
  Modal,
  MultiSelect,
  Select,
  Stack,
  Textarea,
  TextInput,
} from '@mantine/core';
import { type FormEvent, useState } from 'react';
import {
  type BuildStep,
  STEP_KIND_LABELS,
  STEP_KINDS,
} from '../../../shared/work/bench/build-steps.ts';
import {
  FEATURE_LABELS,
  FEATURE_UNITS,
  MEASURED_FEATURES,
  type MeasuredFeature,
} from '../../../shared/work/features.ts';
import { wiresAsText, wiresFromText } from './sheet-draft.ts';

/** A step being written or amended; nothing is sent before the whole sheet is saved. */
export function StepForm(props: {
  readonly step: BuildStep | null;
  readonly isNew: boolean;
  readonly onKeep: (step: BuildStep) => void;
  readonly onClose: () => void;
}) {
  const { step } = props;
  return (
    <Modal
      opened={step !== null}
      onClose={props.onClose}
      title={props.isNew ? 'Add a step' : 'Amend a step'}
      size="lg"
    >
      {step !== null && <Fields key={step.key} {...props} step={step} />}
    </Modal>
  );
}

const NOTE_LABELS: Partial<Record<BuildStep['kind'], string>> = {
  orientation: 'Which way round',
  wiring: 'Which diagram, edition and page',
};

function Fields({
  step,
  isNew,
  onKeep,
  onClose,
}: {
  readonly step: BuildStep;
  readonly isNew: boolean;
  readonly onKeep: (step: BuildStep) => void;
  readonly onClose: () => void;
}) {
  const [draft, setDraft] = useState(step);
  const [wires, setWires] = useState(() => wiresAsText(step.wires));
  const [tried, setTried] = useState(false);
  const change = (more: Partial<BuildStep>) => setDraft({ ...draft, ...more });
  const errors = {
    label: draft.label.trim() === '' ? 'Say what is to be done.' : null,
    needs:
      (draft.kind === 'torque' && !draft.needs.some((each) => FEATURE_UNITS[each] === 'N·m')) ||
      (draft.kind === 'measure' && draft.needs.length === 0)
        ? 'Choose what is measured or tightened.'
        : null,
    wires:
      draft.kind === 'wiring' && wiresFromText(wires) === null
        ? 'One wire a line, each colour once: red = red/white'
        : null,
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (Object.values(errors).some((error) => error !== null)) return;
    onKeep({
      ...draft,
      label: draft.label.trim(),
      wires: draft.kind === 'wiring' ? (wiresFromText(wires) ?? []) : [],
      unit: draft.kind === 'quantity' ? draft.unit.trim() : '',
    });
  };
  return (
    <form onSubmit={submit}>
      <Stack>
        <TextInput
          data-autofocus
          size="md"
          label="What is to be done"
          maxLength={160}
          value={draft.label}
          onChange={(event) => change({ label: event.currentTarget.value })}
          error={tried && errors.label}
        />
        <Select
          size="md"
          label="What it asks for"
          allowDeselect={false}
          data={STEP_KINDS.map((kind) => ({ value: kind, label: STEP_KIND_LABELS[kind] }))}
          value={draft.kind}
          onChange={(kind) => kind !== null && change({ kind })}
        />
        <Checkbox
          size="md"
          label="Hold point: nobody goes past it without a reason in writing"
          checked={draft.hold}
          onChange={(event) => change({ hold: event.currentTarget.checked })}
        />
        <MultiSelect
          size="md"
          label="Final readings that must be there first"
          data={MEASURED_FEATURES.map((each) => ({ value: each, label: FEATURE_LABELS[each] }))}
          value={draft.needs}
          onChange={(values) => change({ needs: values.filter(isMeasured) })}
          searchable
          error={tried && errors.needs}
        />
        {draft.kind === 'quantity' && (
          <TextInput
            size="md"
            label="Unit"
            placeholder="ml, L, pc"
            maxLength={20}
            value={draft.unit}
            onChange={(event) => change({ unit: event.currentTarget.value })}
          />
        )}
        {draft.kind === 'wiring' && (
          <Textarea
            size="md"
            label="Wires of the diagram"
            description="One a line, colour = colour: red = red/white"
            autosize
            minRows={3}
            value={wires}
            onChange={(event) => setWires(event.currentTarget.value)}
            error={tried && errors.wires}
          />
        )}
        <TextInput
          size="md"
          label={NOTE_LABELS[draft.kind] ?? 'How, in a sentence'}
          maxLength={300}
          value={draft.note}
          onChange={(event) => change({ note: event.currentTarget.value })}
        />
        <TextInput
          size="md"
          label="Caution"
          description="What can hurt, or what goes wrong when it is skipped."
          maxLength={300}
          value={draft.caution}
          onChange={(event) => change({ caution: event.currentTarget.value })}
        />
        <Group justify="flex-end">
          <Button variant="default" size="md" h={48} onClick={onClose}>
            Leave it
          </Button>
          <Button type="submit" size="md" h={48}>
            {isNew ? 'Add it at the end' : 'Keep'}
          </Button>
        </Group>
      </Stack>
    </form>
  );
}

const isMeasured = (value: string): value is MeasuredFeature =>
  MEASURED_FEATURES.some((each) => each === value);
