import {
  type BookedCreditNote,
  type BookedInvoice,
  bookedCreditNotes,
  bookedInvoices,
} from '../../../../../db/queries/till/books/booked.ts';
import type { ReadStore } from '../../../../../db/store.ts';
import type { ReportTable } from '../../../../../shared/contract/till/index.ts';
import { netByLine } from '../../../../../shared/money/books/index.ts';
import { sumMinor } from '../../../../../shared/money/index.ts';
import { dateIn } from '../../../../../shared/work/calendar.ts';
import { LINE_KIND_LABELS, LINE_KINDS } from '../../../../../shared/work/vocabulary.ts';
import { spanOfDays } from '../span-of-days.ts';
import { type Asked, kindsTaxedBy, reportTable } from './table.ts';

type Bill = BookedInvoice | BookedCreditNote;

const taxOf = ({ totals }: Bill): number => sumMinor(totals.taxes.map(({ amount }) => amount));

/** What was invoiced and credited in a time: by kind, by tax, without tax, and bill by bill. */
export function salesTables(store: ReadStore, { shop, from, to }: Asked): ReportTable[] {
  const whose = { span: spanOfDays(shop.timeZone, from, to), customerId: null };
  const invoices = bookedInvoices(store, whose);
  const creditNotes = bookedCreditNotes(store, whose);
  const dated = [
    ...invoices.map((bill) => ({ bill, sign: 1 })),
    ...creditNotes.map((bill) => ({ bill, sign: -1 })),
  ].map((each) => ({ ...each, on: dateIn(shop.timeZone, each.bill.at) }));
  return [
    byKind(invoices, creditNotes, kindsTaxedBy(shop)),
    byTax(invoices, creditNotes),
    reportTable(
      { key: 'exempt', heading: 'Sold without tax, by certificate' },
      [
        { label: 'Certificate', as: 'text', of: ({ bill }) => bill.totals.exemptBy },
        { label: 'Customer', as: 'text', of: ({ bill }) => bill.customerName, total: 'In all' },
        { label: 'Document', as: 'text', of: ({ bill }) => bill.number },
        { label: 'Date', as: 'date', of: ({ on }) => on },
        {
          label: 'Amount',
          as: 'money',
          of: ({ bill, sign }) => sign * bill.totals.total,
          total: 'sum',
        },
      ],
      dated.filter(({ bill }) => bill.totals.exemptBy !== ''),
    ),
    reportTable(
      { key: 'bills', heading: 'Invoices and credit notes' },
      [
        { label: 'Document', as: 'text', of: ({ bill }) => bill.number, total: 'In all' },
        { label: 'Date', as: 'date', of: ({ on }) => on },
        { label: 'Customer', as: 'text', of: ({ bill }) => bill.customerName },
        { label: 'Job', as: 'job', of: ({ bill }) => bill.jobCode },
        {
          label: 'Without tax',
          as: 'money',
          of: ({ bill, sign }) => sign * (bill.totals.total - taxOf(bill)),
          total: 'sum',
        },
        { label: 'Tax', as: 'money', of: ({ bill, sign }) => sign * taxOf(bill), total: 'sum' },
        {
          label: 'Total',
          as: 'money',
          of: ({ bill, sign }) => sign * bill.totals.total,
          total: 'sum',
        },
      ],
      dated,
    ),
  ];
}

function byKind(
  invoices: readonly BookedInvoice[],
  creditNotes: readonly BookedCreditNote[],
  kindsTaxed: ReturnType<typeof kindsTaxedBy>,
): ReportTable {
  const netOf = (bills: readonly Bill[], kind: string): number =>
    sumMinor(
      bills.flatMap((bill) => {
        const net = netByLine(bill, kindsTaxed);
        return bill.lines.flatMap((line, index) => (line.kind === kind ? [net[index] ?? 0] : []));
      }),
    );
  const rows = LINE_KINDS.map((kind) => ({
    kind,
    invoiced: netOf(invoices, kind),
    credited: netOf(creditNotes, kind),
  })).filter(({ invoiced, credited }) => invoiced !== 0 || credited !== 0);
  return reportTable(
    {
      key: 'kinds',
      heading: 'Sales by kind',
      note: 'Without tax, after discounts. Cores are security for an old part, and no sale.',
    },
    [
      { label: 'Kind', as: 'text', of: ({ kind }) => LINE_KIND_LABELS[kind], total: 'In all' },
      { label: 'Invoiced', as: 'money', of: ({ invoiced }) => invoiced, total: 'sum' },
      { label: 'Credited', as: 'money', of: ({ credited }) => -credited, total: 'sum' },
      {
        label: 'Net',
        as: 'money',
        of: ({ invoiced, credited }) => invoiced - credited,
        total: 'sum',
      },
    ],
    rows,
  );
}

function byTax(
  invoices: readonly BookedInvoice[],
  creditNotes: readonly BookedCreditNote[],
): ReportTable {
  const charged = [
    ...invoices.flatMap(({ totals }) => totals.taxes.map((tax) => ({ ...tax, sign: 1 }))),
    ...creditNotes.flatMap(({ totals }) => totals.taxes.map((tax) => ({ ...tax, sign: -1 }))),
  ];
  const rows = [
    ...Map.groupBy(charged, ({ name, ratePpm }) => JSON.stringify([name, ratePpm])).values(),
  ].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const sumOf = (sign: number, figure: 'base' | 'amount') =>
      sumMinor(group.filter((tax) => tax.sign === sign).map((tax) => tax[figure]));
    return [
      {
        name: first.name,
        ratePpm: first.ratePpm,
        base: sumOf(1, 'base') - sumOf(-1, 'base'),
        invoiced: sumOf(1, 'amount'),
        credited: sumOf(-1, 'amount'),
      },
    ];
  });
  return reportTable(
    {
      key: 'taxes',
      heading: 'Tax by rule',
      note: 'Where prices include tax, what it was charged on includes it.',
    },
    [
      { label: 'Tax', as: 'text', of: ({ name }) => name, total: 'In all' },
      { label: 'Rate', as: 'share', of: ({ ratePpm }) => ratePpm },
      { label: 'Charged on', as: 'money', of: ({ base }) => base },
      { label: 'Invoiced', as: 'money', of: ({ invoiced }) => invoiced, total: 'sum' },
      { label: 'Credited', as: 'money', of: ({ credited }) => -credited, total: 'sum' },
      {
        label: 'Net',
        as: 'money',
        of: ({ invoiced, credited }) => invoiced - credited,
        total: 'sum',
      },
    ],
    rows,
  );
}
