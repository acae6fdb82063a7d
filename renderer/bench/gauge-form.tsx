import { Button, Group, Modal, NativeSelect, SimpleGrid, Stack, TextInput } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import { z } from 'zod';
import { SPECIFICATION_UNITS } from '../../shared/contract/specbook.ts';
import { dimensionOf, unitLabel } from '../../shared/trade/index.ts';
import { GAUGE_KIND_LABELS, GAUGE_KINDS, type GaugeKind } from '../../shared/work/vocabulary.ts';
import { DateField } from '../common/date-field.tsx';
import { deskQuery } from '../common/desk.ts';
import { decimal } from '../common/measure/decimal.ts';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useDraft } from '../common/use-draft.ts';
import { useWrite } from '../common/use-write.ts';
import type { BenchUnit } from './bench-habits.ts';

interface GaugeDraft {
  name: string;
  kind: GaugeKind;
  unit: BenchUnit;
  rangeLow: string;
  rangeHigh: string;
  resolution: string;
  maxError: string;
  /** Of a torque wrench, mm; empty when nobody has measured it. */
  length?: string;
  calibratedOn: string | null;
  calibrationDue: string | null;
  certificate: string;
}

const EMPTY: GaugeDraft = {
  name: '',
  kind: 'micrometer',
  unit: 'mm',
  rangeLow: '',
  rangeHigh: '',
  resolution: '',
  maxError: '',
  calibratedOn: null,
  calibrationDue: null,
  certificate: '',
};

const USUAL_UNIT: Partial<Record<GaugeKind, BenchUnit>> = {
  'torque-wrench': 'N·m',
  'pressure-gauge': 'kPa',
  ohmmeter: 'Ω',
  tachometer: 'rpm',
};

const Kind = z.enum(GAUGE_KINDS);
const Unit = z.enum(SPECIFICATION_UNITS);

/** Adds a gauge to the list; its uncertainty follows from step and largest error. */
export function GaugeForm({
  opened,
  onClose,
}: {
  readonly opened: boolean;
  readonly onClose: () => void;
}) {
  return (
    <Modal opened={opened} onClose={onClose} title="Add a gauge" size="lg">
      {opened && <Fields onClose={onClose} />}
    </Modal>
  );
}

function Fields({ onClose }: { readonly onClose: () => void }) {
  const by = useBy();
  const [draft, setDraft, clear] = useDraft<GaugeDraft>('gauge', EMPTY);
  const add = useWrite(deskQuery.bench.addGauge.mutationOptions());
  const [tried, setTried] = useState(false);
  const errors = fieldErrors(add.error);
  const unit = unitLabel(draft.unit);
  const set = (change: Partial<GaugeDraft>) => setDraft({ ...draft, ...change });
  const chooseKind = (kind: GaugeKind) => {
    const usual = USUAL_UNIT[kind] ?? 'mm';
    set({
      kind,
      unit: dimensionOf(usual) === dimensionOf(draft.unit) ? draft.unit : usual,
    });
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const rangeLow = decimal(draft.rangeLow);
    const rangeHigh = decimal(draft.rangeHigh);
    const resolution = decimal(draft.resolution);
    const maxError = decimal(draft.maxError);
    setTried(true);
    const typedLength = draft.kind === 'torque-wrench' ? (draft.length ?? '') : '';
    const length = decimal(typedLength);
    if (typedLength.trim() !== '' && length === null) return;
    if (rangeLow === null || rangeHigh === null || resolution === null || maxError === null) return;
    add.mutate(
      {
        by,
        name: draft.name,
        kind: draft.kind,
        unit: draft.unit,
        rangeLow,
        rangeHigh,
        resolution,
        maxError,
        length,
        calibratedOn: draft.calibratedOn,
        calibrationDue: draft.calibrationDue,
        certificate: draft.certificate,
      },
      {
        onSuccess: () => {
          clear();
          onClose();
        },
      },
    );
  };
  const figure = (
    key: 'rangeLow' | 'rangeHigh' | 'resolution' | 'maxError',
    label: string,
    description?: string,
  ) => (
    <TextInput
      label={`${label}, ${unit}`}
      description={description}
      inputMode="decimal"
      required
      value={draft[key]}
      onChange={(event) => set({ [key]: event.currentTarget.value })}
      error={tried && decimal(draft[key]) === null ? 'Type a number, such as 0.01.' : errors[key]}
    />
  );
  return (
    <form onSubmit={submit} onInvalidCapture={() => setTried(true)}>
      <Stack>
        <TextInput
          data-autofocus
          label="Name or number"
          description="As it is marked: bench staff choose it by this"
          required
          value={draft.name}
          onChange={(event) => set({ name: event.currentTarget.value })}
          error={errors.name}
        />
        <SimpleGrid cols={2}>
          <NativeSelect
            size="md"
            label="Kind"
            data={GAUGE_KINDS.map((kind) => ({ value: kind, label: GAUGE_KIND_LABELS[kind] }))}
            value={draft.kind}
            onChange={(event) => chooseKind(Kind.parse(event.currentTarget.value))}
          />
          <NativeSelect
            size="md"
            label="Reads in"
            data={SPECIFICATION_UNITS.map((each) => ({ value: each, label: unitLabel(each) }))}
            value={draft.unit}
            onChange={(event) => set({ unit: Unit.parse(event.currentTarget.value) })}
          />
          {figure('rangeLow', 'Range from')}
          {figure('rangeHigh', 'Range to')}
          {figure('resolution', 'Smallest step', 'One step of its scale or display')}
          {figure('maxError', 'Largest error', 'As its maker or its certificate allows')}
          {draft.kind === 'torque-wrench' && (
            <TextInput
              label="Length, mm"
              description="From the square drive to the mark on the grip: for settings with an extension. Optional"
              inputMode="decimal"
              value={draft.length ?? ''}
              onChange={(event) => set({ length: event.currentTarget.value })}
              error={
                tried && (draft.length ?? '').trim() !== '' && decimal(draft.length ?? '') === null
                  ? 'Type a number, such as 240, or leave it empty.'
                  : errors.length
              }
            />
          )}
          <DateField
            label="Calibrated on"
            value={draft.calibratedOn}
            onChange={(calibratedOn) => set({ calibratedOn })}
          />
          <DateField
            label="Next calibration due"
            value={draft.calibrationDue}
            onChange={(calibrationDue) => set({ calibrationDue })}
          />
        </SimpleGrid>
        <TextInput
          label="Certificate"
          value={draft.certificate}
          onChange={(event) => set({ certificate: event.currentTarget.value })}
          error={errors.certificate}
        />
        {add.isError && <RefusalAlert error={add.error} />}
        <Group justify="flex-end">
          <Button variant="default" onClick={onClose}>
            Close
          </Button>
          <Button type="submit" loading={add.isPending}>
            Add the gauge
          </Button>
        </Group>
      </Stack>
    </form>
  );
}
