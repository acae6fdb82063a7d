import { Button, Group, SegmentedControl, Stack, Text, TextInput } from '@mantine/core';
import { IconCornerDownLeft } from '@tabler/icons-react';
import { type FormEvent, type ReactNode, type RefObject, useEffect } from 'react';
import type { FeatureOnSheet, Gauge, Reading } from '../../shared/contract/bench/index.ts';
import { SPECIFICATION_UNITS } from '../../shared/contract/specbook.ts';
import { dimensionOf, display, unitLabel } from '../../shared/trade/index.ts';
import { limitsInPhase } from '../../shared/work/bench/deciding/decided-limits.ts';
import { asTyped } from '../../shared/work/bench/reading-in-words.ts';
import { readingsBeside } from '../../shared/work/bench/readings-beside.ts';
import type { Phase } from '../../shared/work/vocabulary.ts';
import classes from './bench.module.css';
import { type BenchUnit, useFootSwitch } from './bench-habits.ts';
import { FootSwitch } from './foot-switch.tsx';
import { liveReading } from './live-reading.ts';
import { LiveVerdict } from './live-verdict.tsx';
import { heldInPhase, type PlaceOnSheet, targetOf } from './sheet-reading.ts';

interface ReadingEntryProps {
  readonly feature: FeatureOnSheet;
  readonly place: PlaceOnSheet;
  readonly phase: Phase;
  readonly gauge: Gauge | null;
  readonly unit: BenchUnit;
  readonly onUnit: (unit: BenchUnit) => void;
  /** What stands in the field; kept for each place by whoever shows it. */
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly field: RefObject<HTMLInputElement | null>;
  /** The reading that this one corrects. */
  readonly correcting: Reading | null;
  readonly onSend: (text: string) => void;
  readonly onCancelCorrection: () => void;
  /** What was recorded last, or waits for an answer: between the field and the rest. */
  readonly aftermath: ReactNode;
  /** Where to measure now, drawn; null for a feature that needs no picture. */
  readonly picture: ReactNode;
  /** What belongs below the verdict: the gauge in hand. */
  readonly children: ReactNode;
}

/** The one field: a reading for the place wanted next. Enter sends it and moves on. */
export function ReadingEntry(props: ReadingEntryProps) {
  const { feature, gauge, unit, correcting, field, text } = props;
  const phase = correcting?.phase ?? props.phase;
  const place = heldInPhase(feature.feature, props.place, phase);
  const target = `${place.key} ${correcting?.id ?? ''} ${gauge?.id ?? ''}`;
  useEffect(() => {
    // The field wanted next has the focus: at the next place, and once the gauge is chosen.
    if (target !== '') field.current?.focus();
  }, [field, target]);

  const live = liveReading(
    { text, unit, feature: feature.feature, place, gauge },
    {
      ...limitsInPhase(props.place, phase),
      others: readingsBeside({
        feature: feature.feature,
        place,
        places: feature.places,
        phase,
        readings: feature.places.flatMap(({ readings }) => readings),
      }),
    },
  );
  const [footSwitch] = useFootSwitch();
  const label = place.label === '' ? feature.label : place.label;

  const submit = (event: FormEvent) => {
    event.preventDefault();
    // What can't be read stays in the field, with the reason below it.
    if (live.state === 'read') props.onSend(text.trim());
  };

  return (
    <Stack gap="xs">
      <form onSubmit={submit} className={classes.entry}>
        <TextInput
          ref={field}
          label={
            <>
              {correcting === null ? 'Measure now: ' : 'Correct: '}
              <strong>{label}</strong>
              {placeWords(feature, place, unit)}
            </>
          }
          description={
            correcting === null
              ? undefined
              : `Takes the place of ${asTyped(correcting)}, which stays on record.`
          }
          placeholder={unitLabel(unit)}
          inputMode="decimal"
          autoComplete="off"
          autoCorrect="off"
          spellCheck={false}
          enterKeyHint="next"
          value={text}
          onChange={(event) => props.onText(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Escape' && correcting !== null) props.onCancelCorrection();
            if (event.key === ' ' && footSwitch) {
              // A foot that comes down on an empty or half-typed field does nothing.
              event.preventDefault();
              if (live.state === 'read' && !event.repeat) event.currentTarget.form?.requestSubmit();
            }
          }}
          classNames={{ input: classes.reading, label: classes.readingLabel }}
        />
        <Button
          type="submit"
          size="lg"
          h={64}
          rightSection={<IconCornerDownLeft size={20} aria-hidden />}
        >
          Record
        </Button>
        {correcting !== null && (
          <Button variant="default" h={64} onClick={props.onCancelCorrection}>
            Leave it
          </Button>
        )}
      </form>
      {props.aftermath}
      <Group gap="xs">
        <SegmentedControl
          aria-label="Unit of the reading"
          value={unit}
          onChange={props.onUnit}
          data={SPECIFICATION_UNITS.filter(
            (candidate) => dimensionOf(candidate) === dimensionOf(unit),
          ).map((candidate) => ({ value: candidate, label: unitLabel(candidate) }))}
          size="md"
          classNames={{ label: classes.segment }}
        />
        <Text size="sm" c="dimmed" visibleFrom="md">
          A unit typed with the reading wins.
        </Text>
        <FootSwitch />
      </Group>
      <div className={props.picture === null ? undefined : classes.measuring}>
        <LiveVerdict
          text={text}
          live={live}
          feature={feature.feature}
          place={place}
          unit={unit}
          gauge={gauge}
        />
        {props.picture}
      </div>
      {props.children}
    </Stack>
  );
}

/** Which of how many; for a torque stage what it is pulled to, since the stage counts itself. */
function placeWords(feature: FeatureOnSheet, place: PlaceOnSheet, unit: BenchUnit): string {
  if (feature.feature === 'head-bolt-torque') {
    const target = targetOf(place);
    return target === null ? '' : `, pull to ${display(target, unit)}`;
  }
  const count = feature.places.length;
  const index = feature.places.findIndex(({ key }) => key === place.key);
  return count > 1 ? ` (${index + 1} of ${count})` : '';
}
