import { eq, sql } from 'drizzle-orm';
import { partRows, partsBefore } from '../../../../db/queries/parts/repriced-parts.ts';
import { part, priceChange } from '../../../../db/schema/index.ts';
import type { WriteStore } from '../../../../db/store.ts';
import type { Writing } from '../../writing.ts';
import { settlePromises } from '../promises.ts';

/**
 * Brings a supplier's price list back to what it was before a file: what was new goes, the rest gets back
 * what it had, unless somebody has typed another price in since.
 */
export function undoInPriceList(store: WriteStore, fileId: string): void {
  store.run(sql`
    DELETE FROM supplier_item WHERE price_file_id = ${fileId} AND id IN
      (SELECT item_id FROM price_change WHERE file_id = ${fileId} AND before = '')`);
  store.run(sql`
    UPDATE supplier_item SET
      number = change.before ->> 'number',
      description = change.before ->> 'description',
      cost = change.before ->> 'cost',
      list_price = change.before ->> 'listPrice',
      pack_size = change.before ->> 'packSize',
      core_charge = change.before ->> 'coreCharge',
      superseded_by = change.before ->> 'supersededBy',
      price_file_id = change.before ->> 'priceFileId'
    FROM price_change AS change
    WHERE change.file_id = ${fileId} AND change.before <> '' AND change.item_id = supplier_item.id
      AND supplier_item.price_file_id = ${fileId}`);
}

/**
 * Gives parts back what a file took from them. What somebody has changed since stays as they left it.
 * @returns how many parts got something back
 */
export function undoOnParts(writing: Writing, fileId: string): number {
  const { store } = writing;
  const changed = partsBefore(store, fileId);
  const rows = new Map(
    partRows(
      store,
      changed.map(({ partId }) => partId),
    ).map((row) => [row.id, row]),
  );
  let restored = 0;
  for (const { partId, before, applied } of changed) {
    const row = rows.get(partId);
    if (row === undefined) continue;
    const isOurs = (column: 'cost' | 'listPrice' | 'supersededBy') =>
      row[column] === applied[column] && applied[column] !== before[column];
    const back = {
      ...(isOurs('cost') && { cost: before.cost }),
      ...(isOurs('listPrice') && { listPrice: before.listPrice }),
      ...(isOurs('supersededBy') && { supersededBy: before.supersededBy }),
    };
    if (Object.keys(back).length === 0) continue;
    store.update(part).set(back).where(eq(part.id, partId)).run();
    restored += 1;
    if (row.supersededBy === null || !('supersededBy' in back)) continue;
    // The two parted, and each has promises of its own to keep.
    settlePromises(writing, partId);
    settlePromises(writing, row.supersededBy);
  }
  return restored;
}

export function forgetChanges(store: WriteStore, fileId: string): void {
  store.delete(priceChange).where(eq(priceChange.fileId, fileId)).run();
}
