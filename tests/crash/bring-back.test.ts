import { createHash } from 'node:crypto';
import {
  copyFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createRouterClient } from '@orpc/server';
import type SQLite from 'better-sqlite3';
import { sql } from 'drizzle-orm';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { verifyJournal } from '../../db/journal.ts';
import { openStore, type Store } from '../../db/store.ts';
import { desk, deskInterceptors, undisturbed } from '../../electron/desk/index.ts';
import { openTestShop, plainIntake, type TestShop } from '../desk/shop.ts';

/**
 * A back-up is brought back by a program that dies at the first step that it takes on the disk or in a database,
 * at the second, and so on until it comes through. A dead program takes no step any more, so nothing is tidied
 * up; what it leaves in the folder is then opened as the next start would open it.
 */
const { step, arm } = vi.hoisted(() => {
  /** Steps that are left until the crash; infinite for none. */
  let left = Number.POSITIVE_INFINITY;
  return {
    arm: (steps: number) => {
      left = steps;
    },
    step: () => {
      left -= 1;
      if (left <= 0) throw new Error('crash');
    },
  };
});

const stepped = vi.hoisted(
  () =>
    <Module extends object>(module: Module, names: readonly string[]): Module =>
      Object.fromEntries(
        Object.entries(module).map(([name, value]) => [
          name,
          names.includes(name)
            ? (...given: never[]) => {
                step();
                return (value as (...given: never[]) => unknown)(...given);
              }
            : value,
        ]),
      ) as Module,
);

vi.mock('node:fs', async (original) =>
  stepped(await original<typeof import('node:fs')>(), [
    'appendFileSync',
    'fsyncSync',
    'mkdirSync',
    'mkdtempSync',
    'openSync',
    'renameSync',
    'rmSync',
  ]),
);
vi.mock('node:fs/promises', async (original) =>
  stepped(await original<typeof import('node:fs/promises')>(), ['open']),
);
vi.mock('better-sqlite3', async (original) => {
  const { default: Database } = await original<{ default: typeof SQLite }>();
  class FrailDatabase extends Database {
    private step(): void {
      if (!this.memory) step();
    }
    override exec(source: string): this {
      this.step();
      return super.exec(source);
    }
    override pragma(source: string, options?: { simple?: boolean }): unknown {
      this.step();
      return super.pragma(source, options);
    }
    override close(): this {
      this.step();
      return super.close();
    }
    override backup(file: string, options?: SQLite.BackupOptions): Promise<SQLite.BackupMetadata> {
      this.step();
      return super.backup(file, options);
    }
  }
  return { default: FrailDatabase };
});
// In this thread: to start one takes longer than all the rest, a hundred times over.
vi.mock('../../db/back-ups/file-thread.ts', async () => {
  const { default: Database } = await vi.importActual<{ default: typeof SQLite }>('better-sqlite3');
  return {
    openInThread(file: string) {
      const db = new Database(file);
      return {
        ask: async (question: string) => db.prepare(question).all(),
        close: async () => void db.close(),
      };
    },
  };
});

let shop: TestShop;
let backedUp: string;
let order: Parameters<TestShop['desk']['office']['bringBack']>[0];
const places: string[] = [];
const place = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'tappet-bring-back-'));
  places.push(folder);
  return folder;
};

beforeAll(async () => {
  vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  shop = await openTestShop();
  const { desk: client, by } = shop;
  await client.counter.takeIn(plainIntake(by));
  const { backUp } = await client.office.backUp({ by });
  await client.counter.addCustomer({ by, name: 'Ida Brandt' });
  const from = { fileName: backUp?.fileName ?? '' };
  backedUp = join(shop.folder, 'backups', from.fileName);
  const { found } = await client.office.checkBackUp({ from });
  if (found === null) throw new Error('Nothing was found.');
  const { sha256, lost } = found;
  order = { by, from, sha256, storeEntries: lost.storeEntries, reason: 'A try' };
  shop.context.store.close();
});
afterAll(() => {
  vi.restoreAllMocks();
  shop.close();
  for (const folder of places) rmSync(folder, { recursive: true, force: true });
});

const clientOf = (store: Store) =>
  createRouterClient(desk, {
    context: { ...shop.context, store, alone: undisturbed },
    interceptors: deskInterceptors,
  });

/** A hash over every row of every table but the journal. */
function contentsOf(store: Store): string {
  const hash = createHash('sha256');
  store.write((inside) => {
    const tables = inside.all<{ name: string }>(
      sql`SELECT name FROM sqlite_schema WHERE type = 'table' AND name <> 'journal' ORDER BY name`,
    );
    for (const { name } of tables)
      hash.update(JSON.stringify([name, inside.all(sql`SELECT * FROM ${sql.identifier(name)}`)]));
  });
  return hash.digest('hex');
}

interface Left {
  contents: string;
  lastEntry: string | undefined;
}

/** What the next start finds in the folder that a dead program left. */
async function leftIn(folder: string): Promise<Left> {
  const after = place();
  cpSync(folder, after, { recursive: true });
  const store = openStore(after, { careless: true });
  try {
    expect(verifyJournal(store.read)).toMatchObject({ intact: true });
    expect(existsSync(join(after, 'bringing-back'))).toBe(false);
    expect(readdirSync(join(after, 'backups')).filter((name) => !name.endsWith('.db'))).toEqual([]);
    const [last] = await clientOf(store).office.journal({ limit: 1 });
    return { contents: contentsOf(store), lastEntry: last?.what };
  } finally {
    store.close();
    rmSync(after, { recursive: true, force: true });
  }
}

/** A folder whose store is a copy of that file. */
function asStore(file: string): string {
  const folder = place();
  mkdirSync(join(folder, 'backups'));
  copyFileSync(file, join(folder, 'tappet.db'));
  return folder;
}

test('a crash at any step leaves the old shop or the one brought back, whole', async () => {
  const before = await leftIn(shop.folder);
  const after = await leftIn(asStore(backedUp));
  const outcomes: ('old' | 'new')[] = [];
  let isThrough = false;
  for (let steps = 1; !isThrough; steps += 1) {
    const folder = place();
    cpSync(shop.folder, folder, { recursive: true });
    const store = openStore(folder, { careless: true });
    const { office } = clientOf(store);
    arm(steps);
    const came = await office.bringBack(order).then(
      () => true,
      () => false,
    );
    arm(Number.POSITIVE_INFINITY);
    const left = await leftIn(folder);
    const outcome = left.lastEntry === 'office.bringBack' ? 'new' : 'old';
    outcomes.push(outcome);
    expect(left.contents).toBe({ old: before, new: after }[outcome].contents);
    if (outcome === 'old')
      expect(['office.bringBack.asked', before.lastEntry]).toContain(left.lastEntry);
    isThrough = came;
    store.close();
    rmSync(folder, { recursive: true, force: true });
  }
  // First the old one, from one step on the new one, and never anything between.
  const turn = outcomes.indexOf('new');
  expect(turn).toBeGreaterThan(20);
  expect(outcomes.length - turn).toBeGreaterThan(3);
  expect(outcomes.slice(turn).every((each) => each === 'new')).toBe(true);
  expect(after.contents).not.toBe(before.contents);
}, 120_000);
