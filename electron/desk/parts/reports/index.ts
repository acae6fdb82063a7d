import { shopOf } from '../../../../db/queries/office.ts';
import type { ReadStore } from '../../../../db/store.ts';
import type { StockReport } from '../../../../shared/contract/parts/index.ts';
import { dateIn } from '../../../../shared/work/calendar.ts';
import {
  STOCK_REPORT_REACH,
  STOCK_REPORT_TITLES,
  type StockReportName,
} from '../../../../shared/work/parts/stock-reports.ts';
import { drawReport } from '../../../paper/index.ts';
import type { DeskContext } from '../../context.ts';
import { os } from '../../implementer.ts';
import { shopHead } from '../../papers/head.ts';
import { found } from '../../refuse.ts';
import { reportCsv } from '../../till/books/report-csv.ts';
import type { StockAsked } from './asked.ts';
import { deadStockTables } from './dead-stock.ts';
import { shortageTables } from './shortages.ts';
import { turnTables } from './turns.ts';
import { usageTables } from './usage.ts';
import { valueTables } from './value.ts';

function tablesOf(store: ReadStore, report: StockReportName, asked: StockAsked) {
  switch (report) {
    case 'stock-value':
      return valueTables(store, asked);
    case 'stock-usage':
      return usageTables(store, asked);
    case 'stock-turns':
      return turnTables(store, asked);
    case 'dead-stock':
      return deadStockTables(store, asked);
    case 'shortages':
      return shortageTables(store);
  }
}

interface Wanted {
  report: StockReportName;
  from: string;
  to: string;
}

/** A report as tables of plain figures; screen, CSV and PDF show the same ones. */
function makeReport({ store, now }: DeskContext, { report, ...days }: Wanted): StockReport {
  const shop = shopOf(store.read);
  const at = now();
  const today = dateIn(shop.timeZone, at);
  const reach = STOCK_REPORT_REACH[report];
  const to = reach === 'now' ? today : days.to;
  const from = reach === 'period' ? days.from : to;
  const tables = tablesOf(store.read, report, { shop, from, to, at: at.toISOString() });
  return { report, title: STOCK_REPORT_TITLES[report], from, to, tables };
}

const stockReport = os.parts.stockReport.handler(({ input, context }) =>
  makeReport(context, input),
);

const base64 = (bytes: string | Uint8Array): string => Buffer.from(bytes).toString('base64');

const stockReportFile = os.parts.stockReportFile.handler(({ input, context }) => {
  const made = makeReport(context, input);
  const shop = shopOf(context.store.read);
  const days = made.from === made.to ? made.to : `${made.from}-to-${made.to}`;
  if (input.form === 'csv') {
    const wanted = input.table === '' ? made.tables[0] : undefined;
    const table = found(wanted ?? made.tables.find(({ key }) => key === input.table), 'table');
    return {
      fileName: `${made.report}-${table.key}-${days}.csv`,
      mediaType: 'text/csv;charset=utf-8',
      bytes: base64(reportCsv(table, { currency: shop.currency, mark: input.mark })),
    };
  }
  const at = context.now().toISOString();
  const { number: _number, ...head } = shopHead({ shop, at, staff: { name: '' } }, '');
  return {
    fileName: `${made.report}-${days}.pdf`,
    mediaType: 'application/pdf',
    bytes: base64(drawReport(head, made, STOCK_REPORT_REACH[made.report])),
  };
});

/** The reports of the stores. */
export const stockReports = { stockReport, stockReportFile };
