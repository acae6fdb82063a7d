import { staffList } from '../../../../../db/queries/office.ts';
import { bookedCreditNotes, bookedInvoices } from '../../../../../db/queries/till/books/booked.ts';
import type { ReadStore } from '../../../../../db/store.ts';
import type { Line, ReportTable } from '../../../../../shared/contract/till/index.ts';
import { sumMinor } from '../../../../../shared/money/index.ts';
import { hoursOf } from '../../../../../shared/work/till/clock.ts';
import { spanOfDays } from '../span-of-days.ts';
import { type Asked, reportTable, shareOf } from './table.ts';
import { type WorkedTime, workedBetween } from './worked-time.ts';

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
  const worked = workedBetween(store, { timeZone, from, to });
  const hours = (times: readonly WorkedTime[]) =>
    hoursOf(sumMinor(times.map(({ minutes }) => minutes)), shop.rounding);
  const names = new Map<string, string>(staffList(store).map(({ id, name }) => [id, name]));
  const kinds = [
    ...new Set([...sold.map(({ kind }) => kind), ...worked.map(({ workKind }) => plain(workKind))]),
  ];
  const rows = kinds.map((kind) => ({
    kind,
    sold: sumMinor(sold.filter((each) => each.kind === kind).map(({ hours }) => hours)),
    worked: hours(worked.filter(({ workKind }) => plain(workKind) === kind)),
  }));
  const people = [...Map.groupBy(worked, ({ staffId }) => staffId)].map(([staffId, times]) => ({
    person: names.get(staffId) ?? '',
    jobs: new Set(times.map(({ jobId }) => jobId)).size,
    worked: hours(times),
  }));
  return [
    reportTable(
      {
        key: 'kinds',
        heading: 'By kind of work',
        note: 'Sold: hours on invoices of these days, less those credited. Labour at a flat price and warranty work have none. Worked: what was clocked on these days and is off.',
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
          of: (row) => shareOf(row.sold, row.worked),
          total: (all) =>
            shareOf(sumMinor(all.map((row) => row.sold)), sumMinor(all.map((row) => row.worked))),
        },
      ],
      rows,
    ),
    reportTable(
      { key: 'people', heading: 'By person' },
      [
        { label: 'Person', as: 'text', of: ({ person }) => person, total: 'In all' },
        { label: 'Jobs', as: 'count', of: ({ jobs }) => jobs },
        { label: 'Worked', as: 'hours', of: (row) => row.worked, total: 'sum' },
      ],
      people,
    ),
  ];
}
