import { copyFileSync, existsSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { pendingMigrations } from './migrate.ts';
import type { Migration } from './migrations.ts';
import { StoreRefusal } from './refusal.ts';

/**
 * Sees whether an open store is sound and of a version that this program knows.
 * @returns the migrations that it still lacks
 * @throws StoreRefusal
 */
export function inspect(db: Database.Database, known: readonly Migration[]): Migration[] {
  const sound = db.pragma('quick_check', { simple: true });
  if (sound !== 'ok')
    throw new StoreRefusal('DAMAGED', { detail: String(sound).replace(/\s+/g, ' ').trim() });
  return pendingMigrations(db, known);
}

const hasContent = (file: string): boolean => existsSync(file) && statSync(file).size > 0;

/**
 * After a crash, SQLite leaves a log or a journal beside the file, and whoever opens the file for writing
 * has it written into the file. So that a store that will be refused stays as it is, such a one is first
 * looked at without leave to write.
 * @throws StoreRefusal with the file untouched
 */
export function inspectAfterCrash(file: string, known: readonly Migration[]): void {
  if (!hasContent(`${file}-wal`) && !hasContent(`${file}-journal`)) return;
  // SQLite's index of the log: it holds nothing that isn't in the log.
  const index = `${file}-shm`;
  const hadIndex = existsSync(index);
  try {
    inspectReadOnly(file, known);
  } catch (error) {
    const needsRollback =
      error instanceof Database.SqliteError && error.code === 'SQLITE_READONLY_ROLLBACK';
    if (!needsRollback) throw error;
    inspectCopy(file, known);
  } finally {
    if (!hadIndex) rmSync(index, { force: true });
  }
}

function inspectReadOnly(file: string, known: readonly Migration[]): void {
  const db = new Database(file, { readonly: true, fileMustExist: true, timeout: 250 });
  try {
    inspect(db, known);
  } finally {
    db.close();
  }
}

/** A half-done write is taken back in a copy: only then does the file say what it is. */
function inspectCopy(file: string, known: readonly Migration[]): void {
  const aside = mkdtempSync(join(dirname(file), 'looked-at-'));
  try {
    const copy = join(aside, basename(file));
    copyFileSync(file, copy);
    copyFileSync(`${file}-journal`, `${copy}-journal`);
    const db = new Database(copy);
    try {
      inspect(db, known);
    } finally {
      db.close();
    }
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
}
