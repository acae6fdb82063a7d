import type { ReadStore } from '../../../../../db/store.ts';
import type { Report } from '../../../../../shared/contract/till/index.ts';
import {
  REPORT_REACH,
  REPORT_TITLES,
  type ReportName,
} from '../../../../../shared/work/reports.ts';
import { declinedTables, openEstimateTables } from './asked.ts';
import { bookkeepingTables } from './bookkeeping.ts';
import { hoursTables } from './hours.ts';
import { marginTables } from './margin.ts';
import { depositTables, receivableTables } from './owed.ts';
import { salesTables } from './sales.ts';
import type { Asked } from './table.ts';

function tablesOf(store: ReadStore, report: ReportName, asked: Asked, today: string) {
  switch (report) {
    case 'sales':
      return salesTables(store, asked);
    case 'margin':
      return marginTables(store, asked);
    case 'hours':
      return hoursTables(store, asked);
    case 'open-estimates':
      return openEstimateTables(store, asked, today);
    case 'declined':
      return declinedTables(store, asked);
    case 'deposits':
      return depositTables(store, asked);
    case 'receivables':
      return receivableTables(store, asked);
    case 'bookkeeping':
      return bookkeepingTables(store, asked);
  }
}

/** A report as tables of plain figures; screen, CSV and PDF show the same ones. */
export function makeReport(
  store: ReadStore,
  report: ReportName,
  asked: Asked,
  today: string,
): Report {
  const reach = REPORT_REACH[report];
  const { from, to } =
    reach === 'now'
      ? { from: today, to: today }
      : { from: reach === 'day' ? asked.to : asked.from, to: asked.to };
  return {
    report,
    title: REPORT_TITLES[report],
    from,
    to,
    tables: tablesOf(store, report, { ...asked, from, to }, today),
  };
}
