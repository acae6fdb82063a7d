import { existsSync, renameSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type Database from 'better-sqlite3';
import { type BetterSQLite3Database, drizzle } from 'drizzle-orm/better-sqlite3';
import type { BackUpOrigin } from '../shared/work/office/back-ups.ts';
import { type BackUp, type CopyProgress, copyStore } from './back-ups/copy.ts';
import { syncFolder } from './back-ups/files.ts';
import { backUpFolder, stageFolder } from './back-ups/folders.ts';
import { dropUnfinished } from './back-ups/list.ts';
import { provideDataFolder } from './data-folder.ts';
import { knownMigrations, type Migration } from './migrations.ts';
import { openFile } from './open-file.ts';
import { StoreHeld } from './refusal.ts';
import { forgetAnswers } from './remembered.ts';
import * as schema from './schema/index.ts';

export { StoreRefusal } from './refusal.ts';

export type WriteStore = BetterSQLite3Database<typeof schema>;

/** A handle that only reads: to write through it is a type error. */
export type ReadStore = Pick<WriteStore, 'select' | 'selectDistinct'>;

export interface Store {
  readonly folder: string;
  readonly file: string;
  /** The migrations that this program knows; the store has had them all. */
  readonly migrations: readonly Migration[];
  readonly read: ReadStore;
  /**
   * Runs `work` in one immediate transaction: all of it or nothing. It must not wait for anything.
   * @throws StoreHeld while the store is held
   */
  write<T>(work: (store: WriteStore) => T): T;
  /** A verified copy in the folder `backups` of the data folder, made while others go on. */
  copy(made: { at: Date; origin: BackUpOrigin }, progress: CopyProgress): Promise<BackUp>;
  /** Lets nobody write until what it gives back is called. */
  hold(): () => void;
  /**
   * Puts a closed store file in the place of this one, in one step of the file system, and goes on with it. A
   * program that ends in the middle leaves the one or the other, whole.
   */
  exchange(file: string): void;
  /** How often the store was exchanged since it was opened. */
  readonly exchanges: number;
  close(): void;
}

export interface StoreOptions {
  now?: () => Date;
  migrations?: readonly Migration[];
  /**
   * Leaves it to the operating system when what was written reaches the disk: for invented shops, which
   * lose nothing when the power fails.
   */
  careless?: boolean;
  /** Where a back-up before an update goes; the folder `backups` of the data folder otherwise. */
  backUps?: string;
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
  const backUps = options.backUps ?? backUpFolder(dataFolder);
  const sync = options.careless ? 'OFF' : 'FULL';
  const open = () => {
    const db = openFile(file, known, { now, sync, backUps });
    return { db, read: drizzle(db, { schema }) };
  };

  provideDataFolder(dataFolder);
  let current = open();
  let holds = 0;
  let exchanges = 0;
  // Only now is it sure that nobody else has the store open, and is at work on these.
  dropUnfinished(backUps);
  rmSync(stageFolder(dataFolder), { recursive: true, force: true });
  return {
    folder: dataFolder,
    file,
    migrations: known,
    get read() {
      return current.read;
    },
    get exchanges() {
      return exchanges;
    },
    write(work) {
      if (holds > 0) throw new StoreHeld();
      const { db, read } = current;
      // The same handle as for reading, so that what was prepared for it serves within, too.
      try {
        return db.transaction(() => work(read)).immediate();
      } catch (error) {
        forgetAnswers(read);
        throw error;
      }
    },
    copy: (made, progress) => copyStore(current.db, known, dataFolder, made, progress),
    hold() {
      let held = true;
      holds += 1;
      return () => {
        if (held) holds -= 1;
        held = false;
      };
    },
    exchange(incoming) {
      try {
        closeWhole(current.db, file);
        renameSync(incoming, file);
        syncFolder(dataFolder);
        exchanges += 1;
      } finally {
        current.db.close();
        current = open();
      }
    },
    close: () => current.db.close(),
  };
}

/** Closes a store so that its one file has everything: what is left in a log would be read into the next one. */
function closeWhole(db: Database.Database, file: string): void {
  db.pragma('wal_checkpoint(TRUNCATE)');
  db.close();
  if (existsSync(`${file}-wal`)) throw new Error('The store could not be written out to one file.');
}
