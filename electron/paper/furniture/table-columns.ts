import { STYLE } from './ink.ts';
import type { Sheet } from './sheet.ts';
import { SIGN_SPACE } from './signs.ts';
import type { Row } from './table-rows.ts';

export interface Column {
  heading: string;
  /** Share of the width that the fitted columns leave, or `fit`: as wide as what stands in it. */
  width: number | 'fit';
  align?: 'left' | 'right';
}

/** Where a column stands. */
export interface Place {
  x: number;
  width: number;
  align: 'left' | 'right';
}

export const GUTTER = 8;
/** No fitted column takes more than this share of the table. */
const FIT_LIMIT = 0.3;

export function placesOf(
  sheet: Sheet,
  columns: Column[],
  rows: Row[],
  x: number,
  width: number,
): Place[] {
  const fitted = columns.map((column, index) => {
    if (column.width !== 'fit') return null;
    const widest = rows.reduce(
      (most, row) => Math.max(most, widthOfCell(sheet, row, index)),
      sheet.type.widthOf(column.heading, STYLE.label),
    );
    return Math.min(widest + 0.5, width * FIT_LIMIT);
  });
  const taken = fitted.reduce<number>((sum, own) => sum + (own ?? 0), 0);
  const free = width - taken - GUTTER * (columns.length - 1);
  const shares = columns.reduce(
    (sum, column) => sum + (column.width === 'fit' ? 0 : column.width),
    0,
  );
  let at = x;
  return columns.map((column, index) => {
    const own = column.width === 'fit' ? (fitted[index] ?? 0) : (free * column.width) / shares;
    const place = { x: at, width: own, align: column.align ?? 'left' } satisfies Place;
    at += own + GUTTER;
    return place;
  });
}

function widthOfCell(sheet: Sheet, row: Row, index: number): number {
  const cell = row.cells[index];
  if (cell === undefined) return 0;
  const texts = cell.paragraphs.map(({ text, style }) => sheet.type.widthOf(text, style));
  return Math.max(0, ...texts) + (cell.sign === undefined ? 0 : SIGN_SPACE);
}
