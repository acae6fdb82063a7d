/** The reports of the stores, each a table or two for a time. */

import type { ReportReach } from '../reports.ts';

export const STOCK_REPORTS = [
  'stock-value',
  'stock-usage',
  'stock-turns',
  'dead-stock',
  'shortages',
] as const;
export type StockReportName = (typeof STOCK_REPORTS)[number];

export const STOCK_REPORT_TITLES: Record<StockReportName, string> = {
  'stock-value': 'What the stores are worth',
  'stock-usage': 'Usage by month',
  'stock-turns': 'Turns',
  'dead-stock': 'Dead stock',
  shortages: 'Shortages',
};

export const STOCK_REPORT_REACH: Record<StockReportName, ReportReach> = {
  'stock-value': 'day',
  'stock-usage': 'period',
  'stock-turns': 'period',
  'dead-stock': 'period',
  shortages: 'now',
};
