import { z } from 'zod';
import { STOCK_REPORTS } from '../../work/parts/stock-reports.ts';
import { reads } from '../base.ts';
import { CalendarDate, maybeText } from '../fields.ts';
import { ReportTable } from '../till/books.ts';

/** The reports of the stores: tables of plain figures for a time, also as CSV and PDF. */

export const StockReport = z.object({
  report: z.enum(STOCK_REPORTS),
  title: z.string(),
  from: CalendarDate,
  to: CalendarDate,
  tables: z.array(ReportTable),
});
export type StockReport = z.infer<typeof StockReport>;

/** Longer than this is a slip of the finger, and a column a month would not end. */
const MOST_YEARS = 50;

const fields = { report: z.enum(STOCK_REPORTS), from: CalendarDate, to: CalendarDate };

const inOrder = ({ from, to }: { from: string; to: string }) => from <= to;
const IN_ORDER = { path: ['to'], message: 'The last day comes before the first: swap them.' };

const notTooLong = ({ from, to }: { from: string; to: string }) =>
  Number(to.slice(0, 4)) - Number(from.slice(0, 4)) <= MOST_YEARS;
const TOO_LONG = { path: ['from'], message: `Choose ${MOST_YEARS} years at most.` };

export const stockReports = {
  stockReport: reads
    .input(z.strictObject(fields).refine(inOrder, IN_ORDER).refine(notTooLong, TOO_LONG))
    .output(StockReport),

  /** A table of a report as CSV, or the whole report as PDF. */
  stockReportFile: reads
    .input(
      z
        .strictObject({
          ...fields,
          form: z.enum(['csv', 'pdf']),
          /** For CSV: which table; the first when empty. */
          table: maybeText(40),
          /** For CSV: a byte-order mark before it, by which spreadsheets know its letters. */
          mark: z.boolean().default(false),
        })
        .refine(inOrder, IN_ORDER)
        .refine(notTooLong, TOO_LONG),
    )
    .output(
      z.object({
        fileName: z.string(),
        mediaType: z.string(),
        /** Base64. */
        bytes: z.base64(),
      }),
    ),
};
