import { Button, Text, UnstyledButton, VisuallyHidden } from '@mantine/core';
import { IconAlertTriangle, IconArrowBigRightFilled, IconPoint } from '@tabler/icons-react';
import type { FeatureOnSheet, Reading } from '../../shared/contract/bench.ts';
import { display } from '../../shared/trade/index.ts';
import { PHASE_LABELS, type Phase } from '../../shared/work/vocabulary.ts';
import { VerdictBadge } from '../common/badges.tsx';
import { useFormat } from '../common/format.ts';
import { useShop } from '../common/shop.tsx';
import classes from './bench.module.css';
import type { BenchUnit } from './bench-habits.ts';
import { asTyped, circumstancesOf, inOtherUnit, remarksOn } from './reading-words.ts';
import { type PlaceOnSheet, standingReading, targetOf } from './sheet-reading.ts';

interface PlaceListProps {
  readonly feature: FeatureOnSheet;
  readonly phase: Phase;
  readonly unit: BenchUnit;
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
    <ol style={{ listStyle: 'none', margin: 0, padding: 0 }} aria-label="Places">
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
            {inOrder(place, phase).map((reading) => (
              <ReadingLine
                key={reading.id}
                reading={reading}
                place={place}
                phase={phase}
                onCorrect={
                  reading.superseded || props.closed ? null : () => props.onCorrect(place, reading)
                }
              />
            ))}
            {standingReading(place, phase) === undefined && (
              <Text size="sm" c="dimmed" py={12}>
                {place.readings.length === 0
                  ? 'not measured'
                  : `${PHASE_LABELS[phase].toLowerCase()}: not measured`}
              </Text>
            )}
          </div>
        </li>
      ))}
    </ol>
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

function ReadingLine({
  reading,
  place,
  phase,
  onCorrect,
}: {
  readonly reading: Reading;
  readonly place: PlaceOnSheet;
  readonly phase: Phase;
  readonly onCorrect: (() => void) | null;
}) {
  const format = useFormat();
  const { bothUnits } = useShop();
  const other = bothUnits ? inOtherUnit(reading.valueBase, reading.unit) : '';
  const by = `${reading.by}, ${format.instant(reading.at)}`;
  return (
    <div className={classes.readingLine} data-superseded={reading.superseded}>
      {reading.superseded ? (
        <span>
          <s className={classes.struck}>{asTyped(reading)}</s>{' '}
          <Text span size="sm">
            corrected · {by}
          </Text>
        </span>
      ) : (
        <>
          <div>
            <div className={classes.readingFacts}>
              <span className={classes.value}>{asTyped(reading)}</span>
              {other !== '' && <Text c="dimmed">({other})</Text>}
              <VerdictBadge verdict={reading.verdict} />
              {reading.phase !== phase && (
                <Text size="sm">{PHASE_LABELS[reading.phase].toLowerCase()}</Text>
              )}
            </div>
            <Text size="sm" c="dimmed">
              {[...circumstancesOf(reading), by].join(' · ')}
            </Text>
            {remarksOn(reading, place).map((remark) => (
              <Text key={remark} size="sm" className={classes.caution}>
                <IconAlertTriangle size={16} aria-hidden className={classes.cautionMark} />
                {remark}
              </Text>
            ))}
          </div>
          {onCorrect !== null && (
            <Button
              variant="subtle"
              size="sm"
              mih={44}
              onClick={onCorrect}
              aria-label={`Correct ${asTyped(reading)} at ${reading.placeLabel || 'this place'}`}
            >
              Correct
            </Button>
          )}
        </>
      )}
    </div>
  );
}

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
