import type { ReportTable } from '../../shared/contract/till/index.ts';
import { formatQuantity, formatRate } from '../../shared/money/index.ts';
import type { ReportReach } from '../../shared/work/reports.ts';
import type { PaperHead, Shop } from './content.ts';
import { headedPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { paragraph, section } from './furniture/paragraphs.ts';
import type { Block, Sheet } from './furniture/sheet.ts';
import { table } from './furniture/table.ts';
import type { Column } from './furniture/table-columns.ts';
import { cell } from './furniture/table-rows.ts';
import { writingOf } from './furniture/writing.ts';

/** From so many columns on, pages are on the long side. */
const WIDE = 9;
/** Text of so many characters gets no more room than it needs. */
const SHORT = 14;
const LONGEST = 40;

interface Report {
  title: string;
  from: string;
  to: string;
  tables: readonly ReportTable[];
}

/** A report for the shop's own use. It is drawn up anew each time, and not kept as a paper. */
export function drawReport(
  head: Omit<PaperHead, 'number'>,
  report: Report,
  reach: ReportReach,
): Uint8Array {
  const landscape = report.tables.some(({ columns }) => columns.length >= WIDE);
  const headed = {
    head: { ...head, number: reachInWords(head.shop, report, reach) },
    title: report.title,
    words: report.title,
    landscape,
  };
  return headedPages(headed, null, (sheet) =>
    report.tables.map((each) =>
      section(sheet, each.heading, [
        ...(each.note === '' ? [] : [paragraph(sheet, each.note, STYLE.soft)]),
        figures(sheet, each),
      ]),
    ),
  );
}

function reachInWords(shop: Shop, { from, to }: Report, reach: ReportReach): string {
  const { date } = writingOf(shop);
  if (reach === 'now') return `As of ${date(to)}`;
  if (reach === 'day') return `At the end of ${date(to)}`;
  return from === to ? date(to) : `${date(from)} to ${date(to)}`;
}

function figures(sheet: Sheet, { columns, rows, total }: ReportTable): Block {
  if (rows.length === 0) return paragraph(sheet, 'Nothing in this time.', STYLE.soft);
  const written = rows.map((row) => columns.map(({ as }, index) => write(sheet, as, row[index])));
  const laid = columns.map(({ label, as }, index) =>
    columnOf(
      label,
      as,
      written.map((row) => row[index] ?? ''),
    ),
  );
  return table(sheet, {
    columns: withRoom(laid),
    rows: [
      ...written.map((row) => ({ cells: row.map((text) => cell(text)) })),
      ...(total === null
        ? []
        : [
            {
              cells: columns.map(({ as }, index) => {
                const summed = total[index];
                const text = typeof summed === 'string' ? summed : write(sheet, as, summed);
                return cell(text, STYLE.cellStrong);
              }),
            },
          ]),
    ],
  });
}

/** Where every column is as wide as what stands in it, the first one takes what is left of the line. */
const withRoom = (columns: Column[]): Column[] =>
  columns.every(({ width }) => width === 'fit')
    ? columns.map((column, index) => (index === 0 ? { ...column, width: 1 } : column))
    : columns;

type ColumnKind = ReportTable['columns'][number]['as'];

function columnOf(heading: string, as: ColumnKind, texts: readonly string[]): Column {
  if (as === 'text') {
    const longest = Math.max(heading.length, ...texts.map((text) => text.length));
    return { heading, width: longest <= SHORT ? 'fit' : Math.min(longest, LONGEST) };
  }
  const left = as === 'job' || as === 'date';
  return { heading, width: 'fit', align: left ? 'left' : 'right' };
}

function write(sheet: Sheet, as: ColumnKind, value: string | number | null | undefined): string {
  const { locale } = sheet.head.shop;
  if (value === null || value === undefined) return '';
  if (typeof value === 'string') return as === 'date' ? sheet.writing.date(value) : value;
  switch (as) {
    case 'money':
      return sheet.writing.money(value);
    case 'hours':
    case 'quantity':
      return formatQuantity(value, locale);
    case 'share':
      return formatRate(value, locale);
    default:
      return String(value);
  }
}
