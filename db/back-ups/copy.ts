import { mkdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { type BackUpOrigin, backUpFileName } from '../../shared/work/office/back-ups.ts';
import type { Migration } from '../migrations.ts';
import { checkStoreFile } from './check.ts';
import { sha256Of, syncFile, syncFolder } from './files.ts';
import { backUpFolder } from './folders.ts';
import { dropOldDaily } from './list.ts';
import { BackUpTrouble, type Tell } from './trouble.ts';

export interface BackUp {
  fileName: string;
  folder: string;
  bytes: number;
  sha256: string;
  at: string;
}

export interface CopyProgress {
  copying: Tell;
  checking: Tell;
}

/** Pages that are copied before others get their turn: 4 MB of the usual size. */
const PAGES = 1000;

/**
 * Copies the open store piece by piece, while others read and write: what they write meanwhile is in the copy
 * too. The copy is then read through as a file to be brought back is, and gets its name only after that.
 * @throws BackUpTrouble, or what `progress` throws; nothing is left behind then
 */
export async function copyStore(
  db: Database.Database,
  known: readonly Migration[],
  dataFolder: string,
  made: { at: Date; origin: BackUpOrigin },
  progress: CopyProgress,
): Promise<BackUp> {
  const folder = backUpFolder(dataFolder);
  mkdirSync(folder, { recursive: true });
  const at = made.at.toISOString();
  const fileName = backUpFileName({ at, origin: made.origin });
  const path = join(folder, fileName);
  const unfinished = `${path}.unfinished`;
  rmSync(unfinished, { force: true });
  try {
    const entries = entriesIn(db);
    await db.backup(unfinished, {
      progress: ({ totalPages, remainingPages }) => {
        progress.copying(1 - remainingPages / Math.max(1, totalPages));
        return PAGES;
      },
    });
    leaveWal(unfinished);
    const { journal } = await checkStoreFile(unfinished, known, progress.checking);
    if (journal.length < entries)
      throw new BackUpTrouble('DAMAGED', { detail: 'the copy lacks entries of the journal' });
    syncFile(unfinished);
    const sha256 = await sha256Of(unfinished);
    renameSync(unfinished, path);
    syncFolder(folder);
    if (made.origin === 'daily') dropOldDaily(folder);
    return { fileName, folder, bytes: statSync(path).size, sha256, at };
  } catch (error) {
    for (const end of ['', '-wal', '-shm', '-journal'])
      rmSync(`${unfinished}${end}`, { force: true });
    throw error;
  }
}

const entriesIn = (db: Database.Database): number =>
  db.prepare<[], { n: number }>('SELECT count(*) AS n FROM journal').get()?.n ?? 0;

/** A copy is one file that can be carried about: the store's way of writing is not for it. */
function leaveWal(file: string): void {
  const copy = new Database(file);
  try {
    copy.pragma('journal_mode = DELETE');
  } finally {
    copy.close();
  }
}
