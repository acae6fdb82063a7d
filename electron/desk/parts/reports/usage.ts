import { type UsedPart, usedParts } from '../../../../db/queries/parts/reports.ts';
import type { ReadStore } from '../../../../db/store.ts';
import type { ReportTable } from '../../../../shared/contract/till/index.ts';
import { dateIn } from '../../../../shared/work/calendar.ts';
import { reportTable } from '../../till/books/reports/table.ts';
import { spanOfDays } from '../../till/books/span-of-days.ts';
import type { StockAsked } from './asked.ts';

/** So many months stand side by side; of a longer time the last ones. */
const MOST_COLUMNS = 12;

const NOTE =
  'Issued to jobs less what came back unused. A kit that was opened is used itself; its pieces when they are issued.';

const MONTH_NAMES = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

/** As it heads a column: `Mar 2026`. */
const headingOf = (month: string): string =>
  `${MONTH_NAMES[Number(month.slice(5)) - 1]} ${month.slice(0, 4)}`;

const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);

/** Months of the calendar from one to another: `2026-03`. */
function monthsFrom(from: string, to: string): string[] {
  const months: string[] = [];
  let [year = 0, month = 0] = from.split('-').map(Number);
  for (;;) {
    const name = `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}`;
    if (name > to.slice(0, 7)) return months;
    months.push(name);
    year += month === 12 ? 1 : 0;
    month = month === 12 ? 1 : month + 1;
  }
}

/** What was used of which part, month by month. */
export function usageTables(store: ReadStore, { shop, from, to, at }: StockAsked): ReportTable[] {
  const used = usedParts(store, spanOfDays(shop.timeZone, from, to)).map((use) => ({
    ...use,
    month: dateIn(shop.timeZone, use.at).slice(0, 7),
  }));
  const today = dateIn(shop.timeZone, at);
  const months = monthsFrom(from, to < today ? to : today);
  const shown = months.slice(-MOST_COLUMNS);
  const byPart = [...Map.groupBy(used, ({ partId }) => partId).values()];
  const head = ([first]: readonly UsedPart[]) => first;
  const inMonth = (month: string) => (uses: readonly (typeof used)[number][]) =>
    sum(uses.filter((use) => use.month === month).map(({ quantity }) => quantity));
  const all = (uses: readonly UsedPart[]) => sum(uses.map(({ quantity }) => quantity));
  const cost = (uses: readonly UsedPart[]) => sum(uses.map((use) => use.cost));
  return [
    reportTable(
      {
        key: 'parts',
        heading: 'Parts by month',
        note:
          shown.length < months.length
            ? `${NOTE} The last ${MOST_COLUMNS} months stand side by side; the total is of the whole time.`
            : NOTE,
      },
      [
        { label: 'Part', as: 'text', of: (uses) => head(uses)?.number ?? '' },
        { label: 'Description', as: 'text', of: (uses) => head(uses)?.description ?? '' },
        ...shown.map((month) => ({
          label: headingOf(month),
          as: 'quantity' as const,
          of: (uses: readonly (typeof used)[number][]) => inMonth(month)(uses) || null,
        })),
        { label: 'Total', as: 'quantity', of: all },
        { label: 'Unit', as: 'text', of: (uses) => head(uses)?.unit ?? '' },
        { label: 'Cost', as: 'money', of: cost },
      ],
      byPart,
    ),
    reportTable(
      {
        key: 'months',
        heading: 'Months',
        note: 'At what the parts had cost. Kits count by their pieces that went to jobs.',
      },
      [
        { label: 'Month', as: 'text', of: ({ month }) => month, total: 'In all' },
        { label: 'Parts', as: 'count', of: ({ parts }) => parts },
        { label: 'Cost', as: 'money', of: (row) => row.cost, total: 'sum' },
      ],
      months.map((month) => {
        const uses = used.filter((use) => use.month === month && !use.opened);
        return {
          month,
          parts: new Set(uses.map(({ partId }) => partId)).size,
          cost: cost(uses),
        };
      }),
    ),
  ];
}
