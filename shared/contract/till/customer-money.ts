import { z } from 'zod';
import { CalendarDate, Instant } from '../fields.ts';
import { InvoiceId, JobCode, JobId } from '../ids.ts';

/** An invoice of which something is still to be paid. */
export const UnpaidInvoice = z.object({
  id: InvoiceId,
  number: z.string(),
  jobId: JobId,
  jobCode: JobCode,
  issuedAt: Instant,
  /** The day it is due; null for at once. */
  dueOn: CalendarDate.nullable(),
  total: z.int(),
  open: z.int(),
});
export type UnpaidInvoice = z.infer<typeof UnpaidInvoice>;

/** What a customer owes over all their jobs. */
export const CustomerMoney = z.object({
  /** Oldest first. */
  open: z.array(UnpaidInvoice),
  /** Their money that is set against no invoice, by job. */
  held: z.array(
    z.object({
      jobId: JobId,
      jobCode: JobCode,
      amount: z.int(),
      /** The job has its bill: what it holds is left over, and no deposit. */
      billed: z.boolean(),
    }),
  ),
  owed: z.int(),
  unapplied: z.int(),
});
export type CustomerMoney = z.infer<typeof CustomerMoney>;
