import { asc, eq, inArray, type SQL } from 'drizzle-orm';
import { PartId } from '../../../shared/contract/ids.ts';
import type { PartName } from '../../../shared/contract/parts/index.ts';
import { part, stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { shelfSums } from './shelf.ts';

/** A part by name with its bin. */
export type PartInBin = PartName & { bin: string };

const names = (store: ReadStore, where: SQL | undefined): PartInBin[] =>
  store
    .select({
      id: part.id,
      number: part.number,
      description: part.description,
      unit: part.unit,
      bin: part.bin,
      onHand: shelfSums.onHand,
    })
    .from(part)
    .leftJoin(stockMovement, eq(stockMovement.partId, part.id))
    .where(where)
    .groupBy(part.id)
    .orderBy(asc(part.number))
    .all()
    .map((row) => ({ ...row, id: PartId.parse(row.id) }));

/** Parts by name, in the order of the ids. */
export function partNames(store: ReadStore, ids: readonly string[]): PartInBin[] {
  if (ids.length === 0) return [];
  const found = new Map<string, PartInBin>(
    names(store, inArray(part.id, [...ids])).map((name) => [name.id, name]),
  );
  return ids.flatMap((id) => found.get(id) ?? []);
}

export const partName = (store: ReadStore, id: string): PartInBin | undefined =>
  partNames(store, [id])[0];
