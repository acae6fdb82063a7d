import { valuedShelves } from '../../../../db/queries/parts/standing.ts';
import type { ReadStore } from '../../../../db/store.ts';
import type { ReportTable } from '../../../../shared/contract/till/index.ts';
import { reportTable } from '../../till/books/reports/table.ts';
import { spanUntil } from '../../till/books/span-of-days.ts';
import type { StockAsked } from './asked.ts';

/** What every shelf holds and is worth at the end of a day. */
export function valueTables(store: ReadStore, { shop, to }: StockAsked): ReportTable[] {
  const { until } = spanUntil(shop.timeZone, to);
  return [
    reportTable(
      {
        key: 'shelves',
        heading: 'Shelves',
        note: 'At the moving average of what was paid. A shelf below nothing is worth nothing until it is put right.',
      },
      [
        { label: 'Part', as: 'text', of: ({ number }) => number, total: 'In all' },
        { label: 'Description', as: 'text', of: ({ description }) => description },
        { label: 'Bin', as: 'text', of: ({ bin }) => bin },
        { label: 'On hand', as: 'quantity', of: ({ onHand }) => onHand },
        { label: 'Unit', as: 'text', of: ({ unit }) => unit },
        { label: 'Average', as: 'money', of: ({ average }) => average },
        { label: 'Worth', as: 'money', of: ({ worth }) => worth, total: 'sum' },
      ],
      valuedShelves(store, until ?? undefined),
    ),
  ];
}
