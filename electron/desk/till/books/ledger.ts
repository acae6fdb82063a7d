import {
  bookedPayments,
  creditNoteHeads,
  invoiceHeads,
  type Whose,
} from '../../../../db/queries/till/books/booked.ts';
import type { ReadStore } from '../../../../db/store.ts';
import type { Customer } from '../../../../shared/contract/counter/index.ts';
import type { CustomerLedger, LedgerEntry } from '../../../../shared/contract/till/index.ts';
import { ageing } from '../../../../shared/money/books/index.ts';
import { addDays, dateIn } from '../../../../shared/work/calendar.ts';
import { openInvoices, unappliedMoney } from './owed.ts';
import { spanOfDays, spanUntil } from './span-of-days.ts';

type Booked = Omit<LedgerEntry, 'on' | 'balance'> & { at: string };

/** All that changed what a customer owes, oldest first; at one instant the bill comes before the money. */
function bookedOn(store: ReadStore, whose: Whose): Booked[] {
  const invoices = invoiceHeads(store, whose).map(({ number, jobCode, total, at }) => ({
    what: 'invoice' as const,
    number,
    jobCode,
    amount: total,
    at,
  }));
  const creditNotes = creditNoteHeads(store, whose).map(({ number, jobCode, amount, at }) => ({
    what: 'credit-note' as const,
    number,
    jobCode,
    amount: 0 - amount,
    at,
  }));
  const payments = bookedPayments(store, whose).map(({ kind, number, jobCode, amount, at }) => ({
    what: kind,
    number,
    jobCode,
    amount: kind === 'refund' ? amount : -amount,
    at,
  }));
  return [...invoices, ...creditNotes, ...payments].sort((a, b) =>
    a.at < b.at ? -1 : Number(a.at > b.at),
  );
}

/** A customer's account over a time, with what was owed before it and after each entry. */
export function ledgerOf(
  store: ReadStore,
  customer: Customer,
  { timeZone, from, to }: { timeZone: string; from: string; to: string },
): CustomerLedger {
  const customerId = customer.id;
  const before = bookedOn(store, { span: spanUntil(timeZone, addDays(from, -1)), customerId });
  const opening = before.reduce((sum, { amount }) => sum + amount, 0);
  let balance = opening;
  const entries = bookedOn(store, { span: spanOfDays(timeZone, from, to), customerId }).map(
    ({ at, ...entry }) => {
      balance += entry.amount;
      return { ...entry, on: dateIn(timeZone, at), balance };
    },
  );
  const moment = { timeZone, on: to, basis: 'due-date', customerId } as const;
  const open = openInvoices(store, moment);
  return {
    customerId,
    name: customer.name,
    from,
    to,
    opening,
    entries,
    closing: balance,
    aged: ageing(open, 'due-date', to),
    openInvoices: open,
    unapplied: unappliedMoney(store, moment).reduce((sum, { held }) => sum + held, 0),
  };
}
