import { z } from 'zod';
import { LINE_KINDS } from '../../work/vocabulary.ts';
import { reads, writes } from '../base.ts';
import { CalendarDate, maybeText } from '../fields.ts';
import { JobId, StaffId } from '../ids.ts';
import { Account } from './account.ts';
import { Discount, Line, Lines, Totals } from './lines.ts';
import { ALREADY_INVOICED, JOB_CLOSED } from './refusals.ts';

const Kinds = z.array(z.enum(LINE_KINDS));

/** All that a bill's figures depend on beside its lines: for one customer, today. */
export const BillTerms = z.object({
  rounding: z.enum(['half-up', 'half-even']),
  taxBasis: z.enum(['line', 'invoice']),
  taxes: z.array(z.object({ name: z.string(), ratePpm: z.int(), kinds: Kinds })),
  pricesIncludeTax: z.boolean(),
  exemptBy: z.string(),
  supplies: z.object({ ppm: z.int(), kinds: Kinds, cap: z.int().nullable() }).nullable(),
});
export type BillTerms = z.infer<typeof BillTerms>;

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
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        lines: Lines,
        discount: Discount.nullable().default(null),
        note: maybeText(2000),
        validUntil: CalendarDate.nullable().default(null),
      }),
    )
    .output(Account),
};
