import { z } from 'zod';
import { APPROVAL_WAYS } from '../../work/vocabulary.ts';
import { writes } from '../base.ts';
import { Minor, SignatureInput, text } from '../fields.ts';
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
        /** Up to what the bill may come; the estimate's total when the customer took it whole. */
        amount: Minor,
        signature: SignatureInput.nullable().default(null),
      }),
    )
    .output(Account),
};
