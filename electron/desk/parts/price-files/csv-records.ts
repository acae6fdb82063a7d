import { CsvError, parse } from 'csv-parse/sync';
import type { Delimiter } from '../../../../shared/work/parts/price-file/words.ts';

/** A record of a CSV file as it stands there. */
export interface CsvRecord {
  /** The line on which it begins, from 1. */
  line: number;
  raw: string;
  /** Null when a quotation mark stands where it can't. */
  cells: string[] | null;
}

/** A record that has not closed a quotation mark after so many lines never will. */
const MOST_LINES = 50;

/** Where the splitting goes on, and what was found. */
interface Split {
  records: { line: number; raw: string; sound: boolean }[];
  at: number;
  line: number;
}

/**
 * The records of a CSV file (RFC 4180), some at a time. The library reads the fields; where records end is
 * found here, because the library takes a quotation mark that is never closed for the rest of the file, and
 * such a mark has to cost one line and no more. A mark in the middle of an unquoted field stands for itself
 * (`5" pulley`).
 * @param size how many records come at a time
 */
export function* csvRecords(
  text: string,
  delimiter: Delimiter,
  size: number,
): Generator<{ records: CsvRecord[] /** Characters read so far. */; at: number }> {
  let at = 0;
  let line = 1;
  while (at < text.length) {
    const split = splitRecords(text, delimiter, { at, line, size });
    ({ at, line } = split);
    yield { records: withCells(split.records, delimiter), at };
  }
}

function splitRecords(
  text: string,
  delimiter: Delimiter,
  from: { at: number; line: number; size: number },
): Split {
  const records: Split['records'] = [];
  let { at, line } = from;
  while (at < text.length && records.length < from.size) {
    const record = recordAt(text, at, delimiter);
    const raw = text.slice(at, record.end);
    if (raw.trim() !== '') records.push({ line, raw, sound: record.sound });
    line += record.lines;
    at = record.next;
  }
  return { records, at, line };
}

interface RecordEnd {
  /** After the last character of the record, and the first of the next one. */
  end: number;
  next: number;
  lines: number;
  sound: boolean;
}

type Quotes = 'open' | 'closed' | 'wrong';

function recordAt(text: string, start: number, delimiter: Delimiter): RecordEnd {
  const first = lineAt(text, start);
  let lines = 1;
  let row = first;
  let open = false;
  let from = start;
  for (;;) {
    const state = quotesOf(text.slice(from, row.end), delimiter, open);
    if (state === 'wrong') return { ...first, lines: 1, sound: false };
    open = state === 'open';
    if (!open) return { end: row.end, next: row.next, lines, sound: true };
    if (row.next >= text.length || lines >= MOST_LINES) return { ...first, lines: 1, sound: false };
    from = row.next;
    row = lineAt(text, from);
    lines += 1;
  }
}

const LINE_BREAK = /\r\n?|\n/g;

/** A line ends with CRLF, with LF, or (in files of old) with CR alone. */
function lineAt(text: string, start: number): { end: number; next: number } {
  LINE_BREAK.lastIndex = start;
  const found = LINE_BREAK.exec(text);
  return found === null
    ? { end: text.length, next: text.length }
    : { end: found.index, next: LINE_BREAK.lastIndex };
}

/** Whether a line ends within quotation marks that a field of it, or of a line before, began with. */
function quotesOf(row: string, delimiter: Delimiter, openBefore: boolean): Quotes {
  let at = 0;
  let open = openBefore;
  while (open || at < row.length) {
    if (open) {
      const quote = row.indexOf('"', at);
      if (quote < 0) return 'open';
      at = quote + (row[quote + 1] === '"' ? 2 : 1);
      if (row[quote + 1] === '"') continue;
      if (at < row.length && row[at] !== delimiter) return 'wrong';
      open = false;
    } else if (row[at] === '"') {
      open = true;
      at += 1;
      continue;
    }
    const next = row.indexOf(delimiter, at);
    if (next < 0) return 'closed';
    at = next + 1;
  }
  return 'closed';
}

function withCells(records: Split['records'], delimiter: Delimiter): CsvRecord[] {
  const sound = records.filter((record) => record.sound);
  const rows = fieldsOf(sound.map(({ raw }) => raw).join('\n'), delimiter);
  if (rows?.length === sound.length) {
    let next = 0;
    return records.map(({ line, raw, sound: hasCells }) => {
      const cells = hasCells ? (rows[next] ?? null) : null;
      if (hasCells) next += 1;
      return { line, raw, cells };
    });
  }
  return records.map(({ line, raw, sound: hasCells }) => {
    const alone = hasCells ? fieldsOf(raw, delimiter) : null;
    return { line, raw, cells: alone?.length === 1 ? (alone[0] ?? null) : null };
  });
}

/** Null for what the library can't read. */
function fieldsOf(text: string, delimiter: Delimiter): string[][] | null {
  try {
    return parse(text, {
      delimiter,
      relax_column_count: true,
      relax_quotes: true,
      record_delimiter: ['\r\n', '\n', '\r'],
    });
  } catch (error) {
    if (error instanceof CsvError) return null;
    throw error;
  }
}
