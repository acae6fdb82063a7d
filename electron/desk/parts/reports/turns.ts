import { usedParts, worthMoved } from '../../../../db/queries/parts/reports.ts';
import type { ReadStore } from '../../../../db/store.ts';
import type { ReportTable } from '../../../../shared/contract/till/index.ts';
import { daysFrom } from '../../../../shared/work/calendar.ts';
import {
  averageWorth,
  daysOfStock,
  turnsPerYear,
} from '../../../../shared/work/parts/stock-turns.ts';
import { type ReportColumn, reportTable } from '../../till/books/reports/table.ts';
import { spanOfDays } from '../../till/books/span-of-days.ts';
import type { StockAsked } from './asked.ts';

interface Turned {
  number: string;
  description: string;
  used: number;
  average: number;
}

/** How often the stock is used up in a year, part by part and as a whole. */
export function turnTables(store: ReadStore, { shop, from, to, at }: StockAsked): ReportTable[] {
  const span = spanOfDays(shop.timeZone, from, to);
  // What lies ahead has no stock yet.
  const until = span.until < at ? span.until : at;
  if (until <= span.from) return [turned([], 0, 1)];
  const days = Math.max(1, daysFrom(from, to) + 1);
  const passed = Math.max(
    1,
    Math.min(days, Math.round((Date.parse(until) - Date.parse(span.from)) / 86_400_000)),
  );
  const uses = usedParts(store, { from: span.from, until });
  const used = Map.groupBy(uses, ({ partId }) => partId);
  const time = { from: Date.parse(span.from), until: Date.parse(until) };
  const rows = [...Map.groupBy(worthMoved(store, until), ({ partId }) => partId)].flatMap(
    ([partId, moved]): Turned[] => {
      const [first] = moved;
      if (first === undefined) return [];
      const average = averageWorth(
        moved.map((each) => ({ at: Date.parse(each.at), worth: each.worth })),
        time,
      );
      const cost = (used.get(partId) ?? []).reduce((sum, each) => sum + each.cost, 0);
      const { number, description } = first;
      return average === 0 && cost === 0 ? [] : [{ number, description, used: cost, average }];
    },
  );
  const toJobs = uses.filter(({ opened }) => !opened).reduce((sum, { cost }) => sum + cost, 0);
  return [turned(rows, toJobs, passed)];
}

function turned(rows: readonly Turned[], toJobs: number, days: number): ReportTable {
  const whole = (all: readonly Turned[]) => all.reduce((sum, { average }) => sum + average, 0);
  const columns: ReportColumn<Turned>[] = [
    { label: 'Part', as: 'text', of: ({ number }) => number, total: 'In all' },
    { label: 'Description', as: 'text', of: ({ description }) => description },
    { label: 'Used, at cost', as: 'money', of: ({ used }) => used, total: () => toJobs },
    {
      label: 'Worth on average',
      as: 'money',
      of: ({ average }) => average,
      total: whole,
    },
    {
      label: 'Turns a year',
      as: 'quantity',
      of: ({ used, average }) => turnsPerYear(used, average, days),
      total: (all) => turnsPerYear(toJobs, whole(all), days),
    },
    {
      label: 'Lasts, days',
      as: 'count',
      of: ({ used, average }) => daysOfStock(used, average, days),
      total: (all) => daysOfStock(toJobs, whole(all), days),
    },
  ];
  return reportTable(
    {
      key: 'turns',
      heading: 'Turns',
      note: 'Cost of what was used, brought to a year, by what the shelf was worth on average, each worth weighed by the time that it lasted. A kit that was opened is used itself; in the last line it counts by its pieces that went to jobs.',
    },
    columns,
    rows,
  );
}
