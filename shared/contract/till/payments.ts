import { z } from 'zod';
import { PAYMENT_KINDS, PAYMENT_METHODS } from '../../work/vocabulary.ts';
import { reads, writes } from '../base.ts';
import { Minor, maybeText } from '../fields.ts';
import { CustomerId, JobId, StaffId } from '../ids.ts';
import { Account, Receipt } from './account.ts';
import { CustomerMoney } from './customer-money.ts';

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

  /** What a customer owes over all their jobs, and what of their money is held. */
  customerMoney: reads.input(z.strictObject({ customerId: CustomerId })).output(CustomerMoney),

  /** One sum for several jobs of a customer: it pays their open invoices, the oldest first. */
  takeAccountPayment: writes
    .errors({
      OVERPAID,
      GIVEN_TOO_LITTLE,
      NOTHING_OPEN: {
        status: 409,
        message:
          'No invoice of this customer is open. Take the money as a deposit on the job that it is for.',
      },
    })
    .input(z.strictObject({ by: StaffId, customerId: CustomerId, ...Handing }))
    .output(z.object({ receipt: Receipt, money: CustomerMoney })),

  /**
   * Sets what is left over on other jobs of the customer, whose bills are issued, against the open invoices
   * of this job.
   */
  spendCredit: writes
    .errors({
      NO_CREDIT: {
        status: 409,
        message:
          'Nothing is left over on other jobs of this customer, or nothing is open here. Take a payment.',
      },
    })
    .input(z.strictObject({ by: StaffId, jobId: JobId }))
    .output(Account),
};
