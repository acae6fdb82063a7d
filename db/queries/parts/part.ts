import { asc, eq, sql } from 'drizzle-orm';
import { PartId } from '../../../shared/contract/ids.ts';
import type { Part } from '../../../shared/contract/parts/index.ts';
import { partPrice } from '../../../shared/money/index.ts';
import { prepared } from '../../prepared.ts';
import { remembered } from '../../remembered.ts';
import { part, stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { shopOf } from '../office.ts';
import { matches } from '../search-text.ts';
import { tillRulesOf } from '../till/rules.ts';
import { shelfSums } from './shelf.ts';

const rows = (store: ReadStore) =>
  store
    .select({ part, ...shelfSums })
    .from(part)
    .leftJoin(stockMovement, eq(stockMovement.partId, part.id))
    .groupBy(part.id);

type Row = ReturnType<ReturnType<typeof rows>['all']>[number];

/** Reads rows as parts at what they sell for by the shop's rules of today. */
function pricing(store: ReadStore): (row: Row) => Part {
  const { rounding } = shopOf(store);
  const { markup } = tillRulesOf(store);
  return ({ part: row, ...sums }) => {
    const { numberKey: _numberKey, searchText: _searchText, ...facts } = row;
    const { price: sellsAt, from: sellsBy } = partPrice(row, markup, rounding);
    return { ...facts, id: PartId.parse(row.id), ...sums, sellsAt, sellsBy };
  };
}

export const findParts = (store: ReadStore, text: string, limit: number): Part[] =>
  rows(store)
    .where(matches(part.searchText, text))
    .orderBy(asc(part.number))
    .limit(limit)
    .all()
    .map(pricing(store));

const rowById = prepared((store) =>
  rows(store)
    .where(eq(part.id, sql.placeholder('id')))
    .prepare(),
);

export const partById = remembered((store, id): Part | undefined => {
  const row = rowById(store).get({ id });
  return row && pricing(store)(row);
});

export const partIdByKey = (store: ReadStore, numberKey: string): PartId | undefined => {
  const row = store.select({ id: part.id }).from(part).where(eq(part.numberKey, numberKey)).get();
  return row && PartId.parse(row.id);
};

/** What one costs the shop as it is known, minor units. */
export const unitCostOf = (store: ReadStore, partId: string): number | undefined =>
  store.select({ cost: part.cost }).from(part).where(eq(part.id, partId)).get()?.cost;
