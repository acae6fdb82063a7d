import { asc, eq, sql } from 'drizzle-orm';
import type { KitPiece, PartName } from '../../../shared/contract/parts/index.ts';
import { kitPiece, part } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { partNames } from './names.ts';

/** What is in a kit, by number. */
export function piecesOf(store: ReadStore, kitId: string): KitPiece[] {
  const pieces = store
    .select({ partId: kitPiece.partId, quantity: kitPiece.quantity })
    .from(kitPiece)
    .innerJoin(part, eq(part.id, kitPiece.partId))
    .where(eq(kitPiece.kitId, kitId))
    .orderBy(asc(part.number))
    .all();
  const names = partNames(
    store,
    pieces.map(({ partId }) => partId),
  );
  return names.map((name) => ({
    ...name,
    quantity: pieces.find(({ partId }) => partId === name.id)?.quantity ?? 0,
  }));
}

/** The kits that a part is a piece of. */
export const kitsWith = (store: ReadStore, partId: string): PartName[] =>
  partNames(
    store,
    store
      .select({ id: kitPiece.kitId })
      .from(kitPiece)
      .innerJoin(part, eq(part.id, kitPiece.kitId))
      .where(eq(kitPiece.partId, partId))
      .orderBy(asc(part.number))
      .all()
      .map(({ id }) => id),
  );

/** Every kit that a part is in, directly or within another kit. */
export const kitsAround = (store: ReadStore, partId: string): string[] =>
  store
    .select({ id: sql<string>`id` })
    .from(
      sql`(
        WITH RECURSIVE around(id) AS (
          SELECT ${kitPiece.kitId} FROM ${kitPiece} WHERE ${kitPiece.partId} = ${partId}
          UNION SELECT ${kitPiece.kitId} FROM around JOIN ${kitPiece} ON ${kitPiece.partId} = around.id
        )
        SELECT id FROM around
      )`,
    )
    .all()
    .map(({ id }) => id);
