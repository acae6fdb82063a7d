import { sql } from 'drizzle-orm';
import { part } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/**
 * The parts that took each other's place, this one among them: those that went out first at the head, the
 * current one at the end. UNION, and not UNION ALL, so that even a loop in the store would end.
 */
export const chainOf = (store: ReadStore, partId: string): string[] =>
  store
    .select({ id: sql<string>`id` })
    .from(
      sql`(
        WITH RECURSIVE
          up(id) AS (
            SELECT ${partId}
            UNION SELECT ${part.supersededBy} FROM up JOIN ${part} ON ${part.id} = up.id
              WHERE ${part.supersededBy} IS NOT NULL
          ),
          down(id, depth) AS (
            SELECT ${part.id}, 0 FROM up JOIN ${part} ON ${part.id} = up.id
              WHERE ${part.supersededBy} IS NULL
            UNION SELECT ${part.id}, depth + 1 FROM down JOIN ${part} ON ${part.supersededBy} = down.id
          )
        SELECT id FROM down ORDER BY depth DESC, id
      )`,
    )
    .all()
    .map(({ id }) => id);

/** The part that a chain ends in: the one that is bought today. */
export const currentOf = (store: ReadStore, partId: string): string =>
  chainOf(store, partId).at(-1) ?? partId;
