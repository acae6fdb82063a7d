import { dailyDemand, demandDuring, economicOrder, reorderPoint, safetyStock } from './reorder.ts';

/** When and how much to reorder of a part, by what the shop used. Quantities are whole thousandths. */

export interface UsageFacts {
  /** What was used in each whole week, the last one first. */
  weeks: readonly number[];
  /** Days from order to shelf, and their standard deviation. */
  lead: { mean: number; spread: number };
  /** Share of lead times in which the shelf should not run out. */
  service: number;
  /** What placing an order costs, minor units. */
  perOrder: number;
  /** What one unit costs, minor units. */
  unitCost: number;
  /** Share of its cost that it costs to hold stock for a year. */
  holding: number;
}

export interface UsageFigures {
  weeks: number;
  used: number;
  perWeek: number;
  spread: number;
  leadDays: number;
  duringLead: number;
  safety: number;
  point: number;
  economicOrder: number | null;
}

const UNIT = 1000;
const WEEK = 7;
const YEAR = 365;

/** The figures behind a suggestion; null while the shop has not used a part for long enough to tell. */
export function usageFigures(facts: UsageFacts): UsageFigures | null {
  const { weeks, lead, service, perOrder, unitCost, holding } = facts;
  const daily = dailyDemand(weeks);
  if (daily === null) return null;
  const during = demandDuring(daily, lead);
  const heldFor = (unitCost * holding) / UNIT;
  return {
    weeks: weeks.length,
    used: weeks.reduce((sum, used) => sum + used, 0),
    perWeek: Math.round(daily.mean * WEEK),
    spread: Math.round(daily.spread * Math.sqrt(WEEK)),
    leadDays: lead.mean,
    duringLead: Math.round(during.mean),
    safety: Math.round(safetyStock(during, service)),
    // Parts are whole things: a shelf is not reordered at half a piston.
    point: Math.ceil(reorderPoint(during, service) / UNIT) * UNIT,
    economicOrder:
      heldFor > 0
        ? Math.max(
            UNIT,
            Math.round(
              economicOrder({ yearly: daily.mean * YEAR, perOrder, holding: heldFor }) / UNIT,
            ) * UNIT,
          )
        : null,
  };
}
