import { Button, Group, SegmentedControl, Stack, Text, TextInput } from '@mantine/core';
import { isDefinedError } from '@orpc/client';
import { IconCornerDownLeft } from '@tabler/icons-react';
import { type FormEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import type { FeatureOnSheet, Gauge, Reading } from '../../shared/contract/bench/index.ts';
import type { JobId } from '../../shared/contract/ids.ts';
import { SPECIFICATION_UNITS } from '../../shared/contract/specbook.ts';
import { dimensionOf, display, parseReading, toBase, unitLabel } from '../../shared/trade/index.ts';
import type { LashPosition } from '../../shared/work/bench/lash-position.ts';
import { asTyped } from '../../shared/work/bench/reading-in-words.ts';
import { suspicionOf } from '../../shared/work/bench/suspicion.ts';
import type { Phase } from '../../shared/work/vocabulary.ts';
import { deskQuery } from '../common/desk.ts';
import { RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';
import classes from './bench.module.css';
import { type BenchUnit, useFootSwitch } from './bench-habits.ts';
import { FootSwitch } from './foot-switch.tsx';
import { liveReading } from './live-reading.ts';
import { LiveVerdict } from './live-verdict.tsx';
import { type PlaceOnSheet, targetOf } from './sheet-reading.ts';
import { type Slip, SlipQuestion } from './slip-question.tsx';

interface ReadingEntryProps {
  readonly jobId: JobId;
  readonly feature: FeatureOnSheet;
  readonly place: PlaceOnSheet;
  readonly phase: Phase;
  readonly gauge: Gauge | null;
  readonly unit: BenchUnit;
  readonly onUnit: (unit: BenchUnit) => void;
  readonly temperature: number | null;
  /** Where the engine stands, for valve lash; null elsewhere. */
  readonly position: LashPosition | null;
  /** The reading that this one corrects. */
  readonly correcting: Reading | null;
  readonly onRecorded: (reading: Reading) => void;
  readonly onCancelCorrection: () => void;
  /** Where to measure now, drawn; null for a feature that needs no picture. */
  readonly picture: ReactNode;
  /** What belongs below the verdict: the gauge in hand. */
  readonly children: ReactNode;
}

/** The one field: a reading for the place wanted next. Enter records it and moves on. */
export function ReadingEntry(props: ReadingEntryProps) {
  const { feature, place, gauge, unit, correcting } = props;
  const by = useBy();
  const record = useWrite(deskQuery.bench.record.mutationOptions());
  const [text, setText] = useState('');
  const [slip, setSlip] = useState<Slip | null>(null);
  const field = useRef<HTMLInputElement>(null);
  const target = `${place.key} ${correcting?.id ?? ''} ${gauge?.id ?? ''}`;
  useEffect(() => {
    // The field wanted next has the focus: at the next place, and once the gauge is chosen.
    if (target !== '') field.current?.focus();
  }, [target]);

  const uncertainty = gauge === null ? 0 : toBase(gauge.uncertainty, gauge.unit);
  const phase = correcting?.phase ?? props.phase;
  const suspect = (value: number) =>
    suspicionOf({
      feature: feature.feature,
      value,
      band: place,
      place,
      places: feature.places,
      phase,
      readings: feature.places.flatMap(({ readings }) => readings),
    });
  const live = liveReading(text, unit, place, uncertainty, (value) => suspect(value).slip);
  const [footSwitch] = useFootSwitch();
  const label = place.label === '' ? feature.label : place.label;

  const backToField = () => {
    setSlip(null);
    field.current?.focus();
  };

  const send = (typed: string, typedIn: BenchUnit, keepAsTyped: boolean) => {
    if (record.isPending) return;
    // The field is free at once: a gauge that types may already be sending the next reading.
    setText('');
    record.mutate(
      {
        by,
        jobId: props.jobId,
        feature: feature.feature,
        place: place.key,
        // A correction stays in the phase of what it corrects.
        phase,
        text: typed,
        unit: typedIn,
        gaugeId: gauge?.id ?? null,
        temperature: props.temperature,
        position: props.position,
        keepAsTyped,
        supersedes: correcting?.id ?? null,
      },
      {
        onSuccess: (reading) => {
          backToField();
          props.onRecorded(reading);
        },
        onError: (error) => {
          setText(typed);
          if (isDefinedError(error) && error.code === 'READING_QUESTIONED') {
            const { value, unit: typedUnit } = parseReading(typed, typedIn);
            setSlip({
              ...error.data,
              text: typed,
              value,
              beside: suspect(toBase(value, typedUnit)).fellows,
            });
          } else field.current?.focus();
        },
      },
    );
  };

  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() !== '' && slip === null) send(text.trim(), unit, false);
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
          onChange={(event) => {
            setText(event.currentTarget.value);
            setSlip(null);
            record.reset();
          }}
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
          loading={record.isPending}
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
      {slip !== null && (
        <SlipQuestion
          slip={slip}
          band={place}
          busy={record.isPending}
          onTake={(likely) => send(likely, slip.unit, false)}
          onKeep={() => send(slip.text, unit, true)}
          onBack={backToField}
        />
      )}
      {slip === null && record.isError && <RefusalAlert error={record.error} />}
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
        <Stack gap="sm">
          {slip === null && (
            <LiveVerdict
              text={text}
              live={live}
              place={place}
              unit={unit}
              uncertainty={uncertainty}
              gauge={gauge}
            />
          )}
        </Stack>
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
