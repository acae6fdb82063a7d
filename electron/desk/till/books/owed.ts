import {
  bookedApplications,
  bookedPayments,
  creditNoteHeads,
  invoiceHeads,
} from '../../../../db/queries/till/books/booked.ts';
import type { ReadStore } from '../../../../db/store.ts';
import type { CustomerId } from '../../../../shared/contract/ids.ts';
import type { OpenInvoice } from '../../../../shared/contract/till/index.ts';
import { type AgeBasis, ageOf, daysOld } from '../../../../shared/money/books/index.ts';
import { dateIn } from '../../../../shared/work/calendar.ts';
import { spanUntil } from './span-of-days.ts';

export interface Moment {
  readonly timeZone: string;
  /** The day at whose end it is asked. */
  readonly on: string;
  readonly basis: AgeBasis;
  /** Null: of all. */
  readonly customerId: string | null;
}

export interface Owed extends OpenInvoice {
  readonly customerId: CustomerId;
}

const sums = <Row extends { amount: number }>(
  rows: readonly Row[],
  key: (row: Row) => string,
): Map<string, number> => {
  const found = new Map<string, number>();
  for (const row of rows) found.set(key(row), (found.get(key(row)) ?? 0) + row.amount);
  return found;
};

/** Invoices that were open at the end of a day, the oldest first. */
export function openInvoices(store: ReadStore, moment: Moment): Owed[] {
  const { timeZone, on, basis, customerId } = moment;
  const whose = { span: spanUntil(timeZone, on), customerId };
  const credited = sums(creditNoteHeads(store, whose), ({ invoiceId }) => invoiceId);
  const applied = sums(bookedApplications(store, whose), ({ invoiceId }) => invoiceId);
  return invoiceHeads(store, whose)
    .map((invoice) => {
      const open = invoice.total - (credited.get(invoice.id) ?? 0) - (applied.get(invoice.id) ?? 0);
      const item = { invoicedOn: dateIn(timeZone, invoice.at), dueOn: invoice.dueOn, open };
      const { id, number, jobCode, total } = invoice;
      return {
        ...item,
        id,
        number,
        jobCode,
        customerId: invoice.customerId,
        total,
        age: ageOf(item, basis, on),
        days: daysOld(item, basis, on),
      };
    })
    .filter(({ open }) => open !== 0)
    .sort((a, b) => b.days - a.days);
}

/** What was paid and not applied at the end of a day, by job; jobs without any left out. */
export function unappliedMoney(store: ReadStore, { timeZone, on, customerId }: Moment) {
  const whose = { span: spanUntil(timeZone, on), customerId };
  const payments = bookedPayments(store, whose);
  const applied = sums(bookedApplications(store, whose), ({ jobId }) => jobId);
  const jobs = Map.groupBy(payments, ({ jobId }) => jobId);
  return [...jobs].flatMap(([jobId, all]) => {
    const [first] = all;
    const paid = all.reduce(
      (sum, { kind, amount }) => sum + (kind === 'refund' ? -amount : amount),
      0,
    );
    const held = paid - (applied.get(jobId) ?? 0);
    if (first === undefined || held === 0) return [];
    const { jobCode, customerName } = first;
    return [{ jobId, jobCode, customerId: first.customerId, customerName, held, since: first.at }];
  });
}
