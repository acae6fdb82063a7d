import { firstArrivals, lastUses, usedParts } from '../../../../db/queries/parts/reports.ts';
import { valuedShelves } from '../../../../db/queries/parts/standing.ts';
import type { ReadStore } from '../../../../db/store.ts';
import type { ReportTable } from '../../../../shared/contract/till/index.ts';
import { dateIn } from '../../../../shared/work/calendar.ts';
import { reportTable } from '../../till/books/reports/table.ts';
import { spanOfDays } from '../../till/books/span-of-days.ts';
import type { StockAsked } from './asked.ts';

/** What lay on the shelf all through a time and was not used in it, the dearest first. */
export function deadStockTables(store: ReadStore, { shop, from, to }: StockAsked): ReportTable[] {
  const { timeZone } = shop;
  const span = spanOfDays(timeZone, from, to);
  const used = new Set(
    usedParts(store, span)
      .filter(({ quantity }) => quantity > 0)
      .map(({ partId }) => partId),
  );
  const last = lastUses(store, span.from);
  const arrived = firstArrivals(store);
  const rows = valuedShelves(store, span.until)
    .filter(({ id, onHand }) => onHand > 0 && !used.has(id) && (arrived.get(id) ?? '') < span.from)
    .map((shelf) => {
      const at = last.get(shelf.id);
      return { ...shelf, lastUsed: at === undefined ? null : dateIn(timeZone, at) };
    })
    .toSorted((a, b) => b.worth - a.worth);
  return [
    reportTable(
      {
        key: 'parts',
        heading: 'Dead stock',
        note: 'On the shelf before the first day, still there at the end of the last, and none of it used between. The dearest first.',
      },
      [
        { label: 'Part', as: 'text', of: ({ number }) => number, total: 'In all' },
        { label: 'Description', as: 'text', of: ({ description }) => description },
        { label: 'Bin', as: 'text', of: ({ bin }) => bin },
        { label: 'On hand', as: 'quantity', of: ({ onHand }) => onHand },
        { label: 'Unit', as: 'text', of: ({ unit }) => unit },
        { label: 'Used last', as: 'date', of: ({ lastUsed }) => lastUsed },
        { label: 'Worth', as: 'money', of: ({ worth }) => worth, total: 'sum' },
      ],
      rows,
    ),
  ];
}
