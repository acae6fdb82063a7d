/** Cells as they stand in the flat file: RFC 4180, made safe for spreadsheets. */

const PLAIN_NUMBER = /^-?\d+([.,]\d+)?$/;
/** What a spreadsheet would take for a formula; an apostrophe before it says that it is text. */
const FORMULA = /^[=+\-@\t\r']/;
const GUARDED = /^'[=+\-@\t\r']/;

const guarded = (text: string): string =>
  FORMULA.test(text) && !PLAIN_NUMBER.test(text) ? `'${text}` : text;

export const unguarded = (cell: string): string => (GUARDED.test(cell) ? cell.slice(1) : cell);

const quoted = (cell: string): string =>
  /[",;\t\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

export const csvText = (lines: readonly (readonly string[])[]): string =>
  `\uFEFF${lines.map((cells) => `${cells.map((cell) => quoted(guarded(cell))).join(',')}\r\n`).join('')}`;
