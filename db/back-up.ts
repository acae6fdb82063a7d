import { createHash } from 'node:crypto';
import {
  closeSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { basename, join } from 'node:path';
import Database from 'better-sqlite3';

export interface BackUp {
  fileName: string;
  folder: string;
  bytes: number;
  sha256: string;
  at: string;
}

/** Rows that a copy must have as many of as the original. */
const COUNTED = ['journal', 'issued_paper', 'reading', 'payment', 'migration'];

const rowCounts = (db: Database.Database): number[] =>
  COUNTED.map((table) => {
    const there = db.prepare('SELECT 1 FROM sqlite_schema WHERE name = ?').get(table);
    if (there === undefined) return 0;
    return db.prepare<[], { n: number }>(`SELECT count(*) AS n FROM "${table}"`).get()?.n ?? 0;
  });

/**
 * Copies the open store into `folder` and opens the copy to see that it is whole: SQLite's integrity check,
 * foreign keys, and as many rows as the original. The copy gets its final name only after that.
 * @throws Error when the copy is not as good as the original; nothing is left behind then
 */
export function backUpTo(db: Database.Database, folder: string, now: Date): BackUp {
  mkdirSync(folder, { recursive: true });
  const at = now.toISOString();
  const fileName = `tappet-${at.replace(/[:.]/g, '-')}.db`;
  const path = join(folder, fileName);
  const unfinished = `${path}.unfinished`;
  rmSync(unfinished, { force: true });
  try {
    db.prepare('VACUUM INTO ?').run(unfinished);
    verifyCopy(unfinished, rowCounts(db));
    const handle = openSync(unfinished, 'r+');
    fsyncSync(handle);
    closeSync(handle);
    renameSync(unfinished, path);
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw error;
  }
  return {
    fileName: basename(path),
    folder,
    bytes: statSync(path).size,
    sha256: createHash('sha256').update(readFileSync(path)).digest('hex'),
    at,
  };
}

function verifyCopy(path: string, expected: number[]): void {
  const copy = new Database(path, { readonly: true });
  try {
    const integrity = copy.pragma('integrity_check', { simple: true });
    if (integrity !== 'ok') throw new Error(`The copy is not whole: ${String(integrity)}`);
    if (rowCounts(copy).join() !== expected.join())
      throw new Error('The copy has fewer rows than the store.');
  } finally {
    copy.close();
  }
}
