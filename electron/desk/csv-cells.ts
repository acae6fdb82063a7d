/** Cells as they stand in a flat file: RFC 4180, made safe for spreadsheets. */

const PLAIN_NUMBER = /^-?\d+([.,]\d+)?$/;
/** What a spreadsheet would take for a formula; an apostrophe before it says that it is text. */
const FORMULA = /^[=+\-@\t\r']/;
const GUARDED = /^'[=+\-@\t\r']/;

const guarded = (text: string): string =>
  FORMULA.test(text) && !PLAIN_NUMBER.test(text) ? `'${text}` : text;

export const unguarded = (cell: string): string => (GUARDED.test(cell) ? cell.slice(1) : cell);

const quoted = (cell: string): string =>
  /[",;\t\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

/**
 * Lines of cells as RFC 4180 writes them.
 * @param mark a byte-order mark before them, by which spreadsheets know that this is UTF-8
 */
export const csvText = (lines: readonly (readonly string[])[], mark: boolean): string =>
  `${mark ? '\uFEFF' : ''}${lines.map((cells) => `${cells.map((cell) => quoted(guarded(cell))).join(',')}\r\n`).join('')}`;
