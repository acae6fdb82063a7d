import { asc, eq } from 'drizzle-orm';
import { CustomerId, JobId, PaymentId, ReceiptId } from '../../../shared/contract/ids.ts';
import type { Account, Payment } from '../../../shared/contract/till/index.ts';
import { approvedAmount, approvedLimit } from '../../../shared/work/approval.ts';
import { job, payment, staff } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { papersOf, shopOf } from '../office.ts';
import { approvalsOf, estimatesOf, overridesOf } from './estimates.ts';
import { creditNotesOf, invoicesOf } from './invoices.ts';
import { tillRulesOf } from './rules.ts';

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
      reference: row.reference,
      receiptId: row.receiptId === null ? null : ReceiptId.parse(row.receiptId),
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
  const overrides = overridesOf(store, jobId);
  const invoices = invoicesOf(store, jobId, papers);
  const payments = paymentsOf(store, jobId);
  const paid = paidIn(payments);
  const applied = invoices.reduce((sum, invoice) => sum + invoice.applied, 0);
  const billed = invoices.reduce((sum, { totals, credited }) => sum + totals.total - credited, 0);
  const { spendingLimit, depositAgreed } = row;
  return {
    jobId: JobId.parse(row.id),
    customerId: CustomerId.parse(row.customerId),
    currency: shopOf(store).currency,
    estimates: estimatesOf(store, jobId, papers),
    approvals,
    overrides,
    approvedAmount: approvedAmount(spendingLimit, approvals),
    approvedLimit: approvedLimit({ spendingLimit, approvals, overrides }, tillRulesOf(store)),
    spendingLimit,
    depositAgreed,
    invoice: invoices.findLast(isTheBill) ?? null,
    invoices,
    creditNotes: creditNotesOf(store, jobId, papers),
    payments,
    paid,
    due: billed - paid,
    unapplied: paid - applied,
  };
}

/** The bill of the work; one that was credited whole makes way for another. */
const isTheBill = ({ sort, credited, totals }: Account['invoices'][number]): boolean =>
  sort !== 'storage' && (totals.total === 0 || credited < totals.total);
