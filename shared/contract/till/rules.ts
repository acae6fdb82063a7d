import { z } from 'zod';
import { LINE_KINDS } from '../../work/vocabulary.ts';
import { Minor, text } from '../fields.ts';

/** How the shop prices, what it tolerates, and what it charges without being asked twice. */

const Ppm = z.int().min(0).max(10_000_000);

export const LabourRate = z.strictObject({
  /** A kind of work: `Bench work`, `Machining`. */
  name: text(60),
  /** For an hour. */
  rate: Minor,
});
export type LabourRate = z.infer<typeof LabourRate>;

export const MarkupBracket = z.strictObject({
  /** Costs up to and with this one; null for all above. */
  upTo: Minor.nullable(),
  /** Millionths of the cost: 500000 is 50 %. */
  markupPpm: Ppm,
});
export type MarkupBracket = z.infer<typeof MarkupBracket>;

export const TillRules = z.strictObject({
  /** By kind of work; the shop's one rate stands for all that is not among them. */
  labourRates: z.array(LabourRate).max(20).default([]),
  /** By cost, the brackets in rising order, the last without an end. */
  markup: z.array(MarkupBracket).max(20).default([]),
  outsideMarkupPpm: Ppm.default(0),
  /** A share of some kinds of line, at most the cap; null for none. */
  supplies: z
    .strictObject({
      ppm: z.int().min(1).max(1_000_000),
      kinds: z.array(z.enum(LINE_KINDS)).min(1).max(LINE_KINDS.length),
      cap: Minor.nullable(),
    })
    .nullable()
    .default(null),
  pricesIncludeTax: z.boolean().default(false),
  /** How far a bill may pass what was approved: a share, and never more than the cap. Zero by default. */
  tolerancePpm: z.int().min(0).max(1_000_000).default(0),
  toleranceCap: Minor.nullable().default(null),
  /** What a machine costs that nobody collects, from so many days after it was ready; null for nothing. */
  storage: z
    .strictObject({ afterDays: z.int().min(0).max(1000), perDay: Minor, cap: Minor.nullable() })
    .nullable()
    .default(null),
  /** A clock that runs longer than this is asked about, hours. */
  forgottenAfterHours: z.int().min(1).max(48).default(10),
  /** Days that an estimate is good for when nobody says otherwise; null for no end. */
  estimateDays: z.int().min(1).max(365).nullable().default(30),
});
export type TillRules = z.infer<typeof TillRules>;
