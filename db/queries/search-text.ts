import { and, like, type SQL, sql } from 'drizzle-orm';
import type { SQLiteColumn } from 'drizzle-orm/sqlite-core';
import { fold } from '../../shared/work/fold.ts';

/** What a row is found by: its facts folded, with numbers also written without spaces and dashes. */
export const searchTextOf = (...facts: string[]): string =>
  facts
    .flatMap((fact) => {
      const folded = fold(fact);
      const tight = folded.replace(/[\s\-._/()+]/g, '');
      return tight === folded ? [folded] : [folded, tight];
    })
    .filter(Boolean)
    .join(' ');

/** Every word typed must be found somewhere in the row; no words match everything. */
export function matches(column: SQLiteColumn, text: string): SQL | undefined {
  const words = fold(text).split(' ').filter(Boolean);
  return and(
    ...words.map(
      (word) =>
        // In LIKE, % and _ are wildcards: what people type is taken as it stands.
        sql`${like(column, `%${word.replace(/[\\%_]/g, (sign) => `\\${sign}`)}%`)} ESCAPE '\\'`,
    ),
  );
}
