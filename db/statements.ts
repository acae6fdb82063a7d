import type Database from 'better-sqlite3';

/** More than the program has: lists of ids of many lengths make the difference. */
const MOST_KEPT = 1000;

/**
 * Lets a connection compile each statement once. The same few hundred are asked for all day, and to compile
 * one costs about as much as to run it. Call it after migrations: what they run is run once.
 */
export function keepStatements(db: Database.Database): void {
  const compile = db.prepare.bind(db);
  const kept = new Map<string, Database.Statement>();
  const prepare = (sql: string): Database.Statement => {
    const known = kept.get(sql);
    // Whoever had it last may have asked for rows as arrays; that stays with the statement.
    if (known !== undefined) return known.reader ? known.raw(false) : known;
    const fresh = compile(sql);
    const [oldest] = kept.size < MOST_KEPT ? [] : kept.keys();
    if (oldest !== undefined) kept.delete(oldest);
    kept.set(sql, fresh);
    return fresh;
  };
  Object.assign(db, { prepare });
}
