import { blob, index, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { TaxRule } from '../../shared/contract/office.ts';
import type { PaperKind, StaffRole } from '../../shared/work/vocabulary.ts';
import { flag, id, instant, json, minor } from './columns.ts';

/** The shop itself: one row. */
export const shop = sqliteTable('shop', {
  only: integer('only').primaryKey(),
  name: text('name').notNull(),
  address: text('address').notNull(),
  phone: text('phone').notNull(),
  email: text('email').notNull(),
  taxNumber: text('tax_number').notNull(),
  currency: text('currency').notNull(),
  locale: text('locale').notNull(),
  timeZone: text('time_zone').notNull(),
  country: text('country').notNull(),
  paperSize: text('paper_size').$type<'A4' | 'Letter'>().notNull(),
  rounding: text('rounding').$type<'half-up' | 'half-even'>().notNull(),
  taxBasis: text('tax_basis').$type<'line' | 'invoice'>().notNull(),
  taxes: json<TaxRule[]>('taxes').notNull(),
  labourRate: minor('labour_rate').notNull(),
  bothUnits: flag('both_units').notNull(),
  warranty: text('warranty').notNull(),
  claimTerms: text('claim_terms').notNull(),
  estimateTerms: text('estimate_terms').notNull(),
  invoiceTerms: text('invoice_terms').notNull(),
  demo: flag('demo').notNull(),
});

export const staff = sqliteTable(
  'staff',
  {
    id: id(),
    name: text('name').notNull(),
    role: text('role').$type<StaffRole>().notNull(),
    active: flag('active').notNull(),
    /** What an hour of theirs costs the shop. */
    hourlyCost: minor('hourly_cost').notNull().default(0),
  },
  (table) => [uniqueIndex('staff_name').on(table.name)],
);

/** The next number of each kind of thing that people number; taken inside the transaction that uses it. */
export const counterNumber = sqliteTable('counter_number', {
  kind: text('kind').primaryKey(),
  next: integer('next').notNull(),
});

/** Append-only: what a paper said, its fingerprint, and the PDF byte for byte. */
export const issuedPaper = sqliteTable(
  'issued_paper',
  {
    id: id(),
    kind: text('kind').$type<PaperKind>().notNull(),
    number: text('number').notNull(),
    /** Empty for a paper of no single job. */
    jobId: text('job_id').notNull(),
    title: text('title').notNull(),
    fileName: text('file_name').notNull(),
    /** Canonical JSON: what the fingerprint is the SHA-256 of. */
    content: text('content').notNull(),
    fingerprint: text('fingerprint').notNull(),
    pdf: blob('pdf', { mode: 'buffer' }).notNull(),
    pdfSha256: text('pdf_sha256').notNull(),
    issuedAt: instant('issued_at').notNull(),
    issuedBy: text('issued_by')
      .notNull()
      .references(() => staff.id),
  },
  (table) => [
    uniqueIndex('issued_paper_number').on(table.kind, table.number),
    index('issued_paper_job').on(table.jobId),
  ],
);

/** Append-only; each entry holds the hash of the one before. */
export const journal = sqliteTable('journal', {
  seq: integer('seq').primaryKey(),
  at: instant('at').notNull(),
  by: text('by').notNull(),
  /** The procedure that wrote, e.g. `counter.takeIn`. */
  what: text('what').notNull(),
  /** Ids and amounts, JSON with sorted keys. */
  detail: text('detail').notNull(),
  previous: text('previous').notNull(),
  hash: text('hash').notNull(),
});

/** Calls that were answered within the last day: one that comes again, because its answer was lost, gets the same. */
export const answeredRequest = sqliteTable(
  'answered_request',
  {
    /** A UUID that the caller made up for it. */
    key: text('key').primaryKey(),
    /** The procedure, e.g. `counter.takeIn`. */
    what: text('what').notNull(),
    /** JSON. */
    answer: text('answer').notNull(),
    at: instant('at').notNull(),
  },
  (table) => [index('answered_request_at').on(table.at)],
);
