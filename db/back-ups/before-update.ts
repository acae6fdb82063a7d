import { mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { backUpFileName } from '../../shared/work/office/back-ups.ts';
import { syncFile, syncFolder } from './files.ts';

/** Rows that a copy must have as many of as the original. */
const COUNTED = ['journal', 'issued_paper', 'reading', 'payment', 'migration'];

const rowCounts = (db: Database.Database): number[] =>
  COUNTED.map((table) => {
    const there = db.prepare('SELECT 1 FROM sqlite_schema WHERE name = ?').get(table);
    if (there === undefined) return 0;
    return db.prepare<[], { n: number }>(`SELECT count(*) AS n FROM "${table}"`).get()?.n ?? 0;
  });

/**
 * Copies a store that is about to be brought up to this version, in one go, since nobody is served yet, and
 * opens the copy to see that it is whole: SQLite's integrity check, and as many rows as the original. The copy
 * gets its final name only after that.
 * @throws Error when the copy is not as good as the original; nothing is left behind then
 */
export function backUpBeforeUpdate(db: Database.Database, folder: string, now: Date): void {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, backUpFileName({ at: now.toISOString(), origin: 'before-update' }));
  const unfinished = `${path}.unfinished`;
  rmSync(unfinished, { force: true });
  try {
    db.prepare('VACUUM INTO ?').run(unfinished);
    verifyCopy(unfinished, rowCounts(db));
    syncFile(unfinished);
    renameSync(unfinished, path);
    syncFolder(folder);
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw error;
  }
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
