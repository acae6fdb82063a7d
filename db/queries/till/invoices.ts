import { asc, eq, sql } from 'drizzle-orm';
import type { PaperCard } from '../../../shared/contract/counter/index.ts';
import { CreditNoteId, InvoiceId } from '../../../shared/contract/ids.ts';
import {
  type CreditNote,
  type Invoice,
  Line,
  Totals,
} from '../../../shared/contract/till/index.ts';
import { lineCreditsOf } from '../../../shared/money/index.ts';
import { prepared } from '../../prepared.ts';
import { application, creditNote, invoice, staff } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { paperIn } from './paper-in.ts';

/** What people read on an invoice: `I-000042`. */
export const invoiceNumber = (number: number): string => `I-${String(number).padStart(6, '0')}`;

/** What people read on a credit note: `N-000042`. */
export const creditNoteNumber = (number: number): string => `N-${String(number).padStart(6, '0')}`;

const totalBy = (rows: readonly { invoiceId: string; amount: number }[], id: string): number =>
  rows.reduce((sum, { invoiceId, amount }) => (invoiceId === id ? sum + amount : sum), 0);

const creditsOfJob = prepared((store) =>
  store
    .select({
      invoiceId: creditNote.invoiceId,
      amount: creditNote.total,
      lines: creditNote.lines,
      lineIndexes: creditNote.lineIndexes,
    })
    .from(creditNote)
    .where(eq(creditNote.jobId, sql.placeholder('jobId')))
    .prepare(),
);

const applicationsOfJob = prepared((store) =>
  store
    .select({ invoiceId: application.invoiceId, amount: application.amount })
    .from(application)
    .innerJoin(invoice, eq(invoice.id, application.invoiceId))
    .where(eq(invoice.jobId, sql.placeholder('jobId')))
    .prepare(),
);

const invoicesOfJob = prepared((store) =>
  store
    .select({ invoice, byName: staff.name })
    .from(invoice)
    .innerJoin(staff, eq(staff.id, invoice.by))
    .where(eq(invoice.jobId, sql.placeholder('jobId')))
    .orderBy(asc(invoice.number))
    .prepare(),
);

/** All invoices of a job, oldest first, each with what was credited and paid of it. */
export function invoicesOf(
  store: ReadStore,
  jobId: string,
  papers: readonly PaperCard[],
): Invoice[] {
  const credits = creditsOfJob(store).all({ jobId });
  const applications = applicationsOfJob(store).all({ jobId });
  return invoicesOfJob(store)
    .all({ jobId })
    .map(({ invoice: row, byName }) => {
      const credited = totalBy(credits, row.id);
      const applied = totalBy(applications, row.id);
      return {
        id: InvoiceId.parse(row.id),
        number: invoiceNumber(row.number),
        sort: row.sort,
        lines: row.lines.map((line) => Line.parse(line)),
        totals: Totals.parse(row.totals),
        declined: row.declined,
        dueOn: row.dueOn,
        credited,
        ...lineCreditsOf(
          row.lines,
          credits.filter(({ invoiceId }) => invoiceId === row.id),
        ),
        applied,
        open: row.total - credited - applied,
        issuedBy: byName,
        issuedAt: row.at,
        paper: paperIn(papers, row.paperId),
      };
    });
}

const creditNotesOfJob = prepared((store) =>
  store
    .select({ creditNote, invoice: invoice.number, byName: staff.name })
    .from(creditNote)
    .innerJoin(staff, eq(staff.id, creditNote.by))
    .innerJoin(invoice, eq(invoice.id, creditNote.invoiceId))
    .where(eq(creditNote.jobId, sql.placeholder('jobId')))
    .orderBy(asc(creditNote.number))
    .prepare(),
);

export const creditNotesOf = (
  store: ReadStore,
  jobId: string,
  papers: readonly PaperCard[],
): CreditNote[] =>
  creditNotesOfJob(store)
    .all({ jobId })
    .map(({ creditNote: row, invoice: number, byName }) => ({
      id: CreditNoteId.parse(row.id),
      number: creditNoteNumber(row.number),
      invoiceNumber: invoiceNumber(number),
      lines: row.lines.map((line) => Line.parse(line)),
      totals: Totals.parse(row.totals),
      reason: row.reason,
      issuedBy: byName,
      issuedAt: row.at,
      paper: paperIn(papers, row.paperId),
    }));
