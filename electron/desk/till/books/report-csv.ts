import type { ReportTable } from '../../../../shared/contract/till/index.ts';
import { minorDigits, minorToDecimal } from '../../../../shared/money/index.ts';
import { csvText } from '../../csv-cells.ts';

type ColumnKind = ReportTable['columns'][number]['as'];
type Cell = ReportTable['rows'][number][number];

/** How many decimals a figure is kept with; undefined for what is no such figure. */
function decimals(as: ColumnKind, currency: string): number | undefined {
  if (as === 'money') return minorDigits(currency);
  if (as === 'hours' || as === 'quantity') return 3;
  return as === 'share' ? 4 : undefined;
}

const heading = (label: string, as: ColumnKind, currency: string): string =>
  as === 'money'
    ? `${label}, ${currency}`
    : as === 'hours'
      ? `${label}, h`
      : as === 'share'
        ? `${label}, %`
        : label;

function cellText(value: Cell | undefined, as: ColumnKind, currency: string): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'string') return value;
  const digits = decimals(as, currency);
  return digits === undefined ? String(value) : minorToDecimal(value, digits);
}

/**
 * A table as CSV after RFC 4180: a line of headings and a line for each row, without the last line's sums.
 * Amounts are decimals with a point and their currency in the heading, dates are ISO, so that any program
 * reads them alike.
 */
export const reportCsv = (
  { columns, rows }: ReportTable,
  { currency, mark }: { currency: string; mark: boolean },
): string =>
  csvText(
    [
      columns.map(({ label, as }) => heading(label, as, currency)),
      ...rows.map((row) => columns.map(({ as }, index) => cellText(row[index], as, currency))),
    ],
    mark,
  );
