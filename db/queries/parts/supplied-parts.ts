import { eq, inArray } from 'drizzle-orm';
import { fold } from '../../../shared/work/fold.ts';
import { otherNumber, part, supplier } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/** A part that is bought from a supplier, and the folded numbers by which they may know it, the surest first. */
export interface SuppliedPart {
  partId: string;
  keys: string[];
}

/**
 * The parts that follow a supplier's prices: those that name it as their supplier, and those that name none
 * and have a number of its. A part that names another supplier keeps that one's prices. The supplier's own
 * number for a part goes before the part's number, and that before its maker's.
 */
export function suppliedParts(store: ReadStore, supplierId: string): SuppliedPart[] {
  const nameKey = store
    .select({ nameKey: supplier.nameKey })
    .from(supplier)
    .where(eq(supplier.id, supplierId))
    .get()?.nameKey;
  const others = new Map<string, { theirs: string[]; makers: string[] }>();
  const numbers = store
    .select()
    .from(otherNumber)
    .where(inArray(otherNumber.kind, ['supplier', 'maker']))
    .orderBy(otherNumber.id)
    .all();
  for (const { partId, kind, whose, numberKey } of numbers) {
    const of = others.get(partId) ?? { theirs: [], makers: [] };
    others.set(partId, of);
    if (kind === 'maker') of.makers.push(numberKey);
    else if (fold(whose) === nameKey) of.theirs.push(numberKey);
  }
  return store
    .select({ partId: part.id, numberKey: part.numberKey, supplier: part.supplier })
    .from(part)
    .all()
    .flatMap(({ partId, numberKey, supplier: named }) => {
      const { theirs, makers } = others.get(partId) ?? { theirs: [], makers: [] };
      if (fold(named) === nameKey) return [{ partId, keys: [...theirs, numberKey, ...makers] }];
      return named.trim() === '' && theirs.length > 0 ? [{ partId, keys: theirs }] : [];
    });
}

/** The part that each number means, as parts are known to a supplier; the surest number of a part counts. */
export function partsByKey<Item>(
  parts: readonly SuppliedPart[],
  items: ReadonlyMap<string, Item>,
): { partId: string; item: Item }[] {
  return parts.flatMap(({ partId, keys }) => {
    const key = keys.find((each) => items.has(each));
    const item = key === undefined ? undefined : items.get(key);
    return item === undefined ? [] : [{ partId, item }];
  });
}
