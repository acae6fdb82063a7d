import { normalBelow } from '../../trade/index.ts';

/**
 * When to reorder, and how many. Quantities may be of any unit as long as they are all of the same one;
 * times are days. The rules are those of any textbook of operations management: demand that is normally
 * distributed, a lead time that is independent of it.
 */

/** What is asked for in one period, and how far that strays from period to period. */
export interface Demand {
  mean: number;
  /** Standard deviation. */
  spread: number;
}

function demandFinite(figures: readonly number[], words: string): void {
  if (figures.some((figure) => !Number.isFinite(figure) || figure < 0)) throw new RangeError(words);
}

/**
 * Demand while an order is on its way.
 * @param daily demand of one day
 * @param lead days from order to shelf
 * @throws RangeError for a figure below zero or none at all
 */
export function demandDuring(daily: Demand, lead: Demand): Demand {
  demandFinite(
    [daily.mean, daily.spread, lead.mean, lead.spread],
    'Demand and lead time are zero or more.',
  );
  return {
    mean: daily.mean * lead.mean,
    spread: Math.sqrt(lead.mean * daily.spread ** 2 + daily.mean ** 2 * lead.spread ** 2),
  };
}

/**
 * What is kept against demand above the mean: the spread, times how many of them it takes.
 * @param service share of lead times in which the shelf must not run out, 0.5 to below 1
 * @throws RangeError for a share outside of that
 */
export function safetyStock({ spread }: Pick<Demand, 'spread'>, service: number): number {
  demandFinite([spread], 'A spread is zero or more.');
  if (!(service >= 0.5 && service < 1))
    throw new RangeError('The service level is a share from one half to below one.');
  return normalQuantile(service) * spread;
}

/** Order as soon as so many or fewer are left. */
export const reorderPoint = (during: Demand, service: number): number =>
  during.mean + safetyStock(during, service);

/**
 * The order that costs least over a year, between ordering seldom and holding little.
 * @param yearly demand of a year
 * @param perOrder what it costs to place an order, whatever is in it
 * @param holding what it costs to hold one for a year
 * @throws RangeError for figures below zero, and for a holding cost of nothing
 */
export function economicOrder(facts: {
  yearly: number;
  perOrder: number;
  holding: number;
}): number {
  const { yearly, perOrder, holding } = facts;
  demandFinite([yearly, perOrder, holding], 'Demand and costs are zero or more.');
  if (holding === 0) throw new RangeError('Holding stock costs something: give that above zero.');
  return Math.sqrt((2 * yearly * perOrder) / holding);
}

/** Mean and standard deviation of what was seen; null of fewer than two, which have no spread. */
export function seen(values: readonly number[]): Demand | null {
  if (values.length < 2) return null;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, spread: Math.sqrt(squares / (values.length - 1)) };
}

const DAYS_A_WEEK = 7;
/** Fewer weeks say nothing of how usage strays. */
const FEWEST_WEEKS = 8;

/** Usage of a day, from that of whole weeks; null while there are too few of them, or nothing was used. */
export function dailyDemand(weeks: readonly number[]): Demand | null {
  const weekly = weeks.length < FEWEST_WEEKS ? null : seen(weeks);
  if (weekly === null || weekly.mean <= 0) return null;
  return { mean: weekly.mean / DAYS_A_WEEK, spread: weekly.spread / Math.sqrt(DAYS_A_WEEK) };
}

/** Beyond so many standard deviations a share can't be told from one. */
const FARTHEST = 8.3;
const CLOSE_ENOUGH = 1e-13;

/**
 * How many standard deviations above the mean a share of all values lies below.
 * @param share 0.5 to below 1
 */
export function normalQuantile(share: number): number {
  let low = 0;
  let high = FARTHEST;
  while (high - low > CLOSE_ENOUGH) {
    const middle = (low + high) / 2;
    if (normalBelow(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
