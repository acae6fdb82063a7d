import { Text, UnstyledButton, VisuallyHidden } from '@mantine/core';
import { IconArrowBigRightFilled, IconPoint } from '@tabler/icons-react';
import type { FeatureOnSheet, Gauge, Reading } from '../../shared/contract/bench/index.ts';
import { display } from '../../shared/trade/index.ts';
import { asTyped } from '../../shared/work/bench/reading-in-words.ts';
import { PHASE_LABELS, type Phase } from '../../shared/work/vocabulary.ts';
import { useFormat } from '../common/format.ts';
import classes from './bench.module.css';
import type { BenchUnit } from './bench-habits.ts';
import { CurrentReading, EarlierReading } from './reading-lines.tsx';
import { repeatedWords } from './settle-words.ts';
import { type PlaceOnSheet, standingReading, targetOf } from './sheet-reading.ts';

interface PlaceListProps {
  readonly feature: FeatureOnSheet;
  readonly phase: Phase;
  readonly unit: BenchUnit;
  readonly gauges: readonly Gauge[];
  /** Key of the place to be measured now. */
  readonly now: string | null;
  readonly closed: boolean;
  readonly onChoose: (place: PlaceOnSheet) => void;
  readonly onCorrect: (place: PlaceOnSheet, reading: Reading) => void;
}

/** The places of a feature one below another, each with every reading it ever had. */
export function PlaceList(props: PlaceListProps) {
  const { feature, phase, now } = props;
  return (
    <ol className={classes.places} aria-label="Places">
      {feature.places.map((place) => (
        <li key={place.key} className={classes.place} data-now={place.key === now}>
          <UnstyledButton
            className={classes.placeButton}
            disabled={props.closed}
            aria-current={place.key === now ? 'step' : undefined}
            onClick={() => props.onChoose(place)}
          >
            {place.key === now ? (
              <IconArrowBigRightFilled size={20} aria-hidden />
            ) : (
              <IconPoint size={20} aria-hidden />
            )}
            <span>
              {place.label === '' ? feature.label : place.label}
              {place.key === now && <VisuallyHidden> (measure now)</VisuallyHidden>}
              {feature.feature === 'head-bolt-torque' && <Pull place={place} unit={props.unit} />}
            </span>
          </UnstyledButton>
          <div className={classes.readings}>
            {standingReading(place, phase) === undefined && (
              <Text size="sm" c="dimmed" className={classes.notMeasured}>
                not measured
              </Text>
            )}
            {inOrder(place, phase).map((reading) =>
              reading.superseded || reading.phase !== phase ? (
                <EarlierReading key={reading.id} reading={reading} phase={phase} />
              ) : (
                <CurrentReading
                  key={reading.id}
                  reading={reading}
                  place={place}
                  gauge={gaugeOf(reading, props.gauges)}
                  onCorrect={props.closed ? null : () => props.onCorrect(place, reading)}
                />
              ),
            )}
            <Together place={place} phase={phase} unit={props.unit} gauges={props.gauges} />
            <EarlierOnEngine place={place} />
          </div>
        </li>
      ))}
    </ol>
  );
}

const gaugeOf = ({ gauge }: Reading, gauges: readonly Gauge[]): Gauge | null =>
  gauges.find(({ id }) => id === gauge?.id) ?? null;

/** What repeated readings of one gauge say together. */
function Together({
  place,
  phase,
  unit,
  gauges,
}: {
  readonly place: PlaceOnSheet;
  readonly phase: Phase;
  readonly unit: BenchUnit;
  readonly gauges: readonly Gauge[];
}) {
  const last = standingReading(place, phase);
  if (last === undefined) return null;
  const repeats = place.readings.filter(
    (reading) =>
      reading.phase === phase && !reading.superseded && reading.gauge?.id === last.gauge?.id,
  );
  const words = repeatedWords(repeats, last, gaugeOf(last, gauges), unit);
  return words === '' ? null : <Text size="sm">{words}</Text>;
}

/** What the same engine showed here on earlier jobs. */
function EarlierOnEngine({ place }: { readonly place: PlaceOnSheet }) {
  const format = useFormat();
  if (place.earlier.length === 0) return null;
  return (
    <Text size="sm" c="dimmed" className={classes.earlier}>
      This engine before:{' '}
      {place.earlier
        .map(
          (reading) =>
            `${asTyped(reading)} ${PHASE_LABELS[reading.phase].toLowerCase()}, ${format.instant(reading.at)} (${reading.jobCode})`,
        )
        .join('; ')}
    </Text>
  );
}

/** This phase's readings first, standing ones before those that were corrected, newest first. */
const inOrder = (place: PlaceOnSheet, phase: Phase): Reading[] =>
  place.readings.toSorted(
    (a, b) =>
      Number(b.phase === phase) - Number(a.phase === phase) ||
      Number(a.superseded) - Number(b.superseded) ||
      b.at.localeCompare(a.at),
  );

/** What a torque stage is pulled to, and which share of the final figure that is. */
function Pull({ place, unit }: { readonly place: PlaceOnSheet; readonly unit: BenchUnit }) {
  const target = targetOf(place);
  if (target === null) return null;
  return (
    <Text component="span" display="block" size="sm" c="dimmed">
      {place.share < 1 ? `${Math.round(place.share * 100)} %` : 'final'}: to {display(target, unit)}
    </Text>
  );
}
