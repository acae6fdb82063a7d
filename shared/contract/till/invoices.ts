import { z } from 'zod';
import { writes } from '../base.ts';
import { maybeText } from '../fields.ts';
import { JobId, StaffId } from '../ids.ts';
import { Account } from './account.ts';
import { Discount, Lines } from './lines.ts';
import { ALREADY_INVOICED, JOB_CLOSED } from './refusals.ts';

export const invoices = {
  issueInvoice: writes
    .errors({
      JOB_CLOSED,
      ALREADY_INVOICED,
      NOTHING_ESTIMATED: {
        status: 409,
        message: 'There is no estimate to bill from. Write one, have it approved, then invoice.',
      },
      OVER_APPROVAL: {
        status: 409,
        message:
          'The bill would pass what the customer approved. Ask for another approval first; local law decides what may be charged without one.',
        data: z.object({ total: z.int(), limit: z.int(), over: z.int() }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        /** What was done, when it differs from what was estimated; null bills that estimate. */
        lines: Lines.nullable().default(null),
        /** Off the whole bill; taken from the estimate when `lines` is null. */
        discount: Discount.nullable().default(null),
        note: maybeText(2000),
      }),
    )
    .output(Account),
};
