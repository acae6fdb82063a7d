import { dirname, join, resolve } from 'node:path';
import Database from 'better-sqlite3';
import { type BetterSQLite3Database, drizzle } from 'drizzle-orm/better-sqlite3';
import { type BackUp, backUpTo } from './back-up.ts';
import { provideDataFolder } from './data-folder.ts';
import { APPLICATION_ID, isNewStore } from './identity.ts';
import { inspect, inspectAfterCrash } from './inspect.ts';
import { applyMigrations } from './migrate.ts';
import { knownMigrations, type Migration } from './migrations.ts';
import * as schema from './schema/index.ts';
import { keepStatements } from './statements.ts';
import { openingRefusal } from './trouble.ts';

export { StoreRefusal } from './refusal.ts';

export type WriteStore = BetterSQLite3Database<typeof schema>;

/** A handle that only reads: to write through it is a type error. */
export type ReadStore = Pick<WriteStore, 'select' | 'selectDistinct'>;

export interface Store {
  readonly folder: string;
  readonly file: string;
  /** How many migrations the store has had. */
  readonly migrations: number;
  readonly read: ReadStore;
  /** Runs `work` in one immediate transaction: all of it or nothing. It must not wait for anything. */
  write<T>(work: (store: WriteStore) => T): T;
  /** A verified copy in the folder `backups` of the data folder. */
  backUp(now: Date): BackUp;
  close(): void;
}

export interface StoreOptions {
  now?: () => Date;
  migrations?: Migration[];
  /**
   * Leaves it to the operating system when what was written reaches the disk: for invented shops, which
   * lose nothing when the power fails.
   */
  careless?: boolean;
}

/** The file of the store in a data folder. */
export const storeFile = (folder: string): string => join(resolve(folder), 'tappet.db');

/**
 * Opens the store of a data folder, makes it when there is none, and brings it up to this program's
 * version after a verified back-up. Only one program at a time has it open.
 * @throws StoreRefusal with the file untouched
 */
export function openStore(folder: string, options: StoreOptions = {}): Store {
  const now = options.now ?? (() => new Date());
  const known = options.migrations ?? knownMigrations();
  const dataFolder = resolve(folder);
  const file = storeFile(dataFolder);
  provideDataFolder(dataFolder);
  const db = open(file, known, { now, sync: options.careless ? 'OFF' : 'FULL' });
  const read = drizzle(db, { schema });
  return {
    folder: dataFolder,
    file,
    migrations: known.length,
    read,
    write: (work) => read.transaction((store) => work(store), { behavior: 'immediate' }),
    backUp: (at) => backUpTo(db, join(dataFolder, 'backups'), at),
    close: () => db.close(),
  };
}

function open(
  file: string,
  known: readonly Migration[],
  { now, sync }: { now: () => Date; sync: 'FULL' | 'OFF' },
): Database.Database {
  try {
    const isNew = isNewStore(file);
    if (!isNew) inspectAfterCrash(file, known);
    const db = connect(file, isNew);
    try {
      db.pragma(`synchronous = ${sync}`);
      const pending = inspect(db, known);
      const lacksSome = pending.length > 0 && pending.length < known.length;
      if (lacksSome) backUpTo(db, join(dirname(file), 'backups'), now());
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
