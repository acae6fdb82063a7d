import { z } from 'zod';
import { AGE_BASES, AGES } from '../../money/books/ageing.ts';
import { REPORTS } from '../../work/reports.ts';
import { PAYMENT_KINDS, PAYMENT_METHODS } from '../../work/vocabulary.ts';
import { reads, writes } from '../base.ts';
import { PaperCard } from '../counter/index.ts';
import { CalendarDate, Instant, Minor, maybeText } from '../fields.ts';
import { CustomerId, InvoiceId, JobCode, StaffId } from '../ids.ts';

/** The shop's books: who owes what, the drawer, reports. Money is integer minor units. */

const inOrder = ({ from, to }: { from: string; to: string }): boolean => from <= to;
const IN_ORDER = { path: ['to'], message: 'The last day comes before the first: swap them.' };

/** As for any amount: a thousand million. */
const MOST = 100_000_000_000;

const Basis = z.enum(AGE_BASES).default('due-date');

/** What is open, by its age. */
const Aged = z.record(z.enum(AGES), z.int());

const OpenInvoice = z.object({
  id: InvoiceId,
  number: z.string(),
  jobCode: JobCode,
  invoicedOn: CalendarDate,
  /** Null: due on the day of the invoice. */
  dueOn: CalendarDate.nullable(),
  total: z.int(),
  open: z.int(),
  age: z.enum(AGES),
  /** Days since it was due or invoiced, as the basis says; below zero before that. */
  days: z.int(),
});
export type OpenInvoice = z.infer<typeof OpenInvoice>;

const Debtor = z.object({
  customerId: CustomerId,
  name: z.string(),
  phone: z.string(),
  aged: Aged,
  open: z.int(),
  /** Paid and not applied: the shop owes it, whatever is open. */
  unapplied: z.int(),
  invoices: z.array(OpenInvoice),
});
export type Debtor = z.infer<typeof Debtor>;

export const Receivables = z.object({
  on: CalendarDate,
  basis: z.enum(AGE_BASES),
  aged: Aged,
  open: z.int(),
  customers: z.array(Debtor),
});
export type Receivables = z.infer<typeof Receivables>;

const LedgerEntry = z.object({
  on: CalendarDate,
  what: z.enum(['invoice', 'credit-note', ...PAYMENT_KINDS]),
  /** Of the invoice, the credit note or the receipt; empty for money without a receipt. */
  number: z.string(),
  jobCode: JobCode,
  /** What the customer owes more by it; below zero: less. */
  amount: z.int(),
  /** What the customer owed after it; below zero when the shop owed. */
  balance: z.int(),
});
export type LedgerEntry = z.infer<typeof LedgerEntry>;

export const CustomerLedger = z.object({
  customerId: CustomerId,
  name: z.string(),
  from: CalendarDate,
  to: CalendarDate,
  opening: z.int(),
  entries: z.array(LedgerEntry),
  closing: z.int(),
  /** What was open at the end of the last day, and how old it was since it was due. */
  aged: Aged,
  openInvoices: z.array(OpenInvoice),
  unapplied: z.int(),
});
export type CustomerLedger = z.infer<typeof CustomerLedger>;

const Statement = z.object({
  paper: PaperCard,
  from: CalendarDate,
  to: CalendarDate,
  /** Owed at the end of it; below zero when the shop owed. */
  closing: z.int(),
});
export type Statement = z.infer<typeof Statement>;

const ByMethod = z.record(z.enum(PAYMENT_METHODS), z.int());

/** What slips or the bank say of a day: below zero when more was given back than taken. */
const Slips = z.int('Give the amount in whole minor units (cents).').min(-MOST).max(MOST);

const CashUp = z.object({
  opening: z.int(),
  expected: ByMethod,
  counted: ByMethod,
  /** Counted less expected, all methods together. */
  difference: z.int(),
  note: z.string(),
  by: z.string(),
  at: Instant,
});
export type CashUp = z.infer<typeof CashUp>;

export const DrawerDay = z.object({
  day: CalendarDate,
  /** Cash that was counted when the drawer was counted last before this day; null when it never was. */
  left: z.int().nullable(),
  /** What came in less what went out that day, by method. */
  taken: ByMethod,
  moved: z.array(
    z.object({
      at: Instant,
      kind: z.enum(PAYMENT_KINDS),
      method: z.enum(PAYMENT_METHODS),
      amount: z.int(),
      customerName: z.string(),
      jobCode: JobCode,
      by: z.string(),
    }),
  ),
  /** Oldest first; the last one counts. */
  cashUps: z.array(CashUp),
});
export type DrawerDay = z.infer<typeof DrawerDay>;

/** How a column is to be read: money in minor units, hours and quantities in thousandths, shares in millionths. */
export const COLUMN_KINDS = [
  'text',
  'job',
  'date',
  'money',
  'hours',
  'quantity',
  'share',
  'count',
] as const;

const Cell = z.union([z.string(), z.number(), z.null()]);

export const ReportTable = z.object({
  key: z.string(),
  heading: z.string(),
  /** What the figures are, in a sentence; may be empty. */
  note: z.string(),
  columns: z.array(z.object({ label: z.string(), as: z.enum(COLUMN_KINDS) })),
  rows: z.array(z.array(Cell)),
  /** The last line of the table; null when nothing adds up. */
  total: z.array(Cell).nullable(),
});
export type ReportTable = z.infer<typeof ReportTable>;

export const Report = z.object({
  report: z.enum(REPORTS),
  title: z.string(),
  from: CalendarDate,
  to: CalendarDate,
  tables: z.array(ReportTable),
});
export type Report = z.infer<typeof Report>;

const reportFields = {
  report: z.enum(REPORTS),
  from: CalendarDate,
  to: CalendarDate,
  basis: Basis,
};

export const books = {
  /** What customers owe at the end of a day, today's when none is given; the oldest first. */
  receivables: reads
    .input(z.strictObject({ on: CalendarDate.nullable().default(null), basis: Basis }))
    .output(Receivables),

  customerLedger: reads
    .input(
      z
        .strictObject({ customerId: CustomerId, from: CalendarDate, to: CalendarDate })
        .refine(inOrder, IN_ORDER),
    )
    .output(CustomerLedger),

  /** Issues a customer's account for a time as a paper. */
  issueStatement: writes
    .errors({
      NOTHING_ON_ACCOUNT: {
        status: 409,
        message:
          'Nothing was on this customer’s account in that time, and nothing is open. Choose an earlier first day.',
      },
    })
    .input(
      z
        .strictObject({ by: StaffId, customerId: CustomerId, from: CalendarDate, to: CalendarDate })
        .refine(inOrder, IN_ORDER),
    )
    .output(PaperCard),

  /** What was issued to a customer so far, the newest first. */
  statements: reads.input(z.strictObject({ customerId: CustomerId })).output(z.array(Statement)),

  /** The money of a day, today's when none is given, and how it was counted. */
  drawer: reads
    .input(z.strictObject({ day: CalendarDate.nullable().default(null) }))
    .output(DrawerDay),

  /** Counts the drawer. Counting again adds another count; the last one stands. */
  cashUp: writes
    .errors({
      DAY_TO_COME: {
        status: 409,
        message: 'That day is still to come. Count the drawer at its end.',
      },
      DIFFERENCE_UNEXPLAINED: {
        status: 409,
        message:
          'What was counted is not what is expected. Count again, or write in the note what is known of it.',
        data: z.object({ difference: z.int() }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        day: CalendarDate,
        opening: Minor,
        counted: z.strictObject({ cash: Minor, card: Slips, transfer: Slips, cheque: Slips }),
        note: maybeText(500),
      }),
    )
    .output(DrawerDay),

  report: reads.input(z.strictObject(reportFields).refine(inOrder, IN_ORDER)).output(Report),

  /** A table of a report as CSV, or the whole report as PDF. */
  reportFile: reads
    .input(
      z
        .strictObject({
          ...reportFields,
          form: z.enum(['csv', 'pdf']),
          /** For CSV: which table; the first when empty. */
          table: maybeText(40),
          /** For CSV: a byte-order mark before it, by which spreadsheets know its letters. */
          mark: z.boolean().default(false),
        })
        .refine(inOrder, IN_ORDER),
    )
    .output(
      z.object({
        fileName: z.string(),
        mediaType: z.string(),
        /** Base64. */
        bytes: z.base64(),
      }),
    ),
};
