import { index, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { Signature } from '../../shared/contract/fields.ts';
import type {
  DeclinedLine,
  EstimateOption,
  Line,
  LineInput,
  TillRules,
  Totals,
} from '../../shared/contract/till/index.ts';
import type {
  ApprovalWay,
  ClockEvent,
  InvoiceSort,
  PaymentKind,
  PaymentMethod,
} from '../../shared/work/vocabulary.ts';
import { date, flag, id, instant, json, minor } from './columns.ts';
import { customer, job } from './counter.ts';
import { issuedPaper, staff } from './office.ts';

/** Append-only: a changed estimate is a new revision. Lines and totals stand as they were written. */
export const estimate = sqliteTable(
  'estimate',
  {
    id: id(),
    number: text('number').notNull(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    revision: integer('revision').notNull(),
    /** The ways to do it; lines and totals are those of the first. Older estimates have none here. */
    options: json<EstimateOption[]>('options').notNull().default([]),
    lines: json<Line[]>('lines').notNull(),
    totals: json<Totals>('totals').notNull(),
    total: minor('total').notNull(),
    note: text('note').notNull(),
    validUntil: date('valid_until'),
    paperId: text('paper_id')
      .notNull()
      .references(() => issuedPaper.id),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [uniqueIndex('estimate_revision').on(table.jobId, table.revision)],
);

/** Append-only: an approval is an event. */
export const approval = sqliteTable(
  'approval',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    estimateId: text('estimate_id')
      .notNull()
      .references(() => estimate.id),
    how: text('how').$type<ApprovalWay>().notNull(),
    approvedBy: text('approved_by').notNull(),
    amount: minor('amount').notNull(),
    /** Key of the option that was taken. */
    option: text('option').notNull().default('a'),
    declined: json<DeclinedLine[]>('declined').notNull().default([]),
    note: text('note').notNull().default(''),
    signature: json<Signature>('signature'),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('approval_job').on(table.jobId)],
);

/** Append-only: the owner let a job pass what was approved. */
export const limitOverride = sqliteTable(
  'limit_override',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    /** What the bill may come to. */
    amount: minor('amount').notNull(),
    reason: text('reason').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('limit_override_job').on(table.jobId)],
);

/** Append-only: an issued invoice never changes; `number` has no gaps. */
export const invoice = sqliteTable(
  'invoice',
  {
    id: id(),
    number: integer('number').notNull(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    lines: json<Line[]>('lines').notNull(),
    totals: json<Totals>('totals').notNull(),
    total: minor('total').notNull(),
    currency: text('currency').notNull(),
    sort: text('sort').$type<InvoiceSort>().notNull().default('work'),
    declined: json<DeclinedLine[]>('declined').notNull().default([]),
    dueOn: date('due_on'),
    /** For warranty work: the job that it goes back to, and why it is at no charge. */
    warrantyOf: text('warranty_of').references(() => job.id),
    reason: text('reason').notNull().default(''),
    note: text('note').notNull(),
    paperId: text('paper_id')
      .notNull()
      .references(() => issuedPaper.id),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [
    uniqueIndex('invoice_number').on(table.number),
    index('invoice_of_job').on(table.jobId),
  ],
);

/** Append-only: what is taken off an issued invoice; `number` has no gaps. */
export const creditNote = sqliteTable(
  'credit_note',
  {
    id: id(),
    number: integer('number').notNull(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    invoiceId: text('invoice_id')
      .notNull()
      .references(() => invoice.id),
    /** The credited lines with what is credited of them, and which line of the invoice each one is. */
    lines: json<Line[]>('lines').notNull(),
    lineIndexes: json<number[]>('line_indexes').notNull(),
    totals: json<Totals>('totals').notNull(),
    total: minor('total').notNull(),
    currency: text('currency').notNull(),
    reason: text('reason').notNull(),
    paperId: text('paper_id')
      .notNull()
      .references(() => issuedPaper.id),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [
    uniqueIndex('credit_note_number').on(table.number),
    index('credit_note_invoice').on(table.invoiceId),
    index('credit_note_job').on(table.jobId),
  ],
);

/** Append-only: money that changed hands once, whatever it was for; `number` has no gaps. */
export const receipt = sqliteTable(
  'receipt',
  {
    id: id(),
    number: integer('number').notNull(),
    customerId: text('customer_id')
      .notNull()
      .references(() => customer.id),
    kind: text('kind').$type<PaymentKind>().notNull(),
    method: text('method').$type<PaymentMethod>().notNull(),
    amount: minor('amount').notNull(),
    /** Cash that was handed over, and what was given back of it. */
    given: minor('given'),
    change: minor('change').notNull(),
    reference: text('reference').notNull(),
    currency: text('currency').notNull(),
    paperId: text('paper_id')
      .notNull()
      .references(() => issuedPaper.id),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [
    uniqueIndex('receipt_number').on(table.number),
    index('receipt_customer').on(table.customerId),
  ],
);

/** Append-only: money in (deposit, payment) and out (refund); the amount is never negative. */
export const payment = sqliteTable(
  'payment',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    kind: text('kind').$type<PaymentKind>().notNull(),
    method: text('method').$type<PaymentMethod>().notNull(),
    amount: minor('amount').notNull(),
    currency: text('currency').notNull(),
    /** One receipt may pay several jobs; payments of before receipts have none. */
    receiptId: text('receipt_id').references(() => receipt.id),
    reference: text('reference').notNull().default(''),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('payment_job').on(table.jobId)],
);

/**
 * Append-only: money of a job that was set against an invoice; below zero when a credit note set it free
 * again. What was paid and is not applied is owed to the customer.
 */
export const application = sqliteTable(
  'application',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    invoiceId: text('invoice_id')
      .notNull()
      .references(() => invoice.id),
    amount: minor('amount').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [
    index('application_job').on(table.jobId),
    index('application_invoice').on(table.invoiceId),
  ],
);

/** How the shop prices and what it tolerates: one row. */
export const tillRules = sqliteTable('till_rules', {
  only: integer('only').primaryKey(),
  rules: json<TillRules>('rules').notNull(),
});

/** How a customer is taxed and when they pay; nobody is in here who pays tax and pays at once. */
export const customerTerms = sqliteTable('customer_terms', {
  customerId: text('customer_id')
    .primaryKey()
    .references(() => customer.id),
  taxPlace: text('tax_place').notNull(),
  exemptCertificate: text('exempt_certificate').notNull(),
  exemptUntil: date('exempt_until'),
  /** Pays on account, within so many days of the invoice, owing at most so much (null: no end). */
  onAccount: flag('on_account').notNull(),
  termsDays: integer('terms_days').notNull(),
  creditLimit: minor('credit_limit'),
});

/** Lines that are used together again and again, with their usual hours. */
export const bundle = sqliteTable(
  'bundle',
  {
    id: id(),
    name: text('name').notNull(),
    note: text('note').notNull(),
    lines: json<LineInput[]>('lines').notNull(),
    retired: flag('retired').notNull(),
  },
  (table) => [uniqueIndex('bundle_name').on(table.name)],
);

/** Append-only: what became of a person's clock on a job. The last event of an entry is how it stands. */
export const clockEvent = sqliteTable(
  'clock_event',
  {
    id: id(),
    entryId: text('entry_id').notNull(),
    what: text('what').$type<ClockEvent>().notNull(),
    staffId: text('staff_id')
      .notNull()
      .references(() => staff.id),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    workKind: text('work_kind').notNull(),
    startedAt: instant('started_at').notNull(),
    endedAt: instant('ended_at'),
    reason: text('reason').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [
    index('clock_event_entry').on(table.entryId),
    index('clock_event_job').on(table.jobId),
    index('clock_event_staff').on(table.staffId, table.startedAt),
  ],
);

/** Append-only: the drawer counted at the end of a day. */
export const cashUp = sqliteTable(
  'cash_up',
  {
    id: id(),
    day: date('day').notNull(),
    /** In the drawer when the day began. */
    opening: minor('opening').notNull(),
    expected: json<Partial<Record<PaymentMethod, number>>>('expected').notNull(),
    counted: json<Partial<Record<PaymentMethod, number>>>('counted').notNull(),
    difference: minor('difference').notNull(),
    note: text('note').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('cash_up_day').on(table.day)],
);

/** Append-only: whose a statement is, and for what time. The paper itself names no id. */
export const customerStatement = sqliteTable(
  'customer_statement',
  {
    paperId: text('paper_id')
      .primaryKey()
      .references(() => issuedPaper.id),
    customerId: text('customer_id')
      .notNull()
      .references(() => customer.id),
    from: date('from_date').notNull(),
    to: date('to_date').notNull(),
    /** Owed at the end of it; below zero when the shop owed. */
    closing: minor('closing').notNull(),
  },
  (table) => [index('customer_statement_customer').on(table.customerId)],
);
