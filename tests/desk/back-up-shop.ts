import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createRouterClient } from '@orpc/server';
import Database from 'better-sqlite3';
import { knownMigrations, type Migration } from '../../db/migrations.ts';
import { openStore, type Store } from '../../db/store.ts';
import { desk, deskInterceptors, undisturbed } from '../../electron/desk/index.ts';
import { drawPaper } from '../../electron/paper/index.ts';
import type { UploadId } from '../../shared/contract/ids.ts';
import type { TestShop } from './shop.ts';

/** A store in which no shop was set up yet, as on a new machine. */
export interface UnsetShop {
  desk: TestShop['desk'];
  store: Store;
  folder: string;
  /** Closes the store, and works on its file. */
  direct: (work: (db: Database.Database) => void) => void;
  /** Closes the store, and gives its file. */
  bytes: () => Buffer;
  close: () => void;
}

export async function openUnsetShop(
  migrations: readonly Migration[] = knownMigrations(),
): Promise<UnsetShop> {
  const folder = mkdtempSync(join(tmpdir(), 'tappet-unset-'));
  const store = openStore(folder, { careless: true, migrations });
  const context = {
    store,
    now: () => new Date('2026-03-02T15:00:00.000Z'),
    drawPaper,
    program: { version: '0' },
    alone: undisturbed,
  };
  return {
    desk: createRouterClient(desk, { context, interceptors: deskInterceptors }),
    store,
    folder,
    direct(work) {
      store.close();
      const db = new Database(store.file);
      work(db);
      db.close();
    },
    bytes() {
      store.close();
      return readFileSync(store.file);
    },
    close() {
      store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Sends a file as the screens do. */
export async function sendFile(
  { office }: TestShop['desk'],
  bytes: Buffer,
  size: number,
): Promise<UploadId> {
  let upload: UploadId | null = null;
  for (let at = 0; at < bytes.length; at += size) {
    const piece = bytes.subarray(at, at + size).toString('base64');
    ({ upload } = await office.sendBackUpPiece({ upload, at, bytes: piece }));
  }
  if (upload === null) throw new Error('The file is empty.');
  return upload;
}

export const filesIn = (folder: string): string[] =>
  existsSync(folder) ? readdirSync(folder) : [];
