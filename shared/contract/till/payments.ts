import { z } from 'zod';
import { PAYMENT_KINDS, PAYMENT_METHODS } from '../../work/vocabulary.ts';
import { writes } from '../base.ts';
import { Minor, maybeText } from '../fields.ts';
import { JobId, StaffId } from '../ids.ts';
import { Account } from './account.ts';

const PaidAmount = Minor.min(1, 'A payment is more than zero.');

const OVERPAID = {
  status: 409,
  message:
    'That is more than is due. Take what is due and give change, or keep the rest as the customer’s credit.',
  data: z.object({ due: z.int() }),
} as const;

const GIVEN_TOO_LITTLE = {
  status: 409,
  message: 'Less was given than is to be taken. Take what was given as part of it.',
  data: z.object({ short: z.int() }),
} as const;

/** How money changes hands. */
const Handing = {
  method: z.enum(PAYMENT_METHODS),
  amount: PaidAmount,
  /** Cash that was handed over, when there is change to give; null when it was exact. */
  given: Minor.nullable().default(null),
  /** Of a card slip, a transfer or a cheque. */
  reference: maybeText(80),
  /** More than is due is taken, and kept for the customer. */
  keepOver: z.boolean().default(false),
};

export const payments = {
  takePayment: writes
    .errors({
      OVERPAID,
      GIVEN_TOO_LITTLE,
      NOT_INVOICED: {
        status: 409,
        message: 'There is no invoice yet. Take this as a deposit, or issue the invoice first.',
      },
      NOTHING_TO_REFUND: {
        status: 409,
        message:
          'Only money that is set against no invoice is given back, and there is less than that. Write a credit note first.',
        data: z.object({ free: z.int() }),
      },
    })
    .input(z.strictObject({ by: StaffId, jobId: JobId, kind: z.enum(PAYMENT_KINDS), ...Handing }))
    .output(Account),
};
