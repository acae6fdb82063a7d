import { createHash } from 'node:crypto';
import { asc, desc } from 'drizzle-orm';
import * as schema from './schema/index.ts';
import type { ReadStore, WriteStore } from './store.ts';

/** The journal: append-only, each entry chained to the one before by SHA-256. */

/** What stands before the first entry. */
const BEGINNING = '0'.repeat(64);

export interface JournalFacts {
  at: string;
  by: string;
  what: string;
  detail: Record<string, string | number | boolean | null>;
}

const sorted = (detail: JournalFacts['detail']): string =>
  JSON.stringify(Object.fromEntries(Object.entries(detail).sort(([a], [b]) => (a < b ? -1 : 1))));

interface ChainedEntry {
  seq: number;
  at: string;
  by: string;
  what: string;
  detail: string;
  previous: string;
}

// JSON of a list keeps the fields apart: no two entries can run together into the same text.
const hashOf = (entry: ChainedEntry): string =>
  createHash('sha256')
    .update(
      JSON.stringify([entry.seq, entry.at, entry.by, entry.what, entry.detail, entry.previous]),
    )
    .digest('hex');

/** Adds an entry inside the transaction that it tells of. */
export function enterInJournal(store: WriteStore, facts: JournalFacts): void {
  const last = store
    .select({ seq: schema.journal.seq, hash: schema.journal.hash })
    .from(schema.journal)
    .orderBy(desc(schema.journal.seq))
    .limit(1)
    .get();
  const entry = {
    seq: (last?.seq ?? 0) + 1,
    at: facts.at,
    by: facts.by,
    what: facts.what,
    detail: sorted(facts.detail),
    previous: last?.hash ?? BEGINNING,
  };
  store
    .insert(schema.journal)
    .values({ ...entry, hash: hashOf(entry) })
    .run();
}

/**
 * Whether an entry is as it was written and stands where it did.
 * @param before the entry before it; null for the first
 */
export const followsOn = (
  entry: ChainedEntry & { hash: string },
  before: { seq: number; hash: string } | null,
): boolean =>
  entry.seq === (before?.seq ?? 0) + 1 &&
  entry.previous === (before?.hash ?? BEGINNING) &&
  entry.hash === hashOf(entry);

/** Walks the chain from the first entry; `firstBroken` is the first that doesn't follow from the one before. */
export function verifyJournal(store: ReadStore): {
  entries: number;
  intact: boolean;
  firstBroken: number | null;
} {
  const entries = store.select().from(schema.journal).orderBy(asc(schema.journal.seq)).all();
  let before: { seq: number; hash: string } | null = null;
  for (const entry of entries) {
    if (!followsOn(entry, before))
      return { entries: entries.length, intact: false, firstBroken: entry.seq };
    before = entry;
  }
  return { entries: entries.length, intact: true, firstBroken: null };
}
