import { z } from 'zod';
import { reads, writes } from '../base.ts';
import { CalendarDate, Instant, maybeText, text } from '../fields.ts';
import { PartId, StaffId, StockCountId } from '../ids.ts';

/**
 * Counting the shelves, a bin at a time. While a count is open nobody is told what the shelf should hold;
 * once it is closed its figures stand, and each difference goes onto the shelf when it is explained.
 * Quantities are thousandths.
 */

export const BinToCount = z.object({
  /** A bin, or a rack that all its bins' names begin with; empty for parts that have none. */
  bin: z.string(),
  /** How many bins lie in it; a bin is its only one. */
  bins: z.int(),
  parts: z.int(),
  /** When it was counted last, of a rack the bin that was counted longest ago; null for never. */
  countedOn: CalendarDate.nullable(),
  /** The count that is going on of it, or of the rack that it lies in. */
  openCountId: StockCountId.nullable(),
});
export type BinToCount = z.infer<typeof BinToCount>;

export const CountLine = z.object({
  partId: PartId,
  number: z.string(),
  description: z.string(),
  unit: z.string(),
  /** Where it belongs: another bin for what was found out of place. */
  bin: z.string(),
  /** Null until it is counted. */
  counted: z.int().nullable(),
  /** Null while the count is open: nobody counts towards a figure that they know. */
  outcome: z
    .object({
      /** What the movements say, at the moment it was counted. */
      expected: z.int(),
      /** Counted less expected. */
      difference: z.int(),
      /** Empty until somebody explained it; a figure that agrees wants none. */
      explanation: z.string(),
      /** What the explained difference added to the shelf's worth, minor units; null before. */
      worth: z.int().nullable(),
    })
    .nullable(),
});
export type CountLine = z.infer<typeof CountLine>;

export const StockCount = z.object({
  id: StockCountId,
  bin: z.string(),
  by: z.string(),
  at: Instant,
  closedAt: Instant.nullable(),
  /** By bin and number; those that lie here though they belong elsewhere last. */
  lines: z.array(CountLine),
});
export type StockCount = z.infer<typeof StockCount>;

export const CountCard = z.object({
  id: StockCountId,
  bin: z.string(),
  by: z.string(),
  at: Instant,
  closedAt: Instant.nullable(),
  counted: z.int(),
  /** Differences that nobody explained yet; zero while it is open. */
  unexplained: z.int(),
});
export type CountCard = z.infer<typeof CountCard>;

const Counted = z.int().min(0, 'A count is zero or more.').max(1_000_000_000);

const COUNT_CLOSED = {
  status: 409,
  message: 'This count is closed and its figures stand. Begin another one for the bin.',
} as const;

export const counts = {
  /** Bins and racks with parts in them: those that were never counted first, then those counted longest ago. */
  binsToCount: reads.input(z.strictObject({})).output(z.array(BinToCount)),

  /** Counts that are open, or with differences to explain, first; then the latest. */
  counts: reads
    .input(z.strictObject({ limit: z.int().min(1).max(500).default(50) }))
    .output(z.array(CountCard)),

  count: reads.input(z.strictObject({ id: StockCountId })).output(StockCount),

  openCount: writes
    .errors({
      COUNT_GOING_ON: {
        status: 409,
        message:
          'This bin, or one in the same rack, is being counted already. Go on with that count, and close it.',
        data: z.object({ countId: StockCountId }),
      },
      BIN_EMPTY: {
        status: 409,
        message: 'No part belongs in this bin. Look at how it is written on the parts.',
      },
    })
    .input(z.strictObject({ by: StaffId, bin: maybeText(40) }))
    .output(StockCount),

  /** What is in the bin of a part, typed again until the count is closed. */
  countPart: writes
    .errors({ COUNT_CLOSED })
    .input(z.strictObject({ by: StaffId, countId: StockCountId, partId: PartId, counted: Counted }))
    .output(StockCount),

  /** The figures are in: from here on they stand, and what should be there is shown. */
  closeCount: writes
    .errors({
      COUNT_CLOSED,
      NOT_ALL_COUNTED: {
        status: 409,
        message: 'Some parts of this bin have no figure. Count them; for what isn’t there write 0.',
        data: z.object({ numbers: z.array(z.string()) }),
      },
    })
    .input(z.strictObject({ by: StaffId, countId: StockCountId }))
    .output(StockCount),

  /** Says where a difference comes from, and brings it onto the shelf. */
  explainDifference: writes
    .errors({
      COUNT_OPEN: {
        status: 409,
        message: 'This bin is still being counted. Close the count first.',
      },
      NOTHING_TO_EXPLAIN: {
        status: 409,
        message:
          'This part agrees, or its difference was explained before. There is nothing to do.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        countId: StockCountId,
        partId: PartId,
        explanation: text(300),
        /** What is there by a second look; it takes the place of the figure of the count. */
        recounted: Counted.nullable().default(null),
      }),
    )
    .output(StockCount),

  /** Gives up a count that is open; its figures are gone and nothing has changed. */
  dropCount: writes
    .errors({ COUNT_CLOSED })
    .input(z.strictObject({ by: StaffId, countId: StockCountId }))
    .output(z.array(CountCard)),
};
