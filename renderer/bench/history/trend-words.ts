import { displayNumber, type Unit } from '../../../shared/trade/index.ts';
import type { WearReach } from '../../../shared/work/bench/wear-trend-rules.ts';
import { amountWords } from '../../common/measure/measure-words.ts';
import { dateOfDay, type PlaceTrend } from './place-trend.ts';

/** What the readings of a place say, sentence by sentence; and what they don't. */
export function trendSentences(
  { axis, trend }: PlaceTrend,
  unit: Unit,
  date: (isoDate: string) => string,
): string[] {
  if (trend.kind === 'too-few')
    return [
      trend.used.length === 0
        ? 'No reading here.'
        : 'Readings of one time only since the part was last changed: no wear is known yet.',
    ];
  const { used, slope, scatter, distance, reach } = trend;
  const span = axis === 'hours' ? '100 running hours' : 'year';
  const way = slope > 0 ? 'up' : slope < 0 ? 'down' : 'neither up nor down';
  return [
    slope === 0
      ? 'It did not change.'
      : `It goes ${way} by ${amountWords(Math.abs(slope), unit)} per ${span}, by ${used.length} readings.`,
    scatter === null
      ? 'Two readings only: no scatter is known, and one wrong reading would tilt the whole line.'
      : Number(displayNumber(scatter, unit)) === 0
        ? 'No scatter about the line can be seen.'
        : `The readings scatter about the line by ${amountWords(scatter, unit)} (standard deviation).`,
    ...(distance === null || distance <= 0
      ? []
      : [`By the line, ${amountWords(distance, unit)} are left to the wear limit.`]),
    reachWords(reach, axis, date),
  ];
}

function reachWords(
  reach: WearReach,
  axis: PlaceTrend['axis'],
  date: (isoDate: string) => string,
): string {
  const at = (x: number): string => {
    if (axis === 'hours') return `${Math.round(x)} running hours`;
    const day = dateOfDay(x);
    return day === null ? 'a year that no one plans for' : date(day);
  };
  switch (reach.kind) {
    case 'no-limit':
      return 'The spec book has no wear limit for it: there is nothing to come near to.';
    case 'passed':
      return 'By the line, the wear limit is passed.';
    case 'never':
      return 'It does not come nearer to the wear limit.';
    case 'not-told':
      return 'The change is no larger than the error of the gauges: it may as well not wear at all.';
    case 'far':
      return 'The limit lies far beyond what was observed: no time can be given.';
    case 'at':
      return reach.spread === null
        ? `Were it to go on like that, the limit would be reached at ${at(reach.x)}.`
        : `Were it to go on like that, the limit would be reached at ${at(reach.x)}; with twice the scatter, between ${at(reach.spread.earliest)} and ${at(reach.spread.latest)}.`;
  }
}

/** What no line can know. */
export const NO_PROMISE =
  'A line through readings is no promise: load, dust and oil decide. Measure again before a part is ordered.';
