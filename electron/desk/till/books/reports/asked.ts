import {
  declinedWork,
  type LatestEstimate,
  latestEstimates,
} from '../../../../../db/queries/till/books/asked-work.ts';
import { invoiceHeads } from '../../../../../db/queries/till/books/booked.ts';
import { ALWAYS } from '../../../../../db/queries/till/books/span.ts';
import { creditedWhole } from '../../../../../db/queries/till/credited-whole.ts';
import type { ReadStore } from '../../../../../db/store.ts';
import type { ReportTable } from '../../../../../shared/contract/till/index.ts';
import { dateIn } from '../../../../../shared/work/calendar.ts';
import { spanOfDays } from '../span-of-days.ts';
import { type Asked, reportTable } from './table.ts';

const PARTY = [
  { label: 'Customer', as: 'text', of: (row: { customerName: string }) => row.customerName },
  { label: 'Telephone', as: 'text', of: (row: { phone: string }) => row.phone },
] as const;

/** Estimates of jobs in the shop that are not invoiced, as they stand on a day. */
export function openEstimateTables(
  store: ReadStore,
  { shop }: Asked,
  today: string,
): ReportTable[] {
  const invoiced = jobsWithBill(store);
  const standing = ({ approved, validUntil }: LatestEstimate): string => {
    if (approved !== null) return 'Approved';
    return validUntil !== null && validUntil < today ? 'Past its last day' : 'Customer to decide';
  };
  const offered = ({ approved, options }: LatestEstimate): number =>
    (options.find(({ key }) => key === approved?.option) ?? options[0])?.total ?? 0;
  return [
    reportTable(
      {
        key: 'estimates',
        heading: 'Open estimates',
        note: 'As they stand today. With several options: the one that was taken, else the first.',
      },
      [
        { label: 'Estimate', as: 'text', of: ({ number }) => number, total: 'In all' },
        { label: 'Job', as: 'job', of: ({ jobCode }) => jobCode },
        ...PARTY,
        { label: 'Written', as: 'date', of: (row) => dateIn(shop.timeZone, row.writtenAt) },
        { label: 'Good until', as: 'date', of: ({ validUntil }) => validUntil },
        { label: 'Standing', as: 'text', of: standing },
        { label: 'Total', as: 'money', of: offered, total: 'sum' },
        {
          label: 'Approved',
          as: 'money',
          of: ({ approved }) => approved?.amount ?? null,
          total: 'sum',
        },
      ],
      latestEstimates(store).filter(({ jobId }) => !invoiced.has(jobId)),
    ),
  ];
}

/** Jobs whose work is billed; a bill that was credited whole makes way for another. */
function jobsWithBill(store: ReadStore): Set<string> {
  const all = { span: ALWAYS, customerId: null };
  const gone = creditedWhole(store);
  const stands = invoiceHeads(store, all).filter(
    ({ id, sort }) => sort !== 'storage' && !gone.has(id),
  );
  return new Set(stands.map(({ jobId }) => jobId));
}

/** Work that customers did not take, to be asked about again. */
export const declinedTables = (store: ReadStore, { shop, from, to }: Asked): ReportTable[] => [
  reportTable(
    {
      key: 'declined',
      heading: 'Declined work',
      note: 'By the last approval of each job in these days.',
    },
    [
      {
        label: 'Declined on',
        as: 'date',
        of: ({ at }) => dateIn(shop.timeZone, at),
        total: 'In all',
      },
      { label: 'Job', as: 'job', of: ({ jobCode }) => jobCode },
      ...PARTY,
      { label: 'Work', as: 'text', of: ({ description }) => description },
      { label: 'Amount', as: 'money', of: ({ amount }) => amount, total: 'sum' },
    ],
    declinedWork(store, spanOfDays(shop.timeZone, from, to)),
  ),
];
