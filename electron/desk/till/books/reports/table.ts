import type { Shop } from '../../../../../shared/contract/office.ts';
import type { COLUMN_KINDS, ReportTable } from '../../../../../shared/contract/till/index.ts';
import type { AgeBasis, KindsTaxed } from '../../../../../shared/money/books/index.ts';
import { divideRounded, sumMinor } from '../../../../../shared/money/index.ts';

/** What a report is made for. Dates are ISO calendar dates, both of them within. */
export interface Asked {
  readonly shop: Shop;
  readonly from: string;
  readonly to: string;
  readonly basis: AgeBasis;
}

type Cell = string | number | null;
type ColumnKind = (typeof COLUMN_KINDS)[number];

/** One column of a table: what it is called, how it is read, and its cell of a row. */
export interface ReportColumn<Row> {
  label: string;
  as: ColumnKind;
  of: (row: Row) => Cell;
  /** Its cell of the last line: a sum, a word, or what follows from all rows. */
  total?: 'sum' | string | ((rows: readonly Row[]) => Cell);
}

/** A table from rows and what its columns show of them. It has a last line when a column wants one. */
export function reportTable<Row>(
  { key, heading, note = '' }: { key: string; heading: string; note?: string },
  columns: readonly ReportColumn<Row>[],
  rows: readonly Row[],
): ReportTable {
  const cells = rows.map((row) => columns.map(({ of }) => unsigned(of(row))));
  const wanted = rows.length > 0 && columns.some(({ total }) => total !== undefined);
  return {
    key,
    heading,
    note,
    columns: columns.map(({ label, as }) => ({ label, as })),
    rows: cells,
    total: wanted ? columns.map((column) => unsigned(totalCell(column, rows))) : null,
  };
}

/** Nothing is nothing: a zero that was subtracted from is not written below zero. */
const unsigned = (cell: Cell): Cell => (cell === 0 ? 0 : cell);

function totalCell<Row>({ of, total }: ReportColumn<Row>, rows: readonly Row[]): Cell {
  if (total === undefined) return null;
  if (typeof total === 'function') return total(rows);
  if (total !== 'sum') return total;
  return sumMinor(rows.map(of).filter((cell) => typeof cell === 'number'));
}

const THOUSANDTHS = 1_000n;

/** A share in millionths, to a tenth of a percent; null of nothing and of less than that. */
export const shareOf = (part: number, whole: number): number | null =>
  whole <= 0
    ? null
    : Number(divideRounded(BigInt(part) * THOUSANDTHS, BigInt(whole), 'half-up') * THOUSANDTHS);

/** The kinds of line that a tax of the shop is charged on, while the shop still has that rule. */
export const kindsTaxedBy =
  ({ taxes }: Shop): KindsTaxed =>
  (tax) =>
    taxes.find(({ name, ratePpm }) => name === tax.name && ratePpm === tax.ratePpm)?.kinds;
