import { Button, Text } from '@mantine/core';
import { IconAlertTriangle } from '@tabler/icons-react';
import { Fragment } from 'react';
import type { Gauge, Reading } from '../../shared/contract/bench/index.ts';
import { asTyped } from '../../shared/work/bench/reading-in-words.ts';
import { datesWritten } from '../../shared/work/dates-in-words.ts';
import { PHASE_LABELS, type Phase } from '../../shared/work/vocabulary.ts';
import { VerdictBadge } from '../common/badges.tsx';
import { useFormat } from '../common/format.ts';
import { useShop } from '../common/shop.tsx';
import classes from './bench.module.css';
import { circumstancesOf, inOtherUnit, remarksOn, VERDICT_WORDS } from './reading-words.ts';
import { whatSettles } from './settle-words.ts';
import { type PlaceOnSheet, standingReading } from './sheet-reading.ts';

/** A reading that stands in the phase on the screen, with all that belongs to it. */
export function CurrentReading({
  reading,
  place,
  gauge,
  onCorrect,
}: {
  readonly reading: Reading;
  readonly place: PlaceOnSheet;
  /** The gauge that took it, as it is on the list now. */
  readonly gauge: Gauge | null;
  /** Null when the record is closed. */
  readonly onCorrect: (() => void) | null;
}) {
  const format = useFormat();
  const { bothUnits } = useShop();
  const other = bothUnits ? inOtherUnit(reading.valueBase, reading.unit) : '';
  return (
    <div className={classes.readingLine}>
      <div>
        <div className={classes.readingFacts}>
          <span className={classes.value}>{asTyped(reading)}</span>
          {other !== '' && <Text c="dimmed">({other})</Text>}
          <VerdictBadge verdict={reading.verdict} />
        </div>
        <Text size="sm" c="dimmed">
          {[...circumstancesOf(reading), reading.by, format.instant(reading.at)].map(
            (words, index, all) => (
              <Fragment key={words}>
                <span className={classes.unbroken}>
                  {words}
                  {index < all.length - 1 && ' ·'}
                </span>{' '}
              </Fragment>
            ),
          )}
        </Text>
        {reading.verdict === 'too-close' && (
          <Text size="sm">
            {isSettled(reading, place)
              ? 'Settled by the reading above.'
              : whatSettles(reading.valueBase, reading, gauge, reading.unit)}
          </Text>
        )}
        {remarksOn(reading, place).map((remark) => (
          <Text key={remark} size="sm" className={classes.caution}>
            <IconAlertTriangle size={16} aria-hidden className={classes.cautionMark} />
            {datesWritten(remark, format.date)}
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
    </div>
  );
}

/** Whether a later reading of the place and phase has a verdict that this one could not have. */
function isSettled(reading: Reading, place: PlaceOnSheet): boolean {
  const last = standingReading(place, reading.phase);
  return last !== undefined && (last.verdict === 'within' || last.verdict === 'outside');
}

/** A reading that was corrected (struck through, still readable), or one of another phase. */
export function EarlierReading({
  reading,
  phase,
}: {
  readonly reading: Reading;
  readonly phase: Phase;
}) {
  const format = useFormat();
  const words = [
    reading.phase === phase ? '' : PHASE_LABELS[reading.phase].toLowerCase(),
    reading.superseded ? 'corrected' : VERDICT_WORDS[reading.verdict],
    reading.by,
    format.instant(reading.at),
  ].filter((word) => word !== '');
  const text = asTyped(reading);
  return (
    <Text size="sm" c="dimmed" className={classes.earlier}>
      {reading.superseded ? <s>{text}</s> : text} · {words.join(' · ')}
    </Text>
  );
}
