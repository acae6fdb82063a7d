import type { ReadStore } from '../../../../../db/store.ts';
import type { ReportTable } from '../../../../../shared/contract/till/index.ts';
import { sumMinor } from '../../../../../shared/money/index.ts';
import { type CostedWork, costedWork } from './job-costs.ts';
import { type Asked, type ReportColumn, reportTable, shareOf } from './table.ts';

interface Group {
  first: CostedWork;
  sales: number;
  cost: number;
  uncosted: number;
}

/** Of the sales; null where nothing was sold. */
const share = ({ sales, cost }: { sales: number; cost: number }): number | null =>
  shareOf(sales - cost, sales);

function grouped(work: readonly CostedWork[], by: (each: CostedWork) => string): Group[] {
  return [...Map.groupBy(work, by).values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const sumOf = (figure: 'sales' | 'cost' | 'uncosted') =>
      sumMinor(group.map((each) => each[figure]));
    return [{ first, sales: sumOf('sales'), cost: sumOf('cost'), uncosted: sumOf('uncosted') }];
  });
}

const FIGURES: readonly ReportColumn<Group>[] = [
  { label: 'Sales', as: 'money', of: ({ sales }) => sales, total: 'sum' },
  { label: 'Cost', as: 'money', of: ({ cost }) => cost, total: 'sum' },
  { label: 'Margin', as: 'money', of: ({ sales, cost }) => sales - cost, total: 'sum' },
  {
    label: 'Of sales',
    as: 'share',
    of: share,
    total: (rows) =>
      share({
        sales: sumMinor(rows.map(({ sales }) => sales)),
        cost: sumMinor(rows.map(({ cost }) => cost)),
      }),
  },
  { label: 'Cost not known of', as: 'money', of: ({ uncosted }) => uncosted, total: 'sum' },
];

const NOTE =
  'Without tax and cores, after discounts. Labour costs the time that was clocked, where an hour has a cost. A credit note takes off sales and leaves the costs.';

export function marginTables(store: ReadStore, asked: Asked): ReportTable[] {
  const work = costedWork(store, asked);
  return [
    reportTable(
      { key: 'jobs', heading: 'By job', note: NOTE },
      [
        { label: 'Job', as: 'job', of: ({ first }) => first.jobCode, total: 'In all' },
        { label: 'Customer', as: 'text', of: ({ first }) => first.customerName },
        ...FIGURES,
      ],
      grouped(work, ({ jobId }) => jobId),
    ),
    reportTable(
      { key: 'kinds', heading: 'By kind of work', note: NOTE },
      [{ label: 'Kind', as: 'text', of: ({ first }) => first.kind, total: 'In all' }, ...FIGURES],
      grouped(work, ({ kind }) => kind),
    ),
  ];
}
