import { eq } from 'drizzle-orm';
import { otherNumbersOf } from '../../../db/queries/parts/numbers.ts';
import { searchTextOf } from '../../../db/queries/search-text.ts';
import { part } from '../../../db/schema/index.ts';
import type { WriteStore } from '../../../db/store.ts';

/** Brings what a part is found by up to date, after its facts or any of its numbers changed. */
export function keepSearchText(store: WriteStore, partId: string): void {
  const row = store.select().from(part).where(eq(part.id, partId)).get();
  if (row === undefined) return;
  const numbers = otherNumbersOf(store, partId).map(({ number }) => number);
  const { number, description, barcode, bin, supplier } = row;
  store
    .update(part)
    .set({ searchText: searchTextOf(number, description, barcode, bin, supplier, ...numbers) })
    .where(eq(part.id, partId))
    .run();
}
