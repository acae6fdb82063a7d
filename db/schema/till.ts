import { index, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { Signature } from '../../shared/contract/fields.ts';
import type { Line, PAYMENT_KINDS, Totals } from '../../shared/contract/till.ts';
import type { ApprovalWay, PaymentMethod } from '../../shared/work/vocabulary.ts';
import { date, id, instant, json, minor } from './columns.ts';
import { job } from './counter.ts';
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
    signature: json<Signature>('signature'),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('approval_job').on(table.jobId)],
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
    uniqueIndex('invoice_job').on(table.jobId),
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
    kind: text('kind').$type<(typeof PAYMENT_KINDS)[number]>().notNull(),
    method: text('method').$type<PaymentMethod>().notNull(),
    amount: minor('amount').notNull(),
    currency: text('currency').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('payment_job').on(table.jobId)],
);
