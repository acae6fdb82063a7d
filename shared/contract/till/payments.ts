import { z } from 'zod';
import { PAYMENT_KINDS, PAYMENT_METHODS } from '../../work/vocabulary.ts';
import { writes } from '../base.ts';
import { Minor } from '../fields.ts';
import { JobId, StaffId } from '../ids.ts';
import { Account } from './account.ts';

export const payments = {
  takePayment: writes
    .errors({
      OVERPAID: {
        status: 409,
        message: 'That is more than is due. Take what is due and give change.',
        data: z.object({ due: z.int() }),
      },
      NOT_INVOICED: {
        status: 409,
        message: 'There is no invoice yet. Take this as a deposit, or issue the invoice first.',
      },
      NOTHING_TO_REFUND: {
        status: 409,
        message: 'Less than that was paid on this job. Refund what was paid at most.',
        data: z.object({ paid: z.int() }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        kind: z.enum(PAYMENT_KINDS),
        method: z.enum(PAYMENT_METHODS),
        amount: Minor.min(1, 'A payment is more than zero.'),
      }),
    )
    .output(Account),
};
