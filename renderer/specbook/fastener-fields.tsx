import { Autocomplete, NativeSelect, SimpleGrid, Stack, Text, TextInput } from '@mantine/core';
import { z } from 'zod';
import {
  type NamedThread,
  PROPERTY_CLASSES,
  parseThread,
  USUAL_THREADS,
} from '../../shared/trade/index.ts';
import type { Feature } from '../../shared/work/features.ts';
import { BoltPicture } from '../common/measure/bolt-picture.tsx';
import { decimal } from '../common/measure/decimal.ts';
import classes from './specbook.module.css';
import { fastenerOf, type SpecificationDraft, threadTyped } from './specification-draft.ts';
import { PATTERN_LABELS } from './specification-words.ts';

const Pattern = z.enum(['cross', 'spiral', 'in-line']);

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
  const thread = threadTyped(draft.designation);
  const figure = (key: 'diameter' | 'pitch' | 'count', label: string) => (
    <TextInput
      label={label}
      inputMode="decimal"
      required
      value={draft[key]}
      onChange={(event) => onChange({ [key]: event.currentTarget.value })}
      error={
        draft[key].trim() !== '' && decimal(draft[key]) === null
          ? 'Type a number.'
          : errors[`fastener.${key}`]
      }
    />
  );
  return (
    <fieldset className={classes.fieldset}>
      <legend>The bolts</legend>
      <div className={classes.bolts}>
        <Stack gap="sm">
          <SimpleGrid cols={2}>
            <Autocomplete
              size="md"
              label="Thread"
              description="As the source prints it"
              placeholder="M8 × 1.25, 5/16-18 UNC"
              data={[...USUAL_THREADS]}
              limit={8}
              maxLength={40}
              value={draft.designation}
              onChange={(designation) => onChange({ designation })}
              error={errors['fastener.designation'] ?? threadFault(draft.designation)}
            />
            <NativeSelect
              size="md"
              label="Class"
              description="As marked on the head"
              data={[...PROPERTY_CLASSES]}
              value={draft.propertyClass}
              onChange={(event) => onChange({ propertyClass: event.currentTarget.value })}
              error={errors['fastener.propertyClass']}
            />
            {draft.designation.trim() === '' ? (
              <>
                {figure('diameter', 'Diameter, mm')}
                {figure('pitch', 'Pitch, mm')}
              </>
            ) : (
              <Text size="sm" className={classes.whole} aria-live="polite">
                {thread !== null && sizeWords(thread)}
              </Text>
            )}
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

/** The size that the designation stands for, and whether a table of threads has it. */
const sizeWords = ({ diameter, pitch, standard }: NamedThread): string =>
  [
    `${diameter} mm, pitch ${pitch} mm.`,
    standard ? '' : 'Not of the coarse or fine series of ISO 261 or ASME B1.1: look at it again.',
  ]
    .filter(Boolean)
    .join(' ');

/** Why it names no thread, once something is typed. */
function threadFault(designation: string): string | undefined {
  if (designation.trim() === '') return undefined;
  try {
    parseThread(designation);
    return undefined;
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
}
