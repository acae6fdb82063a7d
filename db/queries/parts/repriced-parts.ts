import { and, asc, eq, inArray, isNotNull, sql } from 'drizzle-orm';
import { z } from 'zod';
import { PartId } from '../../../shared/contract/ids.ts';
import type { RepricedPart } from '../../../shared/contract/parts/index.ts';
import { partPrice } from '../../../shared/money/index.ts';
import { foldNumber } from '../../../shared/work/fold.ts';
import { part, priceChange } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { shopOf } from '../office.ts';
import { tillRulesOf } from '../till/rules.ts';
import { linesByKeys } from './price-file-lines.ts';
import { partsByKey, suppliedParts } from './supplied-parts.ts';

/** What a price file says of a part of ours. A list price of `undefined` is one that the file has no column for. */
export interface PartOffer {
  partId: string;
  cost: number;
  listPrice: number | null | undefined;
  /** The part of ours that takes its place, where it has none yet. */
  successorId: string | null;
}

export interface PriceColumns {
  /** Whether the file has list prices. */
  hasListPrices: boolean;
  supplierId: string;
}

interface Offered {
  cost: number;
  listPrice: number | null;
  supersededBy: string;
}

/** What the lines of a file that is not applied yet say of our parts. */
export function offersOfFile(store: ReadStore, fileId: string, columns: PriceColumns): PartOffer[] {
  const ours = suppliedParts(store, columns.supplierId);
  const lines = linesByKeys(
    store,
    fileId,
    ours.flatMap(({ keys }) => keys),
  );
  const byKey = new Map<string, Offered>(lines.map((line) => [line.numberKey, line]));
  const known = new Map(ours.flatMap(({ partId, keys }) => keys.map((key) => [key, partId])));
  return partsByKey(ours, byKey).map(({ partId, item }) => {
    const successor = known.get(foldNumber(item.supersededBy)) ?? null;
    return {
      partId,
      cost: item.cost,
      listPrice: columns.hasListPrices ? item.listPrice : undefined,
      successorId: successor === partId ? null : successor,
    };
  });
}

type PartRow = typeof part.$inferSelect;

/** Parts by their ids; a long list is no trouble to the query. */
export const partRows = (store: ReadStore, ids: readonly string[]): PartRow[] =>
  store
    .select()
    .from(part)
    .where(inArray(part.id, sql`(SELECT value FROM json_each(${JSON.stringify(ids)}))`))
    .orderBy(asc(part.number))
    .all();

/** What of a part an offer would change; null when it says what is so already. */
export function changeOfPart(
  row: PartRow,
  { cost, listPrice, successorId }: PartOffer,
): Pick<PartRow, 'cost' | 'listPrice' | 'supersededBy'> | null {
  const after = {
    cost,
    listPrice: listPrice === undefined ? row.listPrice : listPrice,
    supersededBy: row.supersededBy ?? successorId,
  };
  const isSame =
    after.cost === row.cost &&
    after.listPrice === row.listPrice &&
    after.supersededBy === row.supersededBy;
  return isSame ? null : after;
}

function seller(store: ReadStore) {
  const { rounding } = shopOf(store);
  const { markup } = tillRulesOf(store);
  return (row: Pick<PartRow, 'priceRule' | 'price' | 'cost' | 'listPrice'>): number =>
    partPrice(row, markup, rounding).price;
}

/** The parts of ours that a file would change, by number. */
export function partsToReprice(
  store: ReadStore,
  fileId: string,
  columns: PriceColumns,
): RepricedPart[] {
  const offers = new Map(offersOfFile(store, fileId, columns).map((each) => [each.partId, each]));
  const rows = partRows(store, [...offers.keys()]);
  const numbers = new Map(
    partRows(
      store,
      [...offers.values()].flatMap(({ successorId }) => successorId ?? []),
    ).map(({ id, number }) => [id, number]),
  );
  const sellsAt = seller(store);
  return rows.flatMap((row) => {
    const offer = offers.get(row.id);
    const after = offer === undefined ? null : changeOfPart(row, offer);
    if (after === null) return [];
    const isReplaced = after.supersededBy !== row.supersededBy;
    return [
      {
        id: PartId.parse(row.id),
        number: row.number,
        description: row.description,
        formerCost: row.cost,
        cost: after.cost,
        formerlySellsAt: sellsAt(row),
        sellsAt: sellsAt({ ...row, ...after }),
        supersededBy: isReplaced ? (numbers.get(after.supersededBy ?? '') ?? '') : '',
      },
    ];
  });
}

/** What a file can change of a part. */
const Followed = z.object({
  cost: z.int(),
  listPrice: z.int().nullable(),
  supersededBy: z.string().nullable(),
});

const PartChange = z.object({ before: Followed, applied: Followed });

/** What a file changed of our parts: as they were, and as it left them. */
export const partsBefore = (
  store: ReadStore,
  fileId: string,
): ({ partId: string } & z.infer<typeof PartChange>)[] =>
  store
    .select({ partId: priceChange.partId, before: priceChange.before })
    .from(priceChange)
    .where(and(eq(priceChange.fileId, fileId), isNotNull(priceChange.partId)))
    .all()
    .flatMap(({ partId, before }) =>
      partId === null ? [] : [{ partId, ...PartChange.parse(JSON.parse(before)) }],
    );

/** The parts of ours that a file changed, by number, as they stand now. */
export function partsRepriced(store: ReadStore, fileId: string): RepricedPart[] {
  const changed = new Map(partsBefore(store, fileId).map(({ partId, before }) => [partId, before]));
  const rows = partRows(store, [...changed.keys()]);
  const numbers = new Map(
    partRows(
      store,
      rows.flatMap(({ supersededBy }) => supersededBy ?? []),
    ).map(({ id, number }) => [id, number]),
  );
  const sellsAt = seller(store);
  return rows.flatMap((row) => {
    const before = changed.get(row.id);
    if (before === undefined) return [];
    const isReplaced = before.supersededBy !== row.supersededBy;
    return [
      {
        id: PartId.parse(row.id),
        number: row.number,
        description: row.description,
        formerCost: before.cost,
        cost: row.cost,
        formerlySellsAt: sellsAt({ ...row, ...before }),
        sellsAt: sellsAt(row),
        supersededBy: isReplaced ? (numbers.get(row.supersededBy ?? '') ?? '') : '',
      },
    ];
  });
}
