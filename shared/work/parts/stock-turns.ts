import { divideRounded } from '../../money/index.ts';

/** A movement's addition to what a shelf is worth. */
export interface WorthMoved {
  /** Milliseconds. */
  readonly at: number;
  /** Minor units, signed. */
  readonly worth: number;
}

/**
 * The average worth over a time, each sum weighed by how long it lasted; minor units.
 * @param moved in the order of time; what came before `from` makes up the worth at the beginning
 * @throws RangeError when `until` is not after `from`
 */
export function averageWorth(
  moved: readonly WorthMoved[],
  { from, until }: { from: number; until: number },
): number {
  if (until <= from) throw new RangeError('The end of the time comes before its beginning.');
  let worth = 0;
  let since = from;
  // Minor units times the milliseconds of a year pass 2^53.
  let sum = 0n;
  for (const each of moved) {
    if (each.at >= until) break;
    const at = Math.max(from, each.at);
    sum += BigInt(worth) * BigInt(at - since);
    since = at;
    worth += each.worth;
  }
  sum += BigInt(worth) * BigInt(until - since);
  return Number(divideRounded(sum, BigInt(until - from), 'half-up'));
}

const DAYS_OF_YEAR = 365;

/**
 * How often a year the stock is used up: cost of what was used in some days, brought to a year, by what
 * the stock was worth on average. Thousandths,
 * to a hundredth; null where there was no stock on average.
 */
export const turnsPerYear = (used: number, average: number, days: number): number | null =>
  average <= 0
    ? null
    : Number(
        divideRounded(
          BigInt(used) * BigInt(DAYS_OF_YEAR) * 100n,
          BigInt(average) * BigInt(days),
          'half-up',
        ) * 10n,
      );

/** How many days the stock lasts at that pace; null where nothing was used. */
export const daysOfStock = (used: number, average: number, days: number): number | null =>
  used <= 0 || average < 0
    ? null
    : Number(divideRounded(BigInt(average) * BigInt(days), BigInt(used), 'half-up'));
