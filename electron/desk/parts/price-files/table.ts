import type { Cell } from '../../../../shared/work/parts/price-file/line.ts';
import type { Delimiter, TextEncoding } from '../../../../shared/work/parts/price-file/words.ts';
import { csvRecords } from './csv-records.ts';
import { decodeText, encodingOf } from './decode-text.ts';
import { delimiterOf, usualWidth } from './delimiter.ts';
import { cellOf, isWorkbook, sheetsOf } from './workbook.ts';

/** A row of a table as it stands in its file. */
export interface TableRow {
  /** In the file, from 1. */
  line: number;
  /** What stands there, for people to look at. */
  raw: string;
  /** Null when its quotation marks are out of order. */
  cells: readonly Cell[] | null;
}

/** A price file as a table, whatever it was written as. */
export interface Table {
  kind: 'text' | 'spreadsheet';
  encoding: TextEncoding;
  delimiter: Delimiter;
  sheets: string[];
  sheet: string;
  /** Rows some at a time, and how much of the file they bring one to (0 to 1). Blank rows are left out. */
  chunks: (size: number) => Generator<{ rows: TableRow[]; share: number }>;
  /** How many columns the rows of a text file have; null where they don't agree. */
  width: number | null;
}

export interface TableForm {
  encoding?: TextEncoding;
  delimiter?: Delimiter;
  sheet?: string;
}

/** Rows that tell how wide a table is. */
const LOOKED_AT = 500;
/** The share of them that has to have one width before another width is a fault. */
const AGREEING = 0.8;

/**
 * Opens a file as a table. A workbook is unpacked in a thread of its own.
 * @returns null for what is no table: another kind of file, a workbook that is damaged, no rows
 */
export async function openTable(bytes: Buffer, form: TableForm): Promise<Table | null> {
  const table = isWorkbook(bytes) ? await workbookTable(bytes, form) : textTable(bytes, form);
  const [first] = table?.chunks(LOOKED_AT).take(1).toArray() ?? [];
  return first === undefined || first.rows.length === 0 ? null : table;
}

/** A program, a picture or a PDF has zero bytes, and no mark that says UTF-16. */
const isBinary = (text: string): boolean => text.slice(0, 4096).includes('\0');

function textTable(bytes: Buffer, form: TableForm): Table | null {
  const encoding = form.encoding ?? encodingOf(bytes);
  const text = decodeText(bytes, encoding);
  if (form.encoding === undefined && (isBinary(text) || text.startsWith('%PDF-'))) return null;
  const delimiter = form.delimiter ?? delimiterOf(text);
  const chunks: Table['chunks'] = function* (size) {
    for (const { records, at } of csvRecords(text, delimiter, size))
      yield { rows: records, share: at / text.length };
  };
  const [looked] = chunks(LOOKED_AT).take(1).toArray();
  const widths = (looked?.rows ?? []).map(({ cells }) => cells?.length ?? 0);
  const usual = usualWidth(widths);
  const agree = widths.filter((each) => each === usual).length >= widths.length * AGREEING;
  const width = agree ? usual : null;
  return { kind: 'text', encoding, delimiter, sheets: [], sheet: '', chunks, width };
}

async function workbookTable(bytes: Buffer, form: TableForm): Promise<Table | null> {
  const sheets = await sheetsOf(bytes);
  if (sheets === null || sheets.length === 0) return null;
  // Terms and addresses stand on short sheets, prices on a long one.
  const sheet =
    sheets.find(({ name }) => name === form.sheet) ??
    sheets.reduce((longest, each) => (each.rows.length > longest.rows.length ? each : longest));
  const { rows } = sheet;
  return {
    kind: 'spreadsheet',
    encoding: 'utf-8',
    delimiter: ',',
    sheets: sheets.map(({ name }) => name),
    sheet: sheet.name,
    width: null,
    chunks: function* (size) {
      for (let from = 0; from < rows.length; from += size) {
        const some = rows.slice(from, from + size).map((row, index) => {
          const cells = row.map(cellOf);
          const raw = cells
            .map(textOf)
            .join(' | ')
            .replace(/( \| )+$/, '');
          return { line: from + index + 1, raw, cells };
        });
        yield {
          rows: some.filter(({ raw }) => raw !== ''),
          share: Math.min(1, (from + size) / rows.length),
        };
      }
    },
  };
}

/** A cell as people read it. */
export const textOf = (cell: Cell): string =>
  cell instanceof Date ? cell.toISOString().slice(0, 10) : String(cell);
