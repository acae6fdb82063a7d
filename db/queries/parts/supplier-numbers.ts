import { and, eq, inArray } from 'drizzle-orm';
import { fold, foldNumber } from '../../../shared/work/fold.ts';
import { otherNumber, part, supplierItem } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/** How a supplier knows a part, and what they ask for it. */
export interface SupplierOffer {
  supplierNumber: string;
  /** From their price list; null when it isn't in it. */
  unitCost: number | null;
}

/**
 * The part's number with a supplier: the one that was noted as theirs, else the one of the part's numbers
 * that stands in their price list, else the part's own.
 * @param supplier null for one that nobody entered: only what was noted under the name counts
 */
export function offerOf(
  store: ReadStore,
  partId: string,
  supplier: { id: string | null; name: string },
): SupplierOffer {
  const own = store.select({ number: part.number }).from(part).where(eq(part.id, partId)).get();
  const others = store
    .select({ kind: otherNumber.kind, whose: otherNumber.whose, number: otherNumber.number })
    .from(otherNumber)
    .where(eq(otherNumber.partId, partId))
    .orderBy(otherNumber.id)
    .all();
  const theirs = others
    .filter(({ kind, whose }) => kind === 'supplier' && fold(whose) === fold(supplier.name))
    .map(({ number }) => number);
  const ownNumber = own?.number ?? '';
  const numbers = [...theirs, ownNumber, ...others.map(({ number }) => number)];
  const items = supplier.id === null ? [] : itemsOf(store, supplier.id, numbers.map(foldNumber));
  const item = numbers
    .map((number) => items.find(({ numberKey }) => numberKey === foldNumber(number)))
    .find((each) => each !== undefined);
  return {
    supplierNumber: theirs[0] ?? item?.number ?? ownNumber,
    unitCost: item?.cost ?? null,
  };
}

const itemsOf = (store: ReadStore, supplierId: string, keys: readonly string[]) =>
  store
    .select({
      number: supplierItem.number,
      numberKey: supplierItem.numberKey,
      cost: supplierItem.cost,
    })
    .from(supplierItem)
    .where(and(eq(supplierItem.supplierId, supplierId), inArray(supplierItem.numberKey, [...keys])))
    .all();
