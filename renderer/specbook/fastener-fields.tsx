import { NativeSelect, SimpleGrid, Stack, TextInput } from '@mantine/core';
import { z } from 'zod';
import { PROPERTY_CLASSES } from '../../shared/trade/index.ts';
import type { Feature } from '../../shared/work/features.ts';
import { BoltPicture } from '../common/measure/bolt-picture.tsx';
import { decimal } from '../common/measure/decimal.ts';
import classes from './specbook.module.css';
import { fastenerOf, type SpecificationDraft } from './specification-draft.ts';
import { PATTERN_LABELS } from './specification-words.ts';

const Pattern = z.enum(['cross', 'spiral', 'in-line']);

/** Coarse and fine threads of small engines; diameter and pitch in mm (ISO 261, ASME B1.1). */
const THREADS = [
  { name: 'M5 × 0.8', diameter: '5', pitch: '0.8' },
  { name: 'M6 × 1', diameter: '6', pitch: '1' },
  { name: 'M8 × 1.25', diameter: '8', pitch: '1.25' },
  { name: 'M8 × 1', diameter: '8', pitch: '1' },
  { name: 'M10 × 1.5', diameter: '10', pitch: '1.5' },
  { name: 'M10 × 1.25', diameter: '10', pitch: '1.25' },
  { name: '1/4-20 UNC', diameter: '6.35', pitch: '1.27' },
  { name: '5/16-18 UNC', diameter: '7.9375', pitch: '1.4111' },
  { name: '3/8-16 UNC', diameter: '9.525', pitch: '1.5875' },
] as const;

/** The fastener group that a torque belongs to, with the order in which it is tightened. */
export function FastenerFields({
  feature,
  draft,
  onChange,
  errors,
}: {
  readonly feature: Feature;
  readonly draft: SpecificationDraft;
  readonly onChange: (change: Partial<SpecificationDraft>) => void;
  readonly errors: Record<string, string>;
}) {
  const fastener = fastenerOf(feature, draft);
  const thread = THREADS.find(
    (each) => each.diameter === draft.diameter && each.pitch === draft.pitch,
  );
  const figure = (key: 'diameter' | 'pitch' | 'count', label: string) => (
    <TextInput
      label={label}
      inputMode="decimal"
      required
      value={draft[key]}
      onChange={(event) => onChange({ [key]: event.currentTarget.value })}
      error={decimal(draft[key]) === null ? 'Type a number.' : errors[`fastener.${key}`]}
    />
  );
  return (
    <fieldset className={classes.fieldset}>
      <legend>The bolts</legend>
      <div className={classes.bolts}>
        <Stack gap="sm">
          <SimpleGrid cols={2}>
            <NativeSelect
              size="md"
              label="Thread"
              data={[...THREADS.map(({ name }) => name), 'another']}
              value={thread?.name ?? 'another'}
              onChange={(event) => {
                const name = event.currentTarget.value;
                const chosen = THREADS.find((each) => each.name === name);
                if (chosen !== undefined)
                  onChange({ diameter: chosen.diameter, pitch: chosen.pitch });
              }}
            />
            <NativeSelect
              size="md"
              label="Class, as marked on the head"
              data={[...PROPERTY_CLASSES]}
              value={draft.propertyClass}
              onChange={(event) => onChange({ propertyClass: event.currentTarget.value })}
              error={errors['fastener.propertyClass']}
            />
            {figure('diameter', 'Diameter, mm')}
            {figure('pitch', 'Pitch, mm')}
            {figure('count', 'How many')}
            <NativeSelect
              size="md"
              label="Pattern"
              data={Pattern.options.map((each) => ({ value: each, label: PATTERN_LABELS[each] }))}
              value={draft.pattern}
              onChange={(event) => onChange({ pattern: Pattern.parse(event.currentTarget.value) })}
            />
          </SimpleGrid>
          <TextInput
            label="Stages, % of the final torque"
            description="Rising, the last one 100"
            value={draft.stages}
            onChange={(event) => onChange({ stages: event.currentTarget.value })}
            error={errors['fastener.stages']}
          />
        </Stack>
        {fastener !== null && Number.isInteger(fastener.count) && (
          <BoltPicture fastener={fastener} />
        )}
      </div>
    </fieldset>
  );
}
