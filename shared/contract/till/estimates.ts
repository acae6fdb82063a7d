import { z } from 'zod';
import { LINE_KINDS } from '../../work/vocabulary.ts';
import { reads, writes } from '../base.ts';
import { CalendarDate, maybeText, text } from '../fields.ts';
import { JobId, StaffId } from '../ids.ts';
import { Account } from './account.ts';
import { Discount, Line, Lines, Totals } from './lines.ts';
import { ALREADY_INVOICED, JOB_CLOSED } from './refusals.ts';

const Kinds = z.array(z.enum(LINE_KINDS));

const TermsTax = z.object({ name: z.string(), ratePpm: z.int(), kinds: Kinds });

/** All that a bill's figures depend on beside its lines: for one customer, today. */
export const BillTerms = z.object({
  rounding: z.enum(['half-up', 'half-even']),
  taxBasis: z.enum(['line', 'invoice']),
  taxes: z.array(TermsTax),
  pricesIncludeTax: z.boolean(),
  /** The certificate by which no tax is charged, or empty, and what it takes out of prices with tax. */
  exemptBy: z.string(),
  takenOut: z.array(TermsTax),
  supplies: z.object({ ppm: z.int(), kinds: Kinds, cap: z.int().nullable() }).nullable(),
  /** The last day of an estimate that is written today and says nothing else; null for no end. */
  validUntil: CalendarDate.nullable(),
});
export type BillTerms = z.infer<typeof BillTerms>;

/** More than this is no choice any more. */
export const MOST_OPTIONS = 4;

const OptionInput = z.strictObject({
  /** What the customer reads: `Repair`, `Rebuild`, `Replace the engine`. */
  label: text(60),
  lines: Lines,
  discount: Discount.nullable().default(null),
});

const EstimateInput = z
  .strictObject({
    by: StaffId,
    jobId: JobId,
    /** The lines of an estimate with one way to do it; none when it has options. */
    lines: Lines.nullable().default(null),
    discount: Discount.nullable().default(null),
    /** Ways to do it, side by side, of which the customer takes one. */
    options: z
      .array(OptionInput)
      .max(MOST_OPTIONS, `Put ${MOST_OPTIONS} options side by side at most.`)
      .default([]),
    note: maybeText(2000),
    /** Left out: the shop's usual number of days from today. Null: no end. */
    validUntil: CalendarDate.nullable().optional(),
  })
  .superRefine(({ lines, discount, options }, context) => {
    const refuse = (path: (string | number)[], message: string) =>
      context.addIssue({ code: 'custom', path, message });
    if (lines === null && options.length === 0)
      refuse(['lines'], 'An estimate has at least one line.');
    if (options.length > 0 && (lines !== null || discount !== null))
      refuse(['lines'], 'Give either lines or options: with options, lines stand in each of them.');
    options.forEach(({ label }, index) => {
      if (options.findIndex((other) => other.label === label) < index)
        refuse(['options', index, 'label'], 'Another option has this name. Give it another.');
    });
  });

export const estimates = {
  /** The terms on which this job's customer is billed today. */
  terms: reads.input(z.strictObject({ jobId: JobId })).output(BillTerms),

  /** What lines would come to for this job's customer, taxes and rounding included; nothing is written. */
  price: reads
    .input(
      z.strictObject({
        jobId: JobId.nullable().default(null),
        lines: Lines,
        discount: Discount.nullable().default(null),
      }),
    )
    .output(z.object({ lines: z.array(Line), totals: Totals })),

  /** A new revision; the ones before stay as they are. */
  writeEstimate: writes
    .errors({ JOB_CLOSED, ALREADY_INVOICED })
    .input(EstimateInput)
    .output(Account),
};
