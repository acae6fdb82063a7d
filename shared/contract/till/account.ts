import { z } from 'zod';
import {
  APPROVAL_WAYS,
  INVOICE_SORTS,
  PAYMENT_KINDS,
  PAYMENT_METHODS,
} from '../../work/vocabulary.ts';
import { PaperCard } from '../counter/index.ts';
import { CalendarDate, Instant } from '../fields.ts';
import {
  CreditNoteId,
  CustomerId,
  EstimateId,
  InvoiceId,
  JobId,
  PaymentId,
  ReceiptId,
} from '../ids.ts';
import { Discount, Line, Totals } from './lines.ts';

/** The money side of a job, as it stands. Money is integer minor units. */

/** One way to do it, of which the customer takes one: repair, rebuild, replace the engine. */
export const EstimateOption = z.object({
  /** Within the estimate: `a`, `b` … */
  key: z.string(),
  label: z.string(),
  lines: z.array(Line),
  discount: Discount.nullable(),
  totals: Totals,
});
export type EstimateOption = z.infer<typeof EstimateOption>;

export const Estimate = z.object({
  id: EstimateId,
  number: z.string(),
  revision: z.int(),
  /** One at least; lines and totals beside it are those of the first. */
  options: z.array(EstimateOption),
  lines: z.array(Line),
  totals: Totals,
  note: z.string(),
  validUntil: CalendarDate.nullable(),
  writtenBy: z.string(),
  writtenAt: Instant,
  paper: PaperCard,
});
export type Estimate = z.infer<typeof Estimate>;

/** A line that the customer did not take. */
export const DeclinedLine = z.object({
  /** Its place among the lines of the option, from 0. */
  line: z.int(),
  description: z.string(),
  amount: z.int(),
});
export type DeclinedLine = z.infer<typeof DeclinedLine>;

export const Approval = z.object({
  estimateId: EstimateId,
  estimateNumber: z.string(),
  /** The option that was taken. */
  option: z.string(),
  how: z.enum(APPROVAL_WAYS),
  approvedBy: z.string(),
  amount: z.int(),
  declined: z.array(DeclinedLine),
  note: z.string(),
  takenBy: z.string(),
  /** Who typed the customer's name in place of a signature; null when it was drawn, or not in person. */
  typedBy: z.string().nullable(),
  at: Instant,
});
export type Approval = z.infer<typeof Approval>;

/** The owner let a job pass what was approved, with a reason. */
export const LimitOverride = z.object({
  amount: z.int(),
  reason: z.string(),
  by: z.string(),
  at: Instant,
});
export type LimitOverride = z.infer<typeof LimitOverride>;

export const Invoice = z.object({
  id: InvoiceId,
  number: z.string(),
  sort: z.enum(INVOICE_SORTS),
  lines: z.array(Line),
  totals: Totals,
  declined: z.array(DeclinedLine),
  /** The day it is due; null for at once. */
  dueOn: CalendarDate.nullable(),
  /** What credit notes took off it. */
  credited: z.int(),
  /** What was credited of each line, before discount on the whole and tax. */
  lineCredits: z.array(z.int()),
  /** Places of the lines that were credited whole; an invoice of which no line is left makes way for another. */
  wholeLines: z.array(z.int()),
  /** What was paid of it. */
  applied: z.int(),
  /** What is still to be paid of it. */
  open: z.int(),
  issuedBy: z.string(),
  issuedAt: Instant,
  paper: PaperCard,
});
export type Invoice = z.infer<typeof Invoice>;

export const CreditNote = z.object({
  id: CreditNoteId,
  number: z.string(),
  invoiceNumber: z.string(),
  lines: z.array(Line),
  totals: Totals,
  reason: z.string(),
  issuedBy: z.string(),
  issuedAt: Instant,
  paper: PaperCard,
});
export type CreditNote = z.infer<typeof CreditNote>;

/** Money that changed hands once, with its paper; it may be spread over several jobs. */
export const Receipt = z.object({
  id: ReceiptId,
  number: z.string(),
  amount: z.int(),
  /** Cash that was handed over; null when nobody counted it. */
  given: z.int().nullable(),
  change: z.int(),
  paper: PaperCard,
});
export type Receipt = z.infer<typeof Receipt>;

export const Payment = z.object({
  id: PaymentId,
  kind: z.enum(PAYMENT_KINDS),
  method: z.enum(PAYMENT_METHODS),
  amount: z.int(),
  reference: z.string(),
  /** Payments of before receipts have none. */
  receipt: Receipt.nullable(),
  by: z.string(),
  at: Instant,
});
export type Payment = z.infer<typeof Payment>;

/** The money side of one job. */
export const Account = z.object({
  jobId: JobId,
  customerId: CustomerId,
  currency: z.string(),
  estimates: z.array(Estimate),
  approvals: z.array(Approval),
  overrides: z.array(LimitOverride),
  /** What the customer approved, or the spending limit of intake; without the shop's tolerance. */
  approvedAmount: z.int(),
  /** What the bill may come to without asking again: approved, with the tolerance, or overridden. */
  approvedLimit: z.int(),
  spendingLimit: z.int().nullable(),
  depositAgreed: z.int().nullable(),
  /** The bill of the work, unless it was credited whole; null before. */
  invoice: Invoice.nullable(),
  /** All of them, those for storage and credited ones too. */
  invoices: z.array(Invoice),
  creditNotes: z.array(CreditNote),
  payments: z.array(Payment),
  paid: z.int(),
  /** What is open on invoices less what is unapplied; negative when the shop owes. */
  due: z.int(),
  /** Paid and not yet applied to an invoice: a liability of the shop. */
  unapplied: z.int(),
});
export type Account = z.infer<typeof Account>;
