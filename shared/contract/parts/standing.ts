import { z } from 'zod';
import { reads } from '../base.ts';
import { CalendarDate, Instant } from '../fields.ts';
import { PartName } from './numbers.ts';

/** How the stores stand as a whole: what it is worth, and what has to be put right. */

export const ShelfToPutRight = PartName.extend({
  bin: z.string(),
  /** Since when the shelf has been below nothing. */
  since: Instant,
  /** The words of whoever took it below nothing, the job it went to, and who that was. */
  reason: z.string(),
  jobCode: z.string(),
  by: z.string(),
});
export type ShelfToPutRight = z.infer<typeof ShelfToPutRight>;

export const ValuedShelf = PartName.extend({
  bin: z.string(),
  /** Minor units. */
  worth: z.int(),
  /** The moving average of one unit; null for a shelf that holds nothing. */
  average: z.int().nullable(),
});
export type ValuedShelf = z.infer<typeof ValuedShelf>;

export const standing = {
  /** Shelves below nothing, the oldest first. */
  toPutRight: reads.input(z.strictObject({})).output(z.array(ShelfToPutRight)),

  /** What the stores were worth at the end of a day, in the shop's time zone; of today without one. */
  valuation: reads.input(z.strictObject({ on: CalendarDate.nullable().default(null) })).output(
    z.object({
      on: CalendarDate,
      /** Those that held anything or were below nothing, by number; `onHand` is of that day. */
      shelves: z.array(ValuedShelf),
      worth: z.int(),
    }),
  ),
};
