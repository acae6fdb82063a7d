import { createHash } from 'node:crypto';
import {
  copyFileSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { APPLICATION_ID } from '../../../db/identity.ts';
import { knownMigrations, type Migration } from '../../../db/migrations.ts';
import { openStore, StoreRefusal } from '../../../db/store.ts';
import { openingRefusal, troubleOf } from '../../../db/trouble.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-untouched-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const file = () => join(folder, 'tappet.db');
const future: Migration = { tag: '9999_future', sha256: 'f', statements: [] };
const FROM_THE_FUTURE = `INSERT INTO migration (tag, sha256, applied_at) VALUES ('9999_future', 'f', 'x')`;

function direct(work: (db: Database.Database) => void): void {
  const db = new Database(file());
  work(db);
  db.close();
}

const sha256 = (bytes: Buffer) => createHash('sha256').update(bytes).digest('hex');
const isFile = (name: string) => statSync(join(folder, name)).isFile();

/** Every file of the folder, with a hash of its bytes. */
const contents = () =>
  readdirSync(folder)
    .filter(isFile)
    .sort()
    .map((name) => `${name} ${sha256(readFileSync(join(folder, name)))}`);

/** The files as a crash in the middle of `work` leaves them. */
function crashDuring(work: (db: Database.Database) => void, sidecar: '-wal' | '-journal'): void {
  const kept = [file(), `${file()}${sidecar}`];
  direct((db) => {
    work(db);
    for (const path of kept) copyFileSync(path, `${path}.kept`);
  });
  for (const path of kept) {
    copyFileSync(`${path}.kept`, path);
    rmSync(`${path}.kept`);
  }
}

function refusedUntouched(migrations?: Migration[]): string {
  const before = contents();
  try {
    openStore(folder, migrations && { migrations }).close();
  } catch (error) {
    expect(contents()).toEqual(before);
    if (error instanceof StoreRefusal) return error.code;
    throw error;
  }
  throw new Error('It was opened.');
}

describe('not a byte of a store is changed that', () => {
  beforeEach(() => openStore(folder).close());

  test('a newer program wrote last, which crashed', () => {
    crashDuring((db) => db.exec(FROM_THE_FUTURE), '-wal');
    expect(refusedUntouched()).toBe('NEWER_PROGRAM');
  });

  test('comes from a newer program’s back-up', () => {
    direct((db) => {
      db.exec(FROM_THE_FUTURE);
      db.pragma('journal_mode = DELETE');
    });
    expect(refusedUntouched()).toBe('NEWER_PROGRAM');
  });

  test('a newer program left half written', () => {
    direct((db) => db.exec(FROM_THE_FUTURE));
    crashDuring((db) => {
      db.pragma('journal_mode = DELETE');
      // So small a cache is written to the file before the transaction ends.
      db.pragma('cache_size = 1');
      db.exec('BEGIN; CREATE TABLE half (text TEXT)');
      const add = db.prepare('INSERT INTO half VALUES (?)');
      for (let row = 0; row < 200; row += 1) add.run('half a line '.repeat(200));
    }, '-journal');
    expect(refusedUntouched()).toBe('NEWER_PROGRAM');
  });

  test('is damaged, with a log beside it', () => {
    crashDuring((db) => db.exec('CREATE TABLE last (id TEXT)'), '-wal');
    const bytes = readFileSync(file());
    bytes.fill(0x5a, 4096 * 5, 4096 * 9);
    writeFileSync(file(), bytes);
    expect(refusedUntouched()).toBe('DAMAGED');
  });

  test('has lost its file and kept its log', () => {
    crashDuring((db) => db.exec('CREATE TABLE last (id TEXT)'), '-wal');
    rmSync(file());
    expect(refusedUntouched()).toBe('DAMAGED');
    writeFileSync(file(), '');
    expect(refusedUntouched()).toBe('DAMAGED');
  });

  test('can’t be brought up to this version', () => {
    direct((db) => db.pragma('journal_mode = DELETE'));
    const broken = { ...future, statements: ['CREATE TABLE more (id TEXT)', 'no SQL'] };
    expect(refusedUntouched([...knownMigrations(), broken])).toBe('MIGRATION_FAILED');
  });

  test('but what a crash left of our own is taken in', () => {
    crashDuring((db) => db.exec('CREATE TABLE last (id TEXT)'), '-wal');
    openStore(folder).close();
    expect(readdirSync(folder)).toEqual(['tappet.db']);
    direct((db) => expect(db.prepare('SELECT * FROM last').all()).toEqual([]));
  });
});

describe('nothing is made', () => {
  test('where a link leads to a disk that isn’t there', () => {
    symlinkSync(join(tmpdir(), 'tappet-no-such-disk', 'tappet.db'), file());
    expect(() => openStore(folder)).toThrow(StoreRefusal);
    rmSync(file());
    symlinkSync(join(folder, 'elsewhere.db'), file());
    expect(() => openStore(folder)).toThrow('leads to nothing');
    expect(readdirSync(folder)).toEqual(['tappet.db']);
  });

  test('among somebody else’s tables, whatever their file calls itself', () => {
    direct((db) =>
      db.exec(`CREATE TABLE album (id TEXT); PRAGMA application_id=${APPLICATION_ID}`),
    );
    expect(refusedUntouched()).toBe('NOT_OURS');
  });

  test('where the system lets nobody make a folder', () => {
    expect(() => openStore('/proc/tappet')).toThrow('can’t be read and written');
  });

  test('for other people’s eyes', () => {
    const inside = join(folder, 'shops', 'ours');
    openStore(inside).close();
    expect(statSync(inside).mode & 0o777).toBe(0o700);
  });
});

describe('trouble with the disk has a sentence', () => {
  const sqlite = (code: string) => new Database.SqliteError('as SQLite says', code);
  const system = (code: string) => Object.assign(new Error('as the system says'), { code });

  test.each([
    [sqlite('SQLITE_FULL'), 'DISK_FULL'],
    [system('ENOSPC'), 'DISK_FULL'],
    [sqlite('SQLITE_IOERR_WRITE'), 'DISK_FAILING'],
    [sqlite('SQLITE_CANTOPEN_ISDIR'), 'NO_ACCESS'],
    [sqlite('SQLITE_READONLY'), 'NO_ACCESS'],
    [system('EACCES'), 'NO_ACCESS'],
    [sqlite('SQLITE_BUSY_SNAPSHOT'), 'IN_USE'],
    [sqlite('SQLITE_NOTADB'), 'DAMAGED'],
  ])('%o while opening: %s', (error, code) => {
    expect(openingRefusal(error, '/shop/tappet.db')).toMatchObject({ code, cause: error });
  });

  test('and a mistake of ours stays one', () => {
    const mistake = new TypeError('undefined is not a function');
    expect(openingRefusal(mistake, '/shop/tappet.db')).toBe(mistake);
    expect(troubleOf(mistake)).toBeUndefined();
  });

  test('however deep a library has wrapped it', () => {
    const wrapped = new Error('Failed query', { cause: sqlite('SQLITE_FULL') });
    expect(troubleOf(new Error('more', { cause: wrapped }))).toBe('DISK_FULL');
    expect(troubleOf(sqlite('SQLITE_IOERR_FSYNC'))).toBe('STORE_FAILING');
  });
});
