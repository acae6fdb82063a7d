import { sql } from 'drizzle-orm';
import { part } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/**
 * Parts that took each other's place. UNION, and not UNION ALL, in these: even a loop in the store would
 * come to an end.
 */

const idsFrom = (store: ReadStore, query: ReturnType<typeof sql>): string[] =>
  store
    .select({ id: sql<string>`id` })
    .from(sql`(${query})`)
    .all()
    .map(({ id }) => id);

/** The part and those that took its place, each after the one that it replaced. */
export const laterOf = (store: ReadStore, partId: string): string[] =>
  idsFrom(
    store,
    sql`WITH RECURSIVE up(id, depth) AS (
      SELECT ${partId}, 0
      UNION SELECT ${part.supersededBy}, depth + 1 FROM up JOIN ${part} ON ${part.id} = up.id
        WHERE ${part.supersededBy} IS NOT NULL AND depth < 1000
    ) SELECT id FROM up ORDER BY depth`,
  );

/** The parts whose place a part took, directly or by others; those that went out last at the head. */
export const formerOf = (store: ReadStore, partId: string): string[] =>
  idsFrom(
    store,
    sql`WITH RECURSIVE down(id, depth) AS (
      SELECT ${partId}, 0
      UNION SELECT ${part.id}, depth + 1 FROM down JOIN ${part} ON ${part.supersededBy} = down.id
        WHERE depth < 1000
    ) SELECT id FROM down WHERE depth > 0 ORDER BY depth, id`,
  );

/** The part that is bought today in a part's place; itself while it is current. */
export const currentOf = (store: ReadStore, partId: string): string =>
  laterOf(store, partId).at(-1) ?? partId;

/** All that took each other's place, a part among them: those that went out first at the head, the current one last. */
export const chainOf = (store: ReadStore, partId: string): string[] =>
  idsFrom(
    store,
    sql`WITH RECURSIVE
      up(id, depth) AS (
        SELECT ${partId}, 0
        UNION SELECT ${part.supersededBy}, depth + 1 FROM up JOIN ${part} ON ${part.id} = up.id
          WHERE ${part.supersededBy} IS NOT NULL AND depth < 1000
      ),
      down(id, depth) AS (
        SELECT * FROM (SELECT id, 0 FROM up ORDER BY depth DESC LIMIT 1)
        UNION SELECT ${part.id}, depth + 1 FROM down JOIN ${part} ON ${part.supersededBy} = down.id
          WHERE depth < 1000
      )
    SELECT id FROM down ORDER BY depth DESC, id`,
  );
