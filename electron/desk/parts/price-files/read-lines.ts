import { setImmediate as otherCalls } from 'node:timers/promises';
import { eq } from 'drizzle-orm';
import {
  countChanges,
  keptProblem,
  noChanges,
} from '../../../../db/queries/parts/price-file-lines.ts';
import { type SuppliedPart, suppliedParts } from '../../../../db/queries/parts/supplied-parts.ts';
import { priceFile, priceFileLine } from '../../../../db/schema/index.ts';
import type { Store, WriteStore } from '../../../../db/store.ts';
import { type LineForm, readPriceLine } from '../../../../shared/work/parts/price-file/line.ts';
import { type LineProblem, PRICE_CHANGES } from '../../../../shared/work/parts/price-file/words.ts';
import { type KeptLine, keepLines } from './keep-lines.ts';
import type { Reading } from './readings.ts';
import type { Table, TableRow } from './table.ts';

/** Lines that are read before other calls get their turn: some forty milliseconds. */
const AT_A_TIME = 2000;

/** Of a line that can't be used, so much is kept for people to look at. */
const LONGEST_RAW = 500;

export interface PriceFileToRead {
  id: string;
  supplierId: string;
  table: Table;
  headingLines: number;
  form: LineForm;
}

const UNUSABLE = {
  number: '',
  numberKey: '',
  description: '',
  cost: 0,
  listPrice: null,
  packSize: 1000,
  coreCharge: 0,
  supersededBy: '',
} satisfies Partial<KeptLine>;

/** Reads row after row, and knows which numbers have come already. */
function lineReader({ table: { width }, form }: PriceFileToRead): (row: TableRow) => KeptLine {
  const firstLines = new Map<string, number>();
  return ({ line, raw, cells }) => {
    const unusable = (problem: LineProblem, firstLine: number | null = null): KeptLine => ({
      ...UNUSABLE,
      line,
      problem: keptProblem(problem, firstLine),
      raw: raw.slice(0, LONGEST_RAW).toWellFormed(),
    });
    if (cells === null) return unusable('quotes');
    // Delimiters that follow the last cell and divide nothing are no columns.
    const surplus = width === null ? [] : cells.slice(width).filter((cell) => cell !== '');
    if (surplus.length > 0 || (width !== null && cells.length < width)) return unusable('columns');
    const read = readPriceLine(cells, form);
    if ('problem' in read) return unusable(read.problem);
    const first = firstLines.get(read.line.numberKey);
    if (first !== undefined) return unusable('twice', first);
    firstLines.set(read.line.numberKey, line);
    return { ...read.line, line, problem: '', raw: '' };
  };
}

/** Counts which of our parts are in the file. */
function oursCounter(parts: readonly SuppliedPart[]) {
  const byKey = new Map<string, string[]>();
  for (const { partId, keys } of parts)
    for (const key of keys) byKey.set(key, [...(byKey.get(key) ?? []), partId]);
  const seen = new Set<string>();
  return {
    see: (key: string) => {
      for (const partId of byKey.get(key) ?? []) seen.add(partId);
    },
    count: () => seen.size,
  };
}

/**
 * Reads a file to its end, some lines at a time; between them other calls go on, and the reading ends when
 * it was stopped or the store was closed.
 */
export async function readLines(
  store: Store,
  file: PriceFileToRead,
  reading: Reading,
): Promise<void> {
  const readRow = lineReader(file);
  const ours = oursCounter(suppliedParts(store.read, file.supplierId));
  const counts = noChanges();
  for (const { rows, share } of file.table.chunks(AT_A_TIME)) {
    const lines = rows.filter(({ line }) => line > file.headingLines).map(readRow);
    const [first, last] = [lines[0], lines.at(-1)];
    if (first !== undefined && last !== undefined) {
      const changes = store.write((writing) => {
        keepLines(writing, file.id, lines);
        return countChanges(writing, file.id, [first.line, last.line]);
      });
      for (const kind of PRICE_CHANGES) counts[kind] += changes.get(kind) ?? 0;
      for (const { numberKey } of lines) ours.see(numberKey);
    }
    reading.lines += lines.length;
    reading.share = share;
    await otherCalls();
    if (reading.stopped) return;
  }
  store.write((writing) =>
    writing
      .update(priceFile)
      .set({
        state: 'read',
        lines: reading.lines,
        counts: JSON.stringify({ ...counts, ours: ours.count() }),
      })
      .where(eq(priceFile.id, file.id))
      .run(),
  );
}

/** Takes all lines of a file away, and says that it was stopped. */
export function dropLines(store: WriteStore, fileId: string): void {
  store.delete(priceFileLine).where(eq(priceFileLine.fileId, fileId)).run();
  store.update(priceFile).set({ state: 'stopped' }).where(eq(priceFile.id, fileId)).run();
}
