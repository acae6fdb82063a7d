import { z } from 'zod';
import { reads } from '../base.ts';
import { CalendarDate, Minor } from '../fields.ts';
import { JobId } from '../ids.ts';
import { PartName } from './numbers.ts';
import { Supplier } from './suppliers.ts';

/** What should be ordered, with the figures that say so. Quantities are thousandths. */

/** What the shop used, and what follows from it. */
const UsageFigures = z.object({
  /** Whole weeks that were looked at, a year at most. */
  weeks: z.int(),
  /** Issued to jobs and not returned, in all of them. */
  used: z.int(),
  perWeek: z.int(),
  /** Standard deviation from week to week. */
  spread: z.int(),
  /** Days from order to shelf. */
  leadDays: z.int(),
  /** Used while an order is on its way. */
  duringLead: z.int(),
  /** Kept against more than that. */
  safety: z.int(),
  /** Their sum, rounded up to whole units. */
  point: z.int(),
  /** The order that costs least over a year; null when one costs nothing. */
  economicOrder: z.int().nullable(),
});

export const Suggestion = z.object({
  part: PartName.extend({ bin: z.string() }),
  supplierNumber: z.string(),
  packSize: z.int(),
  unitCost: Minor,
  /** On hand and not promised; what is owed; what jobs miss. Parts that took each other's place together. */
  available: z.int(),
  onOrder: z.int(),
  missing: z.int(),
  /** Available and on order less what jobs miss. */
  position: z.int(),
  /** As typed on the part. */
  typedPoint: z.int(),
  usage: UsageFigures.nullable(),
  /** The larger of the typed one and that from usage; zero for what is not kept on the shelf. */
  point: z.int(),
  /** Jobs that miss it, and how much of that is on order for each. */
  jobs: z.array(
    z.object({ jobId: JobId, jobCode: z.string(), missing: z.int(), onOrder: z.int() }),
  ),
  /** Not kept on the shelf: it is ordered for its jobs. */
  special: z.boolean(),
  quantity: z.int(),
  amount: z.int(),
});
export type Suggestion = z.infer<typeof Suggestion>;

export const SuggestedOrder = z.object({
  /** Null when nobody is known by the name on the parts. */
  supplier: Supplier.nullable(),
  /** As the parts name it; empty for parts without one. */
  name: z.string(),
  expectedOn: CalendarDate,
  lines: z.array(Suggestion),
  goods: z.int(),
  carriage: z.int(),
  /** What is lacking to their smallest order. */
  shortOfMinimum: z.int(),
});
export type SuggestedOrder = z.infer<typeof SuggestedOrder>;

const MILLION = 1_000_000;

export const suggestions = {
  /** What should be ordered today, by supplier. */
  suggestions: reads
    .input(
      z.strictObject({
        /** Share of lead times in which the shelf should not run out, parts per million. */
        service: z
          .int()
          .min(MILLION / 2, 'From 50 % to 99.9 %.')
          .max(999_000, 'From 50 % to 99.9 %.')
          .default(950_000),
        /** What it costs the shop to place an order, whatever is in it. */
        perOrder: Minor.default(500),
        /** What it costs to hold stock for a year: a share of its cost, parts per million. */
        holding: z.int().min(1).max(MILLION, 'From more than 0 % to 100 %.').default(250_000),
      }),
    )
    .output(z.array(SuggestedOrder)),
};
