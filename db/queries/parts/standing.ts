import { and, asc, desc, eq, lt, or, sql } from 'drizzle-orm';
import { jobCode, PartId } from '../../../shared/contract/ids.ts';
import type { ShelfToPutRight, ValuedShelf } from '../../../shared/contract/parts/index.ts';
import { averageCost } from '../../../shared/work/parts/stock-ledger.ts';
import { job, part, staff, stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { shelfSums } from './shelf.ts';

const shelves = (store: ReadStore, before: string | undefined) =>
  store
    .select({
      id: part.id,
      number: part.number,
      description: part.description,
      unit: part.unit,
      bin: part.bin,
      onHand: shelfSums.onHand,
      worth: shelfSums.worth,
    })
    .from(part)
    .innerJoin(stockMovement, eq(stockMovement.partId, part.id))
    .where(before === undefined ? undefined : lt(stockMovement.at, before))
    .groupBy(part.id);

/**
 * What every shelf held and was worth before an instant; of now without one. Those that held nothing and
 * were worth nothing are left out.
 */
export const valuedShelves = (store: ReadStore, before?: string): ValuedShelf[] =>
  shelves(store, before)
    .having(or(sql`${shelfSums.onHand} <> 0`, sql`${shelfSums.worth} <> 0`))
    .orderBy(asc(part.number))
    .all()
    .map((row) => ({ ...row, id: PartId.parse(row.id), average: averageCost(row) }));

/** Shelves below nothing, the oldest first, with the words of whoever took them there. */
export const shelvesToPutRight = (store: ReadStore): ShelfToPutRight[] =>
  shelves(store, undefined)
    .having(lt(shelfSums.onHand, 0))
    .all()
    .flatMap(({ worth: _worth, ...row }) => {
      const cause = lastBelow(store, row.id);
      return cause === undefined ? [] : [{ ...row, id: PartId.parse(row.id), ...cause }];
    })
    .toSorted((a, b) => (a.since < b.since ? -1 : Number(a.since > b.since)));

/** The movement that took a shelf below nothing and since which it has been there. */
function lastBelow(store: ReadStore, partId: string) {
  const running = store
    .select({
      id: stockMovement.id,
      at: stockMovement.at,
      reason: stockMovement.reason,
      by: stockMovement.by,
      jobId: stockMovement.jobId,
      after:
        sql<number>`sum(${stockMovement.quantity}) OVER (ORDER BY ${stockMovement.at}, ${stockMovement.id})`.as(
          'after',
        ),
      before:
        sql<number>`sum(${stockMovement.quantity}) OVER (ORDER BY ${stockMovement.at}, ${stockMovement.id}) - ${stockMovement.quantity}`.as(
          'before',
        ),
    })
    .from(stockMovement)
    .where(eq(stockMovement.partId, partId))
    .as('running');
  const row = store
    .select({
      since: running.at,
      reason: running.reason,
      by: staff.name,
      jobNumber: job.number,
    })
    .from(running)
    .innerJoin(staff, eq(staff.id, running.by))
    .leftJoin(job, eq(job.id, running.jobId))
    .where(and(lt(running.after, 0), sql`${running.before} >= 0`))
    .orderBy(desc(running.at), desc(running.id))
    .limit(1)
    .get();
  if (row === undefined) return undefined;
  const { jobNumber, ...rest } = row;
  return { ...rest, jobCode: jobNumber === null ? '' : jobCode(jobNumber) };
}
