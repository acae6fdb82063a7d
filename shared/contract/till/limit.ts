import { z } from 'zod';
import { BEYOND_BECAUSE } from '../../work/till/bill-ahead.ts';
import { OWNER_WANTED, reads, writes } from '../base.ts';
import { Minor, text } from '../fields.ts';
import { JobCode, JobId, StaffId } from '../ids.ts';
import { Account } from './account.ts';
import { Line } from './lines.ts';
import { ALREADY_INVOICED, JOB_CLOSED } from './refusals.ts';

/** The approved amount as a limit: what the bill is heading to, and what may pass it. */

export const BillAhead = z.object({
  jobId: JobId,
  jobCode: JobCode,
  /**
   * What the bill is heading to, taxes included; of an issued invoice its total. It is the least that it can be
   * as long as anything is `unpriced`.
   */
  total: z.int(),
  /** What has no price yet, by its words: to come to the bill, or decided on and left out of the invoice. */
  unpriced: z.array(z.string()),
  /** What the customer approved, or the spending limit of intake. */
  approved: z.int(),
  /** What the bill may come to without asking again: with tolerance or by the owner's word. */
  limit: z.int(),
  /** By how much it passes that; 0 when it doesn't. */
  over: z.int(),
  /** Steps of the build, torque, parts and clocks wait for another approval. */
  stopped: z.boolean(),
  /** What it starts from; null while nothing is estimated. */
  estimate: z
    .object({
      number: z.string(),
      /** The option that was taken or is expected; empty when there is only one. */
      option: z.string(),
      total: z.int(),
      /** This revision was approved. */
      approved: z.boolean(),
    })
    .nullable(),
  /** What came to it since, before tax. */
  beyond: z.array(
    z.object({
      because: z.enum(BEYOND_BECAUSE),
      line: Line,
      /** The line stands at nothing: the bill comes to more than `total`. */
      priceToSet: z.boolean(),
      /** How much of the same the estimate and the lines above hold, thousandths. */
      held: z.int(),
    }),
  ),
});
export type BillAhead = z.infer<typeof BillAhead>;

export const limit = {
  billAhead: reads.input(z.strictObject({ jobId: JobId })).output(BillAhead),

  /** The owner lets the bill pass what was approved, in writing. It holds until the next approval. */
  overrideLimit: writes
    .errors({
      JOB_CLOSED,
      ALREADY_INVOICED,
      OWNER_WANTED,
      LIMIT_NOT_RAISED: {
        status: 409,
        message: 'That much is allowed already. Give an amount above it, or go on as it is.',
        data: z.object({ limit: z.int() }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        /** What the bill may come to. */
        amount: Minor,
        reason: text(500).pipe(z.string().min(5, 'Give the reason in a few words; it is kept.')),
      }),
    )
    .output(Account),
};
