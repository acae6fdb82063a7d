import { z } from 'zod';
import { MOVEMENT_KINDS } from '../work/stock-words.ts';
import { PRICE_ORIGINS, PRICE_RULES } from '../work/vocabulary.ts';
import { reads, writes } from './base.ts';
import { Instant, Minor, maybeText, text } from './fields.ts';
import { JobId, PartId, StaffId } from './ids.ts';

/** The parts room: what is on the shelf. Quantities are whole thousandths of the part's unit. */

export const Part = z.object({
  id: PartId,
  number: z.string(),
  description: z.string(),
  bin: z.string(),
  unit: z.string(),
  /** The fixed price; also what it sells for while its rule has nothing to go by. */
  price: Minor,
  /** What one costs the shop; zero when nobody knows. */
  cost: Minor,
  /** How it comes by its price. */
  priceRule: z.enum(PRICE_RULES),
  /** By the supplier's price list; null when it has none. */
  listPrice: Minor.nullable(),
  /** Charged until the old part comes back; zero for none. */
  coreCharge: Minor,
  /** What one sells for today, and where that came from. */
  sellsAt: Minor,
  sellsBy: z.enum(PRICE_ORIGINS),
  barcode: z.string(),
  supplier: z.string(),
  /** Sum of the movements, thousandths. */
  onHand: z.int(),
  reorderPoint: z.int(),
});
export type Part = z.infer<typeof Part>;

/** Movements that a person enters by hand; the others follow from jobs and orders. */
export const HAND_MOVEMENTS = ['received', 'issued', 'returned', 'scrapped', 'counted'] as const;

export const Movement = z.object({
  kind: z.enum(MOVEMENT_KINDS),
  /** Signed thousandths: what it adds to the shelf. */
  quantity: z.int(),
  reason: z.string(),
  jobCode: z.string(),
  by: z.string(),
  at: Instant,
});
export type Movement = z.infer<typeof Movement>;

const pricing = {
  priceRule: z.enum(PRICE_RULES).default('fixed'),
  listPrice: Minor.nullable().default(null),
  coreCharge: Minor.default(0),
};

const Thousandths = z.int().min(1, 'A quantity is more than zero.').max(1_000_000_000);

export const parts = {
  find: reads
    .input(z.strictObject({ text: maybeText(200), limit: z.int().min(1).max(1000).default(100) }))
    .output(z.array(Part)),

  part: reads
    .input(z.strictObject({ id: PartId }))
    .output(z.object({ part: Part, movements: z.array(Movement) })),

  add: writes
    .errors({
      PART_NUMBER_TAKEN: {
        status: 409,
        message:
          'A part has this number already (spaces, dashes and case don’t count). Open that one instead.',
        data: z.object({ partId: PartId }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        number: text(60),
        description: text(200),
        bin: maybeText(40),
        unit: text(12).default('pc'),
        price: Minor,
        cost: Minor.default(0),
        ...pricing,
        barcode: maybeText(60),
        supplier: maybeText(120),
        reorderPoint: z.int().min(0).max(1_000_000_000).default(0),
      }),
    )
    .output(Part),

  /** What it costs and how it comes by its price, all of it anew. */
  reprice: writes
    .input(z.strictObject({ by: StaffId, partId: PartId, price: Minor, cost: Minor, ...pricing }))
    .output(Part),

  /** One movement on the shelf: received, returned, scrapped or issued to a job. */
  move: writes
    .errors({
      NOT_ON_THE_SHELF: {
        status: 409,
        message: 'The shelf holds fewer than that. Count the bin, or receive what came in first.',
        data: z.object({ onHand: z.int() }),
      },
      REASON_WANTED: {
        status: 409,
        message: 'Say why in a few words: scrapping and counting need a reason.',
      },
      JOB_WANTED: {
        status: 409,
        message: 'Say which job the part goes to: issuing and returning need a job.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        partId: PartId,
        kind: z.enum(HAND_MOVEMENTS),
        /** Thousandths; for a count, what is in the bin (zero or more). */
        quantity: z.union([Thousandths, z.literal(0)]),
        jobId: JobId.nullable().default(null),
        reason: maybeText(300),
      }),
    )
    .output(Part),
};
