import { and, like, or, type SQL, sql } from 'drizzle-orm';
import type { SQLiteColumn } from 'drizzle-orm/sqlite-core';
import { fold } from '../../shared/work/fold.ts';

/** A number as one word: `TL 4412-A`, `tl-44 12a` and `(TL) 4412.A` are the same. */
const tighten = (text: string): string => fold(text).replace(/[\s\-._/()+]/g, '');

/** What a row is found by: its facts folded, with numbers also written without spaces and dashes. */
export const searchTextOf = (...facts: string[]): string =>
  facts
    .flatMap((fact) => [...new Set([fold(fact), tighten(fact)])])
    .filter(Boolean)
    .join(' ');

// In LIKE, % and _ are wildcards: what people type is taken as it stands.
const contains = (column: SQLiteColumn, word: string): SQL =>
  sql`${like(column, `%${word.replace(/[\\%_]/g, (sign) => `\\${sign}`)}%`)} ESCAPE '\\'`;

/**
 * Every word typed must be found somewhere in the row, or all of it as one number, however that is spaced;
 * no words match everything.
 */
export function matches(column: SQLiteColumn, text: string): SQL | undefined {
  const words = fold(text).split(' ').filter(Boolean);
  const everyWord = and(...words.map((word) => contains(column, word)));
  const asNumber = tighten(text);
  return words.length === 0 || asNumber === ''
    ? everyWord
    : or(everyWord, contains(column, asNumber));
}
