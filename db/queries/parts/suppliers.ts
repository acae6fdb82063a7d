import { asc, eq } from 'drizzle-orm';
import { SupplierId } from '../../../shared/contract/ids.ts';
import type { Supplier } from '../../../shared/contract/parts/index.ts';
import { supplier } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

function read(row: typeof supplier.$inferSelect): Supplier {
  const { nameKey: _nameKey, priceFileMapping: _priceFileMapping, ...facts } = row;
  return { ...facts, id: SupplierId.parse(row.id) };
}

export const suppliersOf = (store: ReadStore): Supplier[] =>
  store.select().from(supplier).orderBy(asc(supplier.nameKey)).all().map(read);

export function supplierById(store: ReadStore, id: string): Supplier | undefined {
  const row = store.select().from(supplier).where(eq(supplier.id, id)).get();
  return row && read(row);
}

/** @param nameKey the name, folded */
export function supplierByKey(store: ReadStore, nameKey: string): Supplier | undefined {
  const row = store.select().from(supplier).where(eq(supplier.nameKey, nameKey)).get();
  return row && read(row);
}
