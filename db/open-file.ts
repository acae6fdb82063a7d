import Database from 'better-sqlite3';
import { backUpBeforeUpdate } from './back-ups/before-update.ts';
import { APPLICATION_ID, isNewStore } from './identity.ts';
import { inspect, inspectAfterCrash } from './inspect.ts';
import { applyMigrations } from './migrate.ts';
import type { Migration } from './migrations.ts';
import { keepStatements } from './statements.ts';
import { openingRefusal } from './trouble.ts';

/**
 * Opens the file of a store, makes it when there is none, and brings it up to this program's version after a
 * verified back-up into the folder `backUps`.
 * @throws StoreRefusal with the file untouched
 */
export function openFile(
  file: string,
  known: readonly Migration[],
  { now, sync, backUps }: { now: () => Date; sync: 'FULL' | 'OFF'; backUps: string },
): Database.Database {
  try {
    const isNew = isNewStore(file);
    if (!isNew) inspectAfterCrash(file, known);
    const db = connect(file, isNew);
    try {
      db.pragma(`synchronous = ${sync}`);
      const pending = inspect(db, known);
      const lacksSome = pending.length > 0 && pending.length < known.length;
      if (lacksSome) backUpBeforeUpdate(db, backUps, now());
      applyMigrations(db, pending, now());
      // Last of all, as it changes the file: until here, the store may yet be refused.
      db.pragma('journal_mode = WAL');
      db.pragma('foreign_keys = ON');
      keepStatements(db);
      return db;
    } catch (error) {
      db.close();
      throw error;
    }
  } catch (error) {
    throw openingRefusal(error, file);
  }
}

/**
 * Exclusive locking keeps a second program out from the first moment, and without a lock file that a crash
 * would leave behind: the operating system lets go of the lock with the process.
 */
function connect(file: string, isNew: boolean): Database.Database {
  const db = new Database(file, { timeout: 250 });
  try {
    db.pragma('locking_mode = EXCLUSIVE');
    // Written before WAL begins, so that the header in the file itself says whose it is.
    if (isNew) db.pragma(`application_id = ${APPLICATION_ID}`);
    db.exec('BEGIN IMMEDIATE; COMMIT');
    return db;
  } catch (error) {
    db.close();
    throw error;
  }
}
