import { z } from 'zod';
import { APPROVAL_WAYS } from '../../work/vocabulary.ts';
import { writes } from '../base.ts';
import { CalendarDate, Minor, maybeText, SignatureInput, text } from '../fields.ts';
import { EstimateId, JobId, StaffId } from '../ids.ts';
import { Account } from './account.ts';
import { ALREADY_INVOICED, JOB_CLOSED } from './refusals.ts';

export const approvals = {
  approve: writes
    .errors({
      JOB_CLOSED,
      ALREADY_INVOICED,
      ESTIMATE_SUPERSEDED: {
        status: 409,
        message: 'There is a newer estimate. Read that one out and approve it.',
      },
      ESTIMATE_EXPIRED: {
        status: 409,
        message:
          'The estimate was good until a day that is past. Write a new revision at today’s prices, then have that approved.',
        data: z.object({ validUntil: CalendarDate }),
      },
      OPTION_WANTED: {
        status: 409,
        message: 'The estimate has several options. Say which of them the customer takes.',
        data: z.object({ options: z.array(z.object({ key: z.string(), label: z.string() })) }),
      },
      NOTHING_TAKEN: {
        status: 409,
        message:
          'With every line declined nothing is approved. Leave at least one, or move the job to where declined work waits.',
      },
      SIGNATURE_WANTED: {
        status: 409,
        message: 'An approval in person is signed. Let the customer sign, or say how else it came.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        estimateId: EstimateId,
        how: z.enum(APPROVAL_WAYS),
        approvedBy: text(120),
        /** Key of the option that the customer takes; null when there is only one. */
        option: text(4).nullable().default(null),
        /** Lines of that option that the customer does not take: their places, from 0. */
        declined: z.array(z.int().min(0).max(299)).max(300).default([]),
        /** Up to what the bill may come; the estimate's total when the customer took it whole. */
        amount: Minor,
        /** In what words it was approved, or what was agreed besides. */
        note: maybeText(500),
        signature: SignatureInput.nullable().default(null),
      }),
    )
    .output(Account),
};
