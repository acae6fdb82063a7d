import { bookedCreditNotes, bookedInvoices } from '../../../../../db/queries/till/books/booked.ts';
import { clockedSpans } from '../../../../../db/queries/till/books/clocked.ts';
import type { ReadStore } from '../../../../../db/store.ts';
import type { Line, ReportTable } from '../../../../../shared/contract/till/index.ts';
import { divideRounded, sumMinor } from '../../../../../shared/money/index.ts';
import { dateIn } from '../../../../../shared/work/calendar.ts';
import { spanOfDays } from '../span-of-days.ts';
import { type Asked, reportTable } from './table.ts';

const MILLISECONDS_OF_THOUSANDTH = 3600n;
const WHOLE = 1_000_000n;

/** Thousandths of an hour; rounded once, so hand in a sum. */
const hoursOf = (milliseconds: number): number =>
  Number(divideRounded(BigInt(milliseconds), MILLISECONDS_OF_THOUSANDTH, 'half-up'));

const share = (sold: number, worked: number): number | null =>
  worked <= 0 ? null : Number(divideRounded(BigInt(sold) * WHOLE, BigInt(worked), 'half-up'));

const plain = (workKind: string): string => (workKind === '' ? 'Labour' : workKind);

/** Hours on bills beside hours on the clock. */
export function hoursTables(store: ReadStore, { shop, from, to }: Asked): ReportTable[] {
  const { timeZone } = shop;
  const whose = { span: spanOfDays(timeZone, from, to), customerId: null };
  const hourly = (lines: readonly Line[], sign: number) =>
    lines
      .filter(({ kind, unit }) => kind === 'labour' && unit === 'h')
      .map(({ workKind, quantity }) => ({ kind: plain(workKind), hours: sign * quantity }));
  const sold = [
    ...bookedInvoices(store, whose)
      .filter(({ sort }) => sort !== 'warranty')
      .flatMap(({ lines }) => hourly(lines, 1)),
    ...bookedCreditNotes(store, whose).flatMap(({ lines }) => hourly(lines, -1)),
  ];
  const worked = clockedSpans(store).filter(({ startedAt }) => {
    const day = dateIn(timeZone, startedAt);
    return from <= day && day <= to;
  });
  const kinds = [
    ...new Set([...sold.map(({ kind }) => kind), ...worked.map(({ workKind }) => plain(workKind))]),
  ];
  const rows = kinds.map((kind) => ({
    kind,
    sold: sumMinor(sold.filter((each) => each.kind === kind).map(({ hours }) => hours)),
    worked: hoursOf(
      sumMinor(
        worked
          .filter(({ workKind }) => plain(workKind) === kind)
          .map(({ milliseconds }) => milliseconds),
      ),
    ),
  }));
  const people = [...Map.groupBy(worked, ({ person }) => person)].map(([person, spans]) => ({
    person,
    jobs: new Set(spans.map(({ jobId }) => jobId)).size,
    hours: hoursOf(sumMinor(spans.map(({ milliseconds }) => milliseconds))),
  }));
  return [
    reportTable(
      {
        key: 'kinds',
        heading: 'By kind of work',
        note: 'Sold: hours on invoices of these days, less those credited. Labour at a flat price and warranty work have none. Worked: clocks that were started on these days and are off.',
      },
      [
        { label: 'Kind', as: 'text', of: ({ kind }) => kind, total: 'In all' },
        { label: 'Sold', as: 'hours', of: (row) => row.sold, total: 'sum' },
        { label: 'Worked', as: 'hours', of: (row) => row.worked, total: 'sum' },
        {
          label: 'More sold than worked',
          as: 'hours',
          of: (row) => row.sold - row.worked,
          total: 'sum',
        },
        {
          label: 'Sold of worked',
          as: 'share',
          of: (row) => share(row.sold, row.worked),
          total: (all) =>
            share(sumMinor(all.map((row) => row.sold)), sumMinor(all.map((row) => row.worked))),
        },
      ],
      rows,
    ),
    reportTable(
      { key: 'people', heading: 'By person' },
      [
        { label: 'Person', as: 'text', of: ({ person }) => person, total: 'In all' },
        { label: 'Jobs', as: 'count', of: ({ jobs }) => jobs },
        { label: 'Worked', as: 'hours', of: ({ hours }) => hours, total: 'sum' },
      ],
      people,
    ),
  ];
}
