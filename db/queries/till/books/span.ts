import { and, gte, lt, type SQL } from 'drizzle-orm';
import type { SQLiteColumn } from 'drizzle-orm/sqlite-core';

/** A stretch of instants: from the first, up to and without the second; null is without an end. */
export interface Span {
  readonly from: string | null;
  readonly until: string | null;
}

export const ALWAYS: Span = { from: null, until: null };

export const within = (at: SQLiteColumn, { from, until }: Span): SQL | undefined =>
  and(from === null ? undefined : gte(at, from), until === null ? undefined : lt(at, until));
