import { customerById } from '../../../../db/queries/counter/customers.ts';
import { shopOf } from '../../../../db/queries/office.ts';
import type { Report } from '../../../../shared/contract/till/index.ts';
import type { AgeBasis } from '../../../../shared/money/books/index.ts';
import { dateIn } from '../../../../shared/work/calendar.ts';
import { REPORT_REACH, type ReportName } from '../../../../shared/work/reports.ts';
import { drawReport } from '../../../paper/index.ts';
import type { DeskContext } from '../../context.ts';
import { os } from '../../implementer.ts';
import { shopHead } from '../../papers/head.ts';
import { found } from '../../refuse.ts';
import { cashUp, drawer } from './drawer.ts';
import { ledgerOf } from './ledger.ts';
import { receivablesOn } from './receivables.ts';
import { reportCsv } from './report-csv.ts';
import { makeReport } from './reports/index.ts';
import { issueStatement, statements } from './statement.ts';

const receivables = os.till.receivables.handler(({ input, context: { store, now } }) => {
  const { timeZone } = shopOf(store.read);
  const on = input.on ?? dateIn(timeZone, now());
  return receivablesOn(store.read, { timeZone, on, basis: input.basis });
});

const customerLedger = os.till.customerLedger.handler(({ input, context: { store } }) => {
  const { timeZone } = shopOf(store.read);
  const customer = found(customerById(store.read, input.customerId), 'customer');
  return ledgerOf(store.read, customer, { timeZone, from: input.from, to: input.to });
});

interface ReportAsked {
  report: ReportName;
  from: string;
  to: string;
  basis: AgeBasis;
}

function reportFor({ store, now }: DeskContext, { report, ...asked }: ReportAsked): Report {
  const shop = shopOf(store.read);
  return makeReport(store.read, report, { shop, ...asked }, dateIn(shop.timeZone, now()));
}

const report = os.till.report.handler(({ input, context }) => reportFor(context, input));

const base64 = (bytes: string | Uint8Array): string => Buffer.from(bytes).toString('base64');

const reportFile = os.till.reportFile.handler(({ input, context }) => {
  const made = reportFor(context, input);
  const days = made.from === made.to ? made.to : `${made.from}-to-${made.to}`;
  if (input.form === 'csv') {
    const wanted = input.table === '' ? made.tables[0] : undefined;
    const table = found(wanted ?? made.tables.find(({ key }) => key === input.table), 'table');
    const { currency } = shopOf(context.store.read);
    return {
      fileName: `${made.report}-${table.key}-${days}.csv`,
      mediaType: 'text/csv;charset=utf-8',
      bytes: base64(reportCsv(table, { currency, mark: input.mark })),
    };
  }
  const shop = shopOf(context.store.read);
  const at = context.now().toISOString();
  const { number: _number, ...head } = shopHead({ shop, at, staff: { name: '' } }, '');
  return {
    fileName: `${made.report}-${days}.pdf`,
    mediaType: 'application/pdf',
    bytes: base64(drawReport(head, made, REPORT_REACH[made.report])),
  };
});

/** The shop's books: who owes what, the drawer, reports. */
export const books = {
  receivables,
  customerLedger,
  issueStatement,
  statements,
  drawer,
  cashUp,
  report,
  reportFile,
};
