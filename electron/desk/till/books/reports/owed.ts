import type { ReadStore } from '../../../../../db/store.ts';
import type { ReportTable } from '../../../../../shared/contract/till/index.ts';
import { AGE_LABELS, AGES, type AgeBasis } from '../../../../../shared/money/books/index.ts';
import { dateIn } from '../../../../../shared/work/calendar.ts';
import { unappliedMoney } from '../owed.ts';
import { receivablesOn } from '../receivables.ts';
import { type Asked, reportTable } from './table.ts';

const BASIS_NOTES: Record<AgeBasis, string> = {
  'due-date': 'Days since the invoice was due.',
  'invoice-date': 'Days since the day of the invoice.',
};

/** What customers owed at the end of the last day: by customer, and invoice by invoice. */
export function receivableTables(store: ReadStore, { shop, to, basis }: Asked): ReportTable[] {
  const { customers } = receivablesOn(store, { timeZone: shop.timeZone, on: to, basis });
  const note = BASIS_NOTES[basis];
  return [
    reportTable(
      { key: 'customers', heading: 'By customer', note },
      [
        { label: 'Customer', as: 'text', of: ({ name }) => name, total: 'In all' },
        { label: 'Telephone', as: 'text', of: ({ phone }) => phone },
        ...AGES.map((age) => ({
          label: AGE_LABELS[age],
          as: 'money' as const,
          of: ({ aged }: (typeof customers)[number]) => aged[age],
          total: 'sum' as const,
        })),
        { label: 'Open', as: 'money', of: ({ open }) => open, total: 'sum' },
        { label: 'Not applied', as: 'money', of: ({ unapplied }) => unapplied, total: 'sum' },
      ],
      customers,
    ),
    reportTable(
      { key: 'invoices', heading: 'Invoice by invoice', note },
      [
        { label: 'Invoice', as: 'text', of: ({ number }) => number, total: 'In all' },
        { label: 'Customer', as: 'text', of: ({ name }) => name },
        { label: 'Job', as: 'job', of: ({ jobCode }) => jobCode },
        { label: 'Invoiced', as: 'date', of: ({ invoicedOn }) => invoicedOn },
        { label: 'Due', as: 'date', of: ({ dueOn, invoicedOn }) => dueOn ?? invoicedOn },
        { label: 'Days', as: 'count', of: ({ days }) => days },
        { label: 'Total', as: 'money', of: ({ total }) => total, total: 'sum' },
        { label: 'Open', as: 'money', of: ({ open }) => open, total: 'sum' },
      ],
      customers.flatMap(({ name, invoices }) => invoices.map((invoice) => ({ ...invoice, name }))),
    ),
  ];
}

/** What was paid and not applied at the end of the last day: the shop owes it until it is. */
export function depositTables(store: ReadStore, { shop, to, basis }: Asked): ReportTable[] {
  const { timeZone } = shop;
  return [
    reportTable(
      {
        key: 'deposits',
        heading: 'Deposits held',
        note: 'Paid and not applied to an invoice: owed to the customer until it is.',
      },
      [
        { label: 'Job', as: 'job', of: ({ jobCode }) => jobCode, total: 'In all' },
        { label: 'Customer', as: 'text', of: ({ customerName }) => customerName },
        { label: 'First paid', as: 'date', of: ({ since }) => dateIn(timeZone, since) },
        { label: 'Held', as: 'money', of: ({ held }) => held, total: 'sum' },
      ],
      unappliedMoney(store, { timeZone, on: to, basis, customerId: null }),
    ),
  ];
}
