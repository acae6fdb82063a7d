import type { Reading, Verdict } from '../../shared/contract/bench/index.ts';
import { display, type Unit } from '../../shared/trade/index.ts';
import { limitsInPhase } from '../../shared/work/bench/deciding/decided-limits.ts';
import { LASH_POSITION_LABELS } from '../../shared/work/bench/lash-position.ts';
import { likelyReading } from '../../shared/work/bench/likely-reading.ts';
import { otherUnit } from '../../shared/work/bench/reading-in-words.ts';
import { isWornButGood, WORN_BUT_GOOD } from '../../shared/work/bench/reading-verdict.ts';
import { bandWords } from '../common/measure/measure-words.ts';
import { heldInPhase, type PlaceOnSheet } from './sheet-reading.ts';

export const VERDICT_WORDS: Record<Verdict, string> = {
  within: 'within',
  outside: 'outside',
  'too-close': 'too close to call',
  'no-band': 'no band',
};

/** The same value in the unit of the other system; empty where both systems use one unit. */
export function inOtherUnit(valueBase: number, unit: Unit): string {
  const other = otherUnit(unit);
  return other === undefined ? '' : display(valueBase, other);
}

/** What stands beside a reading: its gauge, and the part's temperature when it was noted. */
export const circumstancesOf = (reading: Reading): string[] =>
  [
    reading.gauge?.name ?? '',
    reading.temperature === null ? '' : `part at ${display(reading.temperature, '°C')}`,
    reading.position === null ? '' : LASH_POSITION_LABELS[reading.position],
  ].filter((words) => words !== '');

/**
 * What has to catch the eye: something about the gauge, a slip that was waved on, or a band that is no
 * longer the one of the spec book.
 */
export const remarksOn = (reading: Reading, place: PlaceOnSheet): string[] => {
  const now = heldInPhase(reading.feature, place, reading.phase);
  return [
    reading.verdict === 'within' &&
    isWornButGood(
      reading.feature,
      reading.valueBase,
      limitsInPhase(place, reading.phase),
      reading.phase,
    )
      ? WORN_BUT_GOOD
      : '',
    reading.gaugeRemark,
    reading.questioned === null
      ? ''
      : `kept as typed; ${likelyReading(reading.questioned, reading.unit)} was asked about`,
    reading.low === now.low && reading.high === now.high
      ? ''
      : `judged by ${bandWords(reading, reading.unit)}; ${place.decided === null ? 'the spec book has moved on' : 'another size was decided since'}`,
  ].filter((words) => words !== '');
};
