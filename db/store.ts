import { accessSync, constants, mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import Database from 'better-sqlite3';
import { type BetterSQLite3Database, drizzle } from 'drizzle-orm/better-sqlite3';
import { type BackUp, backUpTo } from './back-up.ts';
import { APPLICATION_ID, isNewStore } from './identity.ts';
import { applyMigrations, pendingMigrations } from './migrate.ts';
import { knownMigrations, type Migration } from './migrations.ts';
import { StoreRefusal } from './refusal.ts';
import * as schema from './schema/index.ts';
import { keepStatements } from './statements.ts';

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

const FILE = 'tappet.db';

const isBusy = (error: unknown): boolean =>
  error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY');

/**
 * Opens the store of a data folder, makes it when there is none, and brings it up to this program's
 * version after a verified back-up. Only one program at a time has it open.
 * @throws StoreRefusal with the file untouched
 */
export function openStore(folder: string, options: StoreOptions = {}): Store {
  const now = options.now ?? (() => new Date());
  const known = options.migrations ?? knownMigrations();
  const dataFolder = resolve(folder);
  const file = join(dataFolder, FILE);
  makeReachable(dataFolder);
  const isNew = isNewStore(file);
  const db = connect(file, isNew, options.careless ? 'OFF' : 'FULL');
  try {
    const pending = pendingMigrations(db, known);
    if (pending.length > 0 && !isNew) backUpTo(db, join(dataFolder, 'backups'), now());
    applyMigrations(db, pending, now());
    keepStatements(db);
  } catch (error) {
    db.close();
    throw error;
  }
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

function makeReachable(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true });
    accessSync(folder, constants.R_OK | constants.W_OK);
  } catch (error) {
    throw new StoreRefusal('NO_ACCESS', { cause: error, detail: folder });
  }
}

/**
 * Exclusive locking keeps a second program out from the first moment, and without a lock file that a crash
 * would leave behind: the operating system lets go of the lock with the process.
 */
function connect(file: string, isNew: boolean, sync: 'FULL' | 'OFF'): Database.Database {
  const db = new Database(file, { timeout: 250 });
  try {
    db.pragma('locking_mode = EXCLUSIVE');
    // Written before WAL begins, so that the header in the file itself says whose it is.
    if (isNew) db.pragma(`application_id = ${APPLICATION_ID}`);
    db.exec('BEGIN IMMEDIATE; COMMIT');
    const sound = db.pragma('quick_check', { simple: true });
    if (sound !== 'ok') throw new StoreRefusal('DAMAGED', { detail: String(sound) });
    db.pragma('journal_mode = WAL');
    db.pragma(`synchronous = ${sync}`);
    db.pragma('foreign_keys = ON');
    return db;
  } catch (error) {
    db.close();
    if (error instanceof StoreRefusal) throw error;
    if (isBusy(error)) throw new StoreRefusal('IN_USE', { cause: error });
    if (error instanceof Database.SqliteError)
      throw new StoreRefusal('DAMAGED', { cause: error, detail: error.message });
    throw error;
  }
}
