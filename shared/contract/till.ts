import { z } from 'zod';
import { APPROVAL_WAYS, LINE_KINDS, PAYMENT_METHODS } from '../work/vocabulary.ts';
import { reads, writes } from './base.ts';
import { PaperCard } from './counter.ts';
import { CalendarDate, Instant, Minor, maybeText, SignatureInput, text } from './fields.ts';
import { EstimateId, InvoiceId, JobId, PartId, PaymentId, StaffId } from './ids.ts';

/** The till: estimates, approvals, invoices, payments. Money is integer minor units. */

export const LineInput = z.strictObject({
  kind: z.enum(LINE_KINDS),
  description: text(300),
  partId: PartId.nullable().default(null),
  /** Thousandths: 1500 is 1.5 hours. */
  quantity: z.int().min(1, 'A quantity is more than zero.').max(1_000_000_000),
  unit: text(12).default('pc'),
  unitPrice: Minor,
});
export type LineInput = z.infer<typeof LineInput>;

export const Line = z.object({
  kind: z.enum(LINE_KINDS),
  description: z.string(),
  partId: PartId.nullable(),
  partNumber: z.string(),
  quantity: z.int(),
  unit: z.string(),
  unitPrice: z.int(),
  amount: z.int(),
});
export type Line = z.infer<typeof Line>;

export const Totals = z.object({
  subtotal: z.int(),
  taxes: z.array(z.object({ name: z.string(), ratePpm: z.int(), base: z.int(), amount: z.int() })),
  total: z.int(),
});
export type Totals = z.infer<typeof Totals>;

export const Estimate = z.object({
  id: EstimateId,
  number: z.string(),
  revision: z.int(),
  lines: z.array(Line),
  totals: Totals,
  note: z.string(),
  validUntil: CalendarDate.nullable(),
  writtenBy: z.string(),
  writtenAt: Instant,
  paper: PaperCard,
});
export type Estimate = z.infer<typeof Estimate>;

export const Approval = z.object({
  estimateNumber: z.string(),
  how: z.enum(APPROVAL_WAYS),
  approvedBy: z.string(),
  amount: z.int(),
  takenBy: z.string(),
  at: Instant,
});
export type Approval = z.infer<typeof Approval>;

export const Invoice = z.object({
  id: InvoiceId,
  number: z.string(),
  lines: z.array(Line),
  totals: Totals,
  issuedBy: z.string(),
  issuedAt: Instant,
  paper: PaperCard,
});
export type Invoice = z.infer<typeof Invoice>;

export const PAYMENT_KINDS = ['deposit', 'payment', 'refund'] as const;

export const Payment = z.object({
  id: PaymentId,
  kind: z.enum(PAYMENT_KINDS),
  method: z.enum(PAYMENT_METHODS),
  amount: z.int(),
  by: z.string(),
  at: Instant,
});
export type Payment = z.infer<typeof Payment>;

/** The money side of one job. */
export const Account = z.object({
  jobId: JobId,
  currency: z.string(),
  estimates: z.array(Estimate),
  approvals: z.array(Approval),
  /** What the bill may come to without asking again. */
  approvedLimit: z.int(),
  spendingLimit: z.int().nullable(),
  depositAgreed: z.int().nullable(),
  invoice: Invoice.nullable(),
  payments: z.array(Payment),
  paid: z.int(),
  /** Total of the invoice less what was paid; negative when the shop owes. */
  due: z.int(),
});
export type Account = z.infer<typeof Account>;

const Lines = z
  .array(LineInput)
  .min(1, 'An estimate has at least one line.')
  .max(300, 'Split this into two jobs: no bill has more than 300 lines.');

const JOB_CLOSED = {
  status: 409,
  message: 'The job was handed over; its bill is closed. Open a new job for further work.',
} as const;

const ALREADY_INVOICED = {
  status: 409,
  message: 'The invoice of this job is issued and never changes. Correct it by a credit note.',
} as const;

export const till = {
  account: reads.input(z.strictObject({ jobId: JobId })).output(Account),

  /** What lines would come to, taxes and rounding included; nothing is written. */
  price: reads
    .input(z.strictObject({ lines: Lines }))
    .output(z.object({ lines: z.array(Line), totals: Totals })),

  /** A new revision; the ones before stay as they are. */
  writeEstimate: writes
    .errors({ JOB_CLOSED, ALREADY_INVOICED })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        lines: Lines,
        note: maybeText(2000),
        validUntil: CalendarDate.nullable().default(null),
      }),
    )
    .output(Account),

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
        /** What was done, when it differs from the latest estimate; null bills that estimate. */
        lines: Lines.nullable().default(null),
        note: maybeText(2000),
      }),
    )
    .output(Account),

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
