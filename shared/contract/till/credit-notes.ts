import { z } from 'zod';
import { writes } from '../base.ts';
import { Minor, text } from '../fields.ts';
import { InvoiceId, StaffId } from '../ids.ts';
import { Account } from './account.ts';

const CreditedLine = z.strictObject({
  /** Its place on the invoice, from 0. */
  line: z.int().min(0).max(299),
  /** Of the line as it is billed, before discount on the whole and tax; null for all that is left of it. */
  amount: Minor.min(1, 'A credit is more than zero.').nullable().default(null),
});

export const creditNotes = {
  /**
   * Takes lines, or parts of them, off an issued invoice, with their shares of tax and of the discount on the
   * whole. What was paid of them is free again: given back, or set against another bill.
   */
  creditInvoice: writes
    .errors({
      CREDITED_TOO_MUCH: {
        status: 409,
        message: 'That is more than is left of the line. Credit what is left of it at most.',
        data: z.object({ line: z.int(), left: z.int() }),
      },
      CREDIT_CHARGES: {
        status: 409,
        message:
          'Together these lines would charge the customer more. Credit other lines along with them, or bill it by a new invoice.',
        data: z.object({ total: z.int() }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        invoiceId: InvoiceId,
        lines: z.array(CreditedLine).min(1, 'Say which lines are credited.').max(300),
        reason: text(500),
      }),
    )
    .output(Account),
};
