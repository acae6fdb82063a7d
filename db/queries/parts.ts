import { asc, desc, eq, sql } from 'drizzle-orm';
import { jobCode, PartId } from '../../shared/contract/ids.ts';
import type { Movement, Part } from '../../shared/contract/parts.ts';
import { job, part, staff, stockMovement } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';
import { matches } from './search-text.ts';

const rows = (store: ReadStore) =>
  store
    .select({
      part,
      // On hand is never kept: it is the sum of what moved.
      onHand: sql<number>`coalesce(sum(${stockMovement.quantity}), 0)`,
    })
    .from(part)
    .leftJoin(stockMovement, eq(stockMovement.partId, part.id))
    .groupBy(part.id);

type Row = ReturnType<ReturnType<typeof rows>['all']>[number];

const asPart = ({ part: row, onHand }: Row): Part => {
  const { numberKey: _numberKey, searchText: _searchText, ...facts } = row;
  return { ...facts, id: PartId.parse(row.id), onHand };
};

export const findParts = (store: ReadStore, text: string, limit: number): Part[] =>
  rows(store)
    .where(matches(part.searchText, text))
    .orderBy(asc(part.number))
    .limit(limit)
    .all()
    .map(asPart);

export function partById(store: ReadStore, id: string): Part | undefined {
  const row = rows(store).where(eq(part.id, id)).get();
  return row && asPart(row);
}

export function partByKey(store: ReadStore, numberKey: string): Part | undefined {
  const row = rows(store).where(eq(part.numberKey, numberKey)).get();
  return row && asPart(row);
}

export const movementsOf = (store: ReadStore, partId: string): Movement[] =>
  store
    .select({ movement: stockMovement, byName: staff.name, jobNumber: job.number })
    .from(stockMovement)
    .innerJoin(staff, eq(staff.id, stockMovement.by))
    .leftJoin(job, eq(job.id, stockMovement.jobId))
    .where(eq(stockMovement.partId, partId))
    .orderBy(desc(stockMovement.at), desc(stockMovement.id))
    .all()
    .map(({ movement, byName, jobNumber }) => ({
      kind: movement.kind,
      quantity: movement.quantity,
      reason: movement.reason,
      jobCode: jobNumber === null ? '' : jobCode(jobNumber),
      by: byName,
      at: movement.at,
    }));
