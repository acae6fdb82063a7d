import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, afterEach, beforeEach, describe, expect, test } from 'vitest';
import { APPLICATION_ID } from '../../../db/identity.ts';
import { knownMigrations, type Migration } from '../../../db/migrations.ts';
import { openStore, type StoreRefusal } from '../../../db/store.ts';

const known = knownMigrations();

/** Migrations that a test below has taken from the version before, with rows in the tables. */
const tested = new Set<string>();

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-store-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const file = () => join(folder, 'tappet.db');

/** A store with the first `count` migrations. */
const storeAt = (count: number) => openStore(folder, { migrations: known.slice(0, count) }).close();

const direct = <T>(work: (db: Database.Database) => T): T => {
  const db = new Database(file());
  try {
    return work(db);
  } finally {
    db.close();
  }
};

const refusalOf = (open: () => unknown): StoreRefusal => {
  try {
    open();
  } catch (error) {
    return error as StoreRefusal;
  }
  throw new Error('It was opened.');
};

/** The migration at `index`, from the version before it, over the rows that `fill` puts in. */
function migrate(index: number, fill: (db: Database.Database) => void) {
  const migration = known[index];
  if (migration === undefined) throw new Error(`There is no migration ${index}.`);
  tested.add(migration.tag);
  if (index > 0) {
    storeAt(index);
    direct(fill);
  }
  storeAt(index + 1);
}

const ADA = "INSERT INTO staff (id, name, role, active) VALUES ('s1', 'Ada', 'owner', 1)";
const ENTRY =
  "INSERT INTO journal (seq, at, by, what, detail, previous, hash) VALUES (1, 'now', 's1', 'office.openShop', '{}', '0', 'h')";

describe('each migration, with data', () => {
  test('the_shop makes every table STRICT', () => {
    migrate(0, () => {});
    const loose = direct((db) =>
      db.prepare("SELECT name FROM pragma_table_list WHERE schema = 'main' AND strict = 0").all(),
    );
    expect(loose).toEqual([{ name: 'sqlite_schema' }]);
  });

  test('append_only leaves the rows that were there, and lets nobody change them any more', () => {
    migrate(1, (db) => db.exec(`${ADA};${ENTRY}`));
    direct((db) => {
      expect(db.prepare('SELECT seq, what FROM journal').all()).toEqual([
        { seq: 1, what: 'office.openShop' },
      ]);
      expect(() => db.exec("UPDATE journal SET what = 'nothing'")).toThrow('append-only: journal');
      expect(() => db.exec('DELETE FROM journal')).toThrow('append-only: journal');
    });
  });

  afterAll(() => {
    expect([...tested].sort()).toEqual(known.map(({ tag }) => tag).sort());
  });
});

describe('our runner', () => {
  const extra = (statements: string[]): Migration[] => [
    ...known,
    { tag: '9999_extra', sha256: 'e', statements },
  ];
  const parentAndChild = () =>
    direct((db) =>
      db.exec(
        'CREATE TABLE parent (id TEXT PRIMARY KEY) STRICT;' +
          'CREATE TABLE child (id TEXT PRIMARY KEY, parent_id TEXT REFERENCES parent (id) ON DELETE CASCADE) STRICT;' +
          "INSERT INTO parent VALUES ('p'); INSERT INTO child VALUES ('c', 'p');",
      ),
    );

  test('rebuilds a parent without losing its children', () => {
    storeAt(known.length);
    parentAndChild();
    openStore(folder, {
      migrations: extra([
        'CREATE TABLE parent_new (id TEXT PRIMARY KEY, note TEXT) STRICT',
        'INSERT INTO parent_new (id) SELECT id FROM parent',
        'DROP TABLE parent',
        'ALTER TABLE parent_new RENAME TO parent',
      ]),
    }).close();
    expect(direct((db) => db.prepare('SELECT * FROM child').all())).toEqual([
      { id: 'c', parent_id: 'p' },
    ]);
  });

  test('backs up first, and takes everything back when a row would point nowhere', () => {
    storeAt(known.length);
    parentAndChild();
    const refusal = refusalOf(() =>
      openStore(folder, {
        migrations: extra(['DELETE FROM parent', 'CREATE TABLE more (id TEXT) STRICT']),
      }),
    );
    expect(refusal.code).toBe('MIGRATION_FAILED');
    direct((db) => {
      expect(db.prepare('SELECT count(*) AS n FROM parent').get()).toEqual({ n: 1 });
      expect(db.prepare("SELECT name FROM sqlite_schema WHERE name = 'more'").all()).toEqual([]);
      expect(db.pragma('user_version', { simple: true })).toBe(known.length);
    });
    const copies = readdirSync(join(folder, 'backups'));
    expect(copies).toHaveLength(1);
    const copy = new Database(join(folder, 'backups', copies[0] ?? ''), { readonly: true });
    expect(copy.prepare('SELECT * FROM child').all()).toEqual([{ id: 'c', parent_id: 'p' }]);
    copy.close();
  });

  test('does not back up a store that it has just made', () => {
    storeAt(known.length);
    expect(readdirSync(folder)).not.toContain('backups');
  });
});

describe('a store that isn’t opened is left as it was', () => {
  const refusedUntouched = (open = () => openStore(folder)) => {
    const before = readFileSync(file());
    const refusal = refusalOf(open);
    expect(readFileSync(file()).equals(before)).toBe(true);
    // Two sentences: what happened, and what to do next.
    expect(refusal.message).toMatch(/^[A-Z].+\. [A-Z].+/);
    return refusal.code;
  };

  test('text', () => {
    writeFileSync(file(), 'Dear diary,\n'.repeat(50));
    expect(refusedUntouched()).toBe('NOT_OURS');
  });

  test('another program’s SQLite file', () => {
    direct((db) => db.exec('CREATE TABLE album (id TEXT); PRAGMA application_id = 7'));
    expect(refusedUntouched()).toBe('NOT_OURS');
  });

  test('a file from a newer program', () => {
    openStore(folder, {
      migrations: [...known, { tag: '9999_future', sha256: 'f', statements: [] }],
    }).close();
    expect(refusedUntouched()).toBe('NEWER_PROGRAM');
  });

  test('a file whose migrations were others', () => {
    const [first, ...rest] = known;
    if (first === undefined) throw new Error('There are no migrations.');
    openStore(folder, { migrations: [{ ...first, sha256: 'edited' }, ...rest] }).close();
    expect(refusedUntouched()).toBe('MIGRATIONS_DIFFER');
  });

  test('a damaged file', () => {
    storeAt(known.length);
    const bytes = readFileSync(file());
    bytes.fill(0x5a, 4096 * 2, 4096 * 6);
    writeFileSync(file(), bytes);
    expect(refusedUntouched()).toBe('DAMAGED');
  });

  test('one that another program has open, and it is free again afterwards', () => {
    const first = openStore(folder);
    expect(refusalOf(() => openStore(folder)).code).toBe('IN_USE');
    first.close();
    openStore(folder).close();
  });

  test('the id in the header is ours', () => {
    storeAt(known.length);
    expect(readFileSync(file()).readUInt32BE(68)).toBe(APPLICATION_ID);
  });
});
