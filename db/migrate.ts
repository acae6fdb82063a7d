import Database from 'better-sqlite3';
import type { Migration } from './migrations.ts';
import { StoreRefusal } from './refusal.ts';
import { troubleOf } from './trouble.ts';

/**
 * Our own runner over drizzle-kit's files. drizzle's migrator begins its transaction before a rebuild can
 * switch foreign keys off (children of a rebuilt parent would be deleted), skips out-of-order files in
 * silence and never compares hashes; so this one does those things itself.
 */

export interface Applied {
  tag: string;
  sha256: string;
}

export const HAS_MIGRATIONS =
  "SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'migration'";
export const APPLIED = 'SELECT tag, sha256 FROM migration ORDER BY seq';

const appliedTo = (db: Database.Database): Applied[] => {
  const tables = db
    .prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table'")
    .pluck()
    .all();
  if (tables.length === 0) return [];
  if (!tables.includes('migration')) throw new StoreRefusal('NOT_OURS');
  return db.prepare<[], Applied>(APPLIED).all();
};

/**
 * The migrations still to be applied: what was applied must be an exact prefix of what is known.
 * @throws StoreRefusal NOT_OURS, NEWER_PROGRAM, MIGRATIONS_DIFFER
 */
export function pendingAfter(
  applied: readonly Applied[],
  known: readonly Migration[],
): Migration[] {
  applied.slice(0, known.length).forEach((done, index) => {
    const same = done.tag === known[index]?.tag && done.sha256 === known[index]?.sha256;
    if (!same) throw new StoreRefusal('MIGRATIONS_DIFFER', { detail: done.tag });
  });
  if (applied.length > known.length) throw new StoreRefusal('NEWER_PROGRAM');
  return known.slice(applied.length);
}

/** @throws StoreRefusal NEWER_PROGRAM, MIGRATIONS_DIFFER */
export const pendingMigrations = (db: Database.Database, known: readonly Migration[]) =>
  pendingAfter(appliedTo(db), known);

/**
 * Applies the migrations in one transaction: all or none.
 * @throws StoreRefusal MIGRATION_FAILED with the store as it was
 */
export function applyMigrations(
  db: Database.Database,
  pending: readonly Migration[],
  now: Date,
): void {
  if (pending.length === 0) return;
  db.pragma('foreign_keys = OFF');
  try {
    db.transaction(() => {
      db.exec(
        'CREATE TABLE IF NOT EXISTS migration (seq INTEGER PRIMARY KEY, tag TEXT NOT NULL, sha256 TEXT NOT NULL, applied_at TEXT NOT NULL) STRICT',
      );
      const insert = db.prepare('INSERT INTO migration (tag, sha256, applied_at) VALUES (?, ?, ?)');
      for (const { tag, sha256, statements } of pending) {
        for (const statement of statements) db.exec(statement);
        insert.run(tag, sha256, now.toISOString());
      }
      const orphans = db.pragma('foreign_key_check');
      if (Array.isArray(orphans) && orphans.length > 0)
        throw new Error(`${orphans.length} rows would point nowhere.`);
      const { count } = db
        .prepare<[], { count: number }>('SELECT count(*) AS count FROM migration')
        .get() ?? { count: 0 };
      db.pragma(`user_version = ${count}`);
    }).immediate();
  } catch (error) {
    if (troubleOf(error) !== undefined) throw error;
    throw new StoreRefusal('MIGRATION_FAILED', {
      cause: error,
      detail: error instanceof Error ? error.message : String(error),
    });
  } finally {
    db.pragma('foreign_keys = ON');
  }
}

/** What a store is made of, one name a table, index, trigger and view; SQLite's own left out. */
export const PIECES = `SELECT type || ' ' || name AS piece FROM sqlite_schema
  WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY piece`;

/** The pieces that a store has after these migrations. */
export function piecesAfter(migrations: readonly Migration[]): string[] {
  const db = new Database(':memory:');
  try {
    applyMigrations(db, migrations, new Date(0));
    return db
      .prepare<[], { piece: string }>(PIECES)
      .all()
      .map(({ piece }) => piece);
  } finally {
    db.close();
  }
}
