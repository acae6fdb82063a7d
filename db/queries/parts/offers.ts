import { and, asc, eq, gte, lt, or } from 'drizzle-orm';
import { SupplierId } from '../../../shared/contract/ids.ts';
import type { SupplierOffer } from '../../../shared/contract/parts/index.ts';
import { foldNumber } from '../../../shared/work/fold.ts';
import { priceFile, supplier, supplierItem } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { matches } from '../search-text.ts';

/** After every number that begins with a text. */
const PAST = '\u{10ffff}';

/** What suppliers offer whose number begins with the text, or whose description has its words. */
export function offersFor(store: ReadStore, text: string, limit: number): SupplierOffer[] {
  const key = foldNumber(text);
  const byNumber = and(
    gte(supplierItem.numberKey, key),
    lt(supplierItem.numberKey, `${key}${PAST}`),
  );
  return store
    .select({ item: supplierItem, supplier: supplier.name, asOf: priceFile.appliedAt })
    .from(supplierItem)
    .innerJoin(supplier, eq(supplier.id, supplierItem.supplierId))
    .leftJoin(priceFile, eq(priceFile.id, supplierItem.priceFileId))
    .where(key === '' ? undefined : or(byNumber, matches(supplierItem.description, text)))
    .orderBy(asc(supplierItem.numberKey), asc(supplier.nameKey))
    .limit(limit)
    .all()
    .map(({ item, supplier: name, asOf }) => ({
      supplierId: SupplierId.parse(item.supplierId),
      supplier: name,
      number: item.number,
      description: item.description,
      cost: item.cost,
      listPrice: item.listPrice,
      packSize: item.packSize,
      coreCharge: item.coreCharge,
      supersededBy: item.supersededBy,
      asOf,
    }));
}
