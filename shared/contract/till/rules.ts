import { z } from 'zod';
import { LINE_KINDS } from '../../work/vocabulary.ts';
import { OWNER_WANTED, reads, writes } from '../base.ts';
import { Minor, text } from '../fields.ts';
import { StaffId } from '../ids.ts';

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

/** Each cost falls into exactly one bracket. */
const inRisingOrder = (brackets: readonly MarkupBracket[]): boolean =>
  brackets.every(({ upTo }, index) => {
    const before = brackets[index - 1]?.upTo ?? null;
    if (index === brackets.length - 1) return upTo === null;
    return upTo !== null && (before === null || upTo > before);
  });

const namedOnce = (rates: readonly LabourRate[]): boolean =>
  new Set(rates.map(({ name }) => name.toLowerCase())).size === rates.length;

export const TillRules = z.strictObject({
  /** By kind of work; the shop's one rate stands for all that is not among them. */
  labourRates: z
    .array(LabourRate)
    .max(20)
    .refine(namedOnce, 'Each kind of work stands here once. Give one of them another name.')
    .default([]),
  /** What an hour of labour costs the shop; null when nobody knows. */
  labourCost: Minor.nullable().default(null),
  /** By cost, the brackets in rising order, the last without an end. */
  markup: z
    .array(MarkupBracket)
    .max(20)
    .refine(
      inRisingOrder,
      'The brackets go up in cost, and the last one is for all above: leave its limit empty.',
    )
    .default([]),
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

export const rules = {
  /** How the shop prices and what it tolerates. */
  rules: reads.input(z.strictObject({})).output(TillRules),

  /** All of the rules anew, those that did not change too. Papers that were issued stay as they are. */
  setRules: writes
    .errors({ OWNER_WANTED })
    .input(z.strictObject({ by: StaffId, rules: TillRules }))
    .output(TillRules),
};
