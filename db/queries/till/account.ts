import { CustomerId, JobId } from '../../../shared/contract/ids.ts';
import type { Account, Payment } from '../../../shared/contract/till/index.ts';
import { approvedAmount, approvedLimit } from '../../../shared/work/till/approval.ts';
import { remembered } from '../../remembered.ts';
import { jobRowById } from '../counter/jobs.ts';
import { papersOf, shopOf } from '../office.ts';
import { approvalsOf, estimatesOf, overridesOf } from './estimates.ts';
import { creditNotesOf, invoicesOf } from './invoices.ts';
import { appliedFrom, paymentsOf } from './payments.ts';
import { tillRulesOf } from './rules.ts';

/** Money in less money out. */
const paidIn = (payments: readonly Pick<Payment, 'kind' | 'amount'>[]): number =>
  payments.reduce((sum, { kind, amount }) => sum + (kind === 'refund' ? -amount : amount), 0);

/** The money side of one job. */
export const accountOf = remembered((store, jobId): Account | undefined => {
  const row = jobRowById(store, jobId);
  if (row === undefined) return undefined;
  const papers = papersOf(store, jobId);
  const approvals = approvalsOf(store, jobId);
  const overrides = overridesOf(store, jobId);
  const invoices = invoicesOf(store, jobId, papers);
  const payments = paymentsOf(store, jobId);
  const paid = paidIn(payments);
  const unapplied = paid - appliedFrom(store, jobId);
  const open = invoices.reduce((sum, invoice) => sum + invoice.open, 0);
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
    due: open - unapplied,
    unapplied,
  };
});

/** The bill of the work; one that was credited whole makes way for another. */
const isTheBill = ({ sort, wholeLines, lines }: Account['invoices'][number]): boolean =>
  sort !== 'storage' && wholeLines.length < lines.length;
