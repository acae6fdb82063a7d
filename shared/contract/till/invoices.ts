import { z } from 'zod';
import { INVOICE_SORTS } from '../../work/vocabulary.ts';
import { writes } from '../base.ts';
import { maybeText } from '../fields.ts';
import { JobId, StaffId } from '../ids.ts';
import { Account } from './account.ts';
import { Discount, Lines } from './lines.ts';
import { ALREADY_INVOICED, JOB_CLOSED, OVER_APPROVAL } from './refusals.ts';

export const invoices = {
  issueInvoice: writes
    .errors({
      JOB_CLOSED,
      ALREADY_INVOICED,
      NOTHING_ESTIMATED: {
        status: 409,
        message: 'There is no estimate to bill from. Write one, have it approved, then invoice.',
      },
      NO_STORAGE: {
        status: 409,
        message:
          'There is no storage to bill: the days without charge are not over, or all of it is billed.',
      },
      OVER_STORAGE: {
        status: 409,
        message:
          'That is more storage than is due by the shop’s rule. Bill what is due at most, or let the owner change the rule.',
        data: z.object({ due: z.int(), over: z.int() }),
      },
      WARRANTY_UNEXPLAINED: {
        status: 409,
        message:
          'Warranty work goes back to an earlier job. Name that job and say why this is at no charge.',
      },
      OVER_APPROVAL,
      OVER_CREDIT_LIMIT: {
        status: 409,
        message:
          'With this bill the customer would owe more than their credit limit. Take a payment first, or say that you let it pass.',
        data: z.object({ owed: z.int(), limit: z.int(), over: z.int() }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        /** Warranty work is billed at no charge, its cost kept; storage may be billed beside the work. */
        sort: z.enum(INVOICE_SORTS).default('work'),
        /** What was done, when it differs from what was estimated; null bills that estimate, or the storage due. */
        lines: Lines.nullable().default(null),
        /** Off the whole bill; taken from the estimate when `lines` is null. */
        discount: Discount.nullable().default(null),
        /** For warranty work: the job that it goes back to. */
        warrantyOf: JobId.nullable().default(null),
        /** For warranty work: why it is at no charge. */
        reason: maybeText(500),
        /** The customer's credit limit is let pass. */
        beyondCredit: z.boolean().default(false),
        /** What is billed and still on the shelf leaves it with the invoice, as far as it is there for this job. */
        issueParts: z.boolean().default(false),
        note: maybeText(2000),
      }),
    )
    .output(Account),
};
