import type { Account } from '../../../shared/contract/till/index.ts';
import { INVOICE_SORT_LABELS } from '../../../shared/work/vocabulary.ts';
import type { PaymentLine } from '../../paper/content.ts';
import { paymentLines } from './money.ts';

/**
 * What brings the total of a job's bill to what is due on the job: payments, credit notes, other bills, and
 * what other jobs of the customer paid of it; oldest first. Bills that were credited whole are left out with
 * their credit notes.
 */
export function settlementLines(account: Account, at: string): PaymentLine[] {
  const { invoice, invoices, creditNotes, payments, due } = account;
  const standing = invoices.filter(({ lines, wholeLines }) => wholeLines.length < lines.length);
  const numbers = standing.map(({ number }) => number);
  const lines = [
    ...paymentLines(payments),
    ...creditNotes
      .filter(({ invoiceNumber }) => numbers.includes(invoiceNumber))
      .map((note) => ({
        at: note.issuedAt,
        what: `Credit note ${note.number}`,
        method: 'off the bill',
        amount: note.totals.total,
      })),
    ...standing
      .filter(({ id }) => id !== invoice?.id)
      .map((bill) => ({
        at: bill.issuedAt,
        what: `Invoice ${bill.number}`,
        method: INVOICE_SORT_LABELS[bill.sort].toLowerCase(),
        amount: -bill.totals.total,
      })),
  ].toSorted((a, b) => a.at.localeCompare(b.at));
  const told = lines.reduce((sum, { amount }) => sum + amount, 0);
  const fromOthers = (invoice?.totals.total ?? 0) - told - due;
  return fromOthers === 0
    ? lines
    : [
        ...lines,
        { at, what: 'Other jobs of the customer', method: 'set against it', amount: fromOthers },
      ];
}
