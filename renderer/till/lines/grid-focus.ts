import { CELLS, type Cell } from './draft-line.ts';

/** How a cell is found again: the row's key and the cell's name. */
export const cellName = (key: number, cell: Cell): string => `${key}/${cell}`;

/** Brings the focus into a cell, its text selected so that typing replaces it. */
export function focusCell(grid: HTMLElement | null, key: number, cell: Cell): void {
  const field = grid?.querySelector<HTMLElement>(`[data-cell="${cellName(key, cell)}"]`);
  field?.focus();
  if (field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement) field.select();
}

/** The cell after, or before, another in the same row; null at the row's end. */
export const besideCell = (cell: Cell, step: 1 | -1): Cell | null =>
  CELLS[CELLS.indexOf(cell) + step] ?? null;

/** The first thing to type on an empty estimate. */
export function focusFirstLine(page: HTMLElement | null): void {
  page?.querySelector<HTMLElement>('[data-cell$="/description"]')?.focus();
}
