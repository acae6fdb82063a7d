import { and, eq, inArray, sql } from 'drizzle-orm';
import { laterOf } from '../../../../db/queries/parts/chain.ts';
import {
  changeOfPart,
  offersOfFile,
  partRows,
} from '../../../../db/queries/parts/repriced-parts.ts';
import { part, priceChange, priceFile, priceFileLine } from '../../../../db/schema/index.ts';
import type { WriteStore } from '../../../../db/store.ts';
import type { PriceFileMapping } from '../../../../shared/contract/parts/index.ts';
import type { Writing } from '../../writing.ts';
import { settlePromises } from '../promises.ts';

interface FileToApply {
  id: string;
  supplierId: string;
  mapping: PriceFileMapping;
}

/**
 * Takes the usable lines of a file over into the supplier's price list, all of them by a few statements, and
 * keeps what they replace.
 */
export function applyToPriceList(
  store: WriteStore,
  { id, supplierId, mapping }: FileToApply,
): void {
  forgetEarlier(store, supplierId);
  const { columns } = mapping;
  // The file's own id with the line's number at its end: an id of version 7 that is nobody else's.
  const itemId = sql`substr(${id}, 1, 24) || printf('%012x', line.line)`;
  const isKnown = sql`EXISTS (SELECT 1 FROM supplier_item AS item
    WHERE item.supplier_id = ${supplierId} AND item.number_key = line.number_key)`;
  const usable = sql`line.file_id = ${id} AND line.problem = ''`;

  store.run(sql`
    INSERT INTO price_change (file_id, item_id, part_id, before)
    SELECT ${id}, item.id, NULL, json_object('number', item.number,
      'description', item.description, 'cost', item.cost, 'listPrice', item.list_price,
      'packSize', item.pack_size, 'coreCharge', item.core_charge,
      'supersededBy', item.superseded_by, 'priceFileId', item.price_file_id)
    FROM price_file_line AS line JOIN supplier_item AS item
      ON item.supplier_id = ${supplierId} AND item.number_key = line.number_key
    WHERE ${usable}`);
  store.run(sql`
    INSERT INTO price_change (file_id, item_id, part_id, before)
    SELECT ${id}, ${itemId}, NULL, '' FROM price_file_line AS line
    WHERE ${usable} AND NOT ${isKnown}`);
  // A column that the file hasn't got leaves what is known; so does an empty description.
  store.run(sql`
    UPDATE supplier_item SET
      number = line.number,
      description = CASE WHEN line.description <> '' THEN line.description
        ELSE supplier_item.description END,
      cost = line.cost,
      list_price = CASE WHEN ${has(columns.listPrice)} THEN line.list_price
        ELSE supplier_item.list_price END,
      pack_size = CASE WHEN ${has(columns.packSize)} THEN line.pack_size
        ELSE supplier_item.pack_size END,
      core_charge = CASE WHEN ${has(columns.coreCharge)} THEN line.core_charge
        ELSE supplier_item.core_charge END,
      superseded_by = CASE WHEN ${has(columns.supersededBy)} THEN line.superseded_by
        ELSE supplier_item.superseded_by END,
      price_file_id = ${id}
    FROM price_file_line AS line
    WHERE supplier_item.supplier_id = ${supplierId}
      AND supplier_item.number_key = line.number_key AND ${usable}`);
  store.run(sql`
    INSERT INTO supplier_item (id, supplier_id, number, number_key, description, cost, list_price,
      pack_size, core_charge, superseded_by, price_file_id)
    SELECT ${itemId}, ${supplierId}, line.number, line.number_key, line.description, line.cost,
      line.list_price, line.pack_size, line.core_charge, line.superseded_by, ${id}
    FROM price_file_line AS line WHERE ${usable} AND NOT ${isKnown}`);
}

const has = (column: unknown): number => (column === null ? 0 : 1);

/** Only the last file can be undone; what the ones before it replaced would fill the store for nothing. */
function forgetEarlier(store: WriteStore, supplierId: string): void {
  const earlier = store
    .select({ id: priceFile.id })
    .from(priceFile)
    .where(and(eq(priceFile.supplierId, supplierId), eq(priceFile.state, 'applied')));
  store.delete(priceChange).where(inArray(priceChange.fileId, earlier)).run();
}

/**
 * Brings cost, list price and successor of the parts bought from the supplier up to what the file says. A
 * successor that somebody named stays, and one that would close a circle is left out.
 * @returns how many parts changed
 */
export function applyToParts(writing: Writing, { id, supplierId, mapping }: FileToApply): number {
  const { store } = writing;
  const hasListPrices = mapping.columns.listPrice !== null;
  const offers = new Map(
    offersOfFile(store, id, { supplierId, hasListPrices }).map((each) => [each.partId, each]),
  );
  let changed = 0;
  for (const row of partRows(store, [...offers.keys()])) {
    const offer = offers.get(row.id);
    if (offer === undefined) continue;
    const { successorId } = offer;
    const closesCircle = successorId !== null && laterOf(store, successorId).includes(row.id);
    const after = changeOfPart(row, { ...offer, successorId: closesCircle ? null : successorId });
    if (after === null) continue;
    const { cost, listPrice, supersededBy } = row;
    store
      .insert(priceChange)
      .values({
        fileId: id,
        itemId: null,
        partId: row.id,
        before: JSON.stringify({ before: { cost, listPrice, supersededBy }, applied: after }),
      })
      .run();
    store.update(part).set(after).where(eq(part.id, row.id)).run();
    if (after.supersededBy !== supersededBy) settlePromises(writing, row.id);
    changed += 1;
  }
  return changed;
}

/** The usable lines are in the price list now; those that can't be used stay, to be looked at. */
export function dropUsableLines(store: WriteStore, fileId: string): void {
  store
    .delete(priceFileLine)
    .where(and(eq(priceFileLine.fileId, fileId), eq(priceFileLine.problem, '')))
    .run();
}
