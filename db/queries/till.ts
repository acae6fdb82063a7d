import { asc, eq } from 'drizzle-orm';
import { EstimateId, InvoiceId, JobId, PaymentId } from '../../shared/contract/ids.ts';
import type { Account, Approval, Estimate, Invoice, Payment } from '../../shared/contract/till.ts';
import { approvedLimit } from '../../shared/work/approval.ts';
import { approval, estimate, invoice, job, payment, staff } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';
import { papersOf, shopOf } from './office.ts';

/** What people read on an invoice: `I-000042`. */
export const invoiceNumber = (number: number): string => `I-${String(number).padStart(6, '0')}`;

function paperIn(papers: ReturnType<typeof papersOf>, id: string) {
  const paper = papers.find((card) => card.id === id);
  if (paper === undefined) throw new Error(`The paper ${id} is missing from the store.`);
  return paper;
}

function estimatesOf(
  store: ReadStore,
  jobId: string,
  papers: ReturnType<typeof papersOf>,
): Estimate[] {
  return store
    .select({ estimate, byName: staff.name })
    .from(estimate)
    .innerJoin(staff, eq(staff.id, estimate.by))
    .where(eq(estimate.jobId, jobId))
    .orderBy(asc(estimate.revision))
    .all()
    .map(({ estimate: row, byName }) => ({
      id: EstimateId.parse(row.id),
      number: row.number,
      revision: row.revision,
      lines: row.lines,
      totals: row.totals,
      note: row.note,
      validUntil: row.validUntil,
      writtenBy: byName,
      writtenAt: row.at,
      paper: paperIn(papers, row.paperId),
    }));
}

const approvalsOf = (store: ReadStore, jobId: string): Approval[] =>
  store
    .select({ approval, byName: staff.name, estimateNumber: estimate.number })
    .from(approval)
    .innerJoin(staff, eq(staff.id, approval.by))
    .innerJoin(estimate, eq(estimate.id, approval.estimateId))
    .where(eq(approval.jobId, jobId))
    .orderBy(asc(approval.at), asc(approval.id))
    .all()
    .map(({ approval: row, byName, estimateNumber }) => ({
      estimateNumber,
      how: row.how,
      approvedBy: row.approvedBy,
      amount: row.amount,
      takenBy: byName,
      at: row.at,
    }));

function invoiceOf(
  store: ReadStore,
  jobId: string,
  papers: ReturnType<typeof papersOf>,
): Invoice | null {
  const found = store
    .select({ invoice, byName: staff.name })
    .from(invoice)
    .innerJoin(staff, eq(staff.id, invoice.by))
    .where(eq(invoice.jobId, jobId))
    .get();
  if (found === undefined) return null;
  return {
    id: InvoiceId.parse(found.invoice.id),
    number: invoiceNumber(found.invoice.number),
    lines: found.invoice.lines,
    totals: found.invoice.totals,
    issuedBy: found.byName,
    issuedAt: found.invoice.at,
    paper: paperIn(papers, found.invoice.paperId),
  };
}

const paymentsOf = (store: ReadStore, jobId: string): Payment[] =>
  store
    .select({ payment, byName: staff.name })
    .from(payment)
    .innerJoin(staff, eq(staff.id, payment.by))
    .where(eq(payment.jobId, jobId))
    .orderBy(asc(payment.at), asc(payment.id))
    .all()
    .map(({ payment: row, byName }) => ({
      id: PaymentId.parse(row.id),
      kind: row.kind,
      method: row.method,
      amount: row.amount,
      by: byName,
      at: row.at,
    }));

/** Money in less money out. */
const paidIn = (payments: readonly Pick<Payment, 'kind' | 'amount'>[]): number =>
  payments.reduce((sum, { kind, amount }) => sum + (kind === 'refund' ? -amount : amount), 0);

/** The money side of one job. */
export function accountOf(store: ReadStore, jobId: string): Account | undefined {
  const row = store.select().from(job).where(eq(job.id, jobId)).get();
  if (row === undefined) return undefined;
  const papers = papersOf(store, jobId);
  const approvals = approvalsOf(store, jobId);
  const bill = invoiceOf(store, jobId, papers);
  const payments = paymentsOf(store, jobId);
  const paid = paidIn(payments);
  return {
    jobId: JobId.parse(row.id),
    currency: shopOf(store).currency,
    estimates: estimatesOf(store, jobId, papers),
    approvals,
    approvedLimit: approvedLimit(row.spendingLimit, approvals),
    spendingLimit: row.spendingLimit,
    depositAgreed: row.depositAgreed,
    invoice: bill,
    payments,
    paid,
    due: (bill?.totals.total ?? 0) - paid,
  };
}
