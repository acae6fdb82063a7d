import {
  type BookedFor,
  bookedApplications,
  bookedCreditNotes,
  bookedInvoices,
  bookedPayments,
} from '../../../../../db/queries/till/books/booked.ts';
import type { ReadStore } from '../../../../../db/store.ts';
import type { ReportTable } from '../../../../../shared/contract/till/index.ts';
import {
  type AccountNature,
  applicationPostings,
  balances,
  creditNotePostings,
  invoicePostings,
  type Posting,
  paymentPostings,
} from '../../../../../shared/money/books/index.ts';
import { dateIn } from '../../../../../shared/work/calendar.ts';
import { spanUntil } from '../span-of-days.ts';
import { type Asked, kindsTaxedBy, reportTable } from './table.ts';

interface BookEntry extends BookedFor {
  at: string;
  /** Of the invoice, credit note or receipt; empty for money without a receipt. */
  document: string;
  what: string;
  postings: Posting[];
}

const MONEY_WORDS = { deposit: 'Deposit', payment: 'Payment', refund: 'Refund' } as const;

/** All that was booked up to the end of a day, oldest first; what comes to nothing is left out. */
function entriesUntil(store: ReadStore, { shop, to }: Asked): BookEntry[] {
  const whose = { span: spanUntil(shop.timeZone, to), customerId: null };
  const kindsTaxed = kindsTaxedBy(shop);
  const invoices = bookedInvoices(store, whose).map((bill) => ({
    ...bill,
    document: bill.number,
    what: 'Invoice',
    postings: invoicePostings(bill, kindsTaxed),
  }));
  const creditNotes = bookedCreditNotes(store, whose).map((bill) => ({
    ...bill,
    document: bill.number,
    what: 'Credit note',
    postings: creditNotePostings(bill, kindsTaxed),
  }));
  const payments = bookedPayments(store, whose).map((payment) => ({
    ...payment,
    document: payment.number,
    what: MONEY_WORDS[payment.kind],
    postings: paymentPostings(payment),
  }));
  const applications = bookedApplications(store, whose).map((application) => ({
    ...application,
    document: application.number,
    what: application.amount < 0 ? 'Set free again' : 'Applied to the invoice',
    postings: applicationPostings(application.amount),
  }));
  // Within one instant: the bill, the money, and what was done with it. The sort is stable.
  return [...invoices, ...creditNotes, ...payments, ...applications]
    .filter(({ postings }) => postings.length > 0)
    .sort((a, b) => (a.at < b.at ? -1 : Number(a.at > b.at)));
}

const NATURES: Record<AccountNature, string> = {
  asset: 'Asset',
  liability: 'Liability',
  income: 'Income',
};

/** The accountant's export: every posting of a time, and what each account came to. */
export function bookkeepingTables(store: ReadStore, asked: Asked): ReportTable[] {
  const { shop, from } = asked;
  const entries = entriesUntil(store, asked).map((entry, index) => ({
    ...entry,
    // Counted from the first that was ever booked, so that an entry keeps its number in every export.
    entry: index + 1,
    on: dateIn(shop.timeZone, entry.at),
  }));
  const inTime = entries.filter(({ on }) => on >= from);
  const lines = inTime.flatMap(({ postings, ...entry }) =>
    postings.map((posting) => ({ ...entry, ...posting })),
  );
  const before = balances(
    entries.filter(({ on }) => on < from).flatMap(({ postings }) => postings),
  );
  const moved = balances(lines);
  const known = new Map([...before, ...moved].map(({ account }) => [account.name, account]));
  const accounts = [...known.values()].map((account) => {
    const opening = before.find((each) => each.account.name === account.name)?.balance ?? 0;
    const { debit, credit, balance } = moved.find((each) => each.account.name === account.name) ?? {
      debit: 0,
      credit: 0,
      balance: 0,
    };
    return { account, opening, debit, credit, closing: opening + balance };
  });
  return [
    reportTable(
      {
        key: 'lines',
        heading: 'Journal lines',
        note: 'The lines of one entry balance. Purchases, wages and stock are not among them.',
      },
      [
        { label: 'Entry', as: 'count', of: ({ entry }) => entry },
        { label: 'Date', as: 'date', of: ({ on }) => on, total: 'In all' },
        { label: 'Document', as: 'text', of: ({ document }) => document },
        { label: 'What', as: 'text', of: ({ what }) => what },
        { label: 'Customer', as: 'text', of: ({ customerName }) => customerName },
        { label: 'Job', as: 'job', of: ({ jobCode }) => jobCode },
        { label: 'Account', as: 'text', of: ({ account }) => account.name },
        { label: 'Debit', as: 'money', of: ({ debit }) => debit || null, total: 'sum' },
        { label: 'Credit', as: 'money', of: ({ credit }) => credit || null, total: 'sum' },
      ],
      lines,
    ),
    reportTable(
      {
        key: 'accounts',
        heading: 'Accounts',
        note: 'Debit less credit: what is owed to others and what was earned stands below zero.',
      },
      [
        { label: 'Account', as: 'text', of: ({ account }) => account.name, total: 'In all' },
        { label: 'Nature', as: 'text', of: ({ account }) => NATURES[account.nature] },
        { label: 'Before', as: 'money', of: ({ opening }) => opening, total: 'sum' },
        { label: 'Debit', as: 'money', of: ({ debit }) => debit, total: 'sum' },
        { label: 'Credit', as: 'money', of: ({ credit }) => credit, total: 'sum' },
        { label: 'After', as: 'money', of: ({ closing }) => closing, total: 'sum' },
      ],
      accounts,
    ),
  ];
}
