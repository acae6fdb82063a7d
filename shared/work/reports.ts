/** The reports of the till, each a table or two for a time. */

export const REPORTS = [
  'sales',
  'margin',
  'hours',
  'open-estimates',
  'declined',
  'deposits',
  'receivables',
  'bookkeeping',
] as const;
export type ReportName = (typeof REPORTS)[number];

export const REPORT_TITLES: Record<ReportName, string> = {
  sales: 'Sales and tax',
  margin: 'Margin',
  hours: 'Hours sold and worked',
  'open-estimates': 'Open estimates',
  declined: 'Declined work',
  deposits: 'Deposits held',
  receivables: 'Owed by customers',
  bookkeeping: 'For the accountant',
};

/** A stretch of days, how things stood at the end of one day, or how they stand now. */
export type ReportReach = 'period' | 'day' | 'now';

export const REPORT_REACH: Record<ReportName, ReportReach> = {
  sales: 'period',
  margin: 'period',
  hours: 'period',
  'open-estimates': 'now',
  declined: 'period',
  deposits: 'day',
  receivables: 'day',
  bookkeeping: 'period',
};

/** What changes a customer's account. */
export const LEDGER_LABELS = {
  invoice: 'Invoice',
  'credit-note': 'Credit note',
  deposit: 'Deposit',
  payment: 'Payment',
  refund: 'Refund',
} as const;
