import { and, eq, inArray, lte, type SQL, sql } from 'drizzle-orm';
import {
  EMPTY_SHELF,
  type IssuedToJob,
  type Shelf,
} from '../../../shared/work/parts/stock-ledger.ts';
import { stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/** The sums of the ledger. None is kept anywhere: each is added up when it is asked for. */

const sum = (column: SQL | typeof stockMovement.quantity | typeof stockMovement.worth) =>
  sql<number>`coalesce(sum(${column}), 0)`;

/** What a shelf comes to, as columns of a query over its movements. */
export const shelfSums = {
  onHand: sum(stockMovement.quantity),
  promised: sum(stockMovement.reserved),
  onOrder: sum(stockMovement.ordered),
  worth: sum(stockMovement.worth),
};

/** One part's shelf, of today or as it was at an instant. */
export const shelfOf = (store: ReadStore, partId: string, at?: string): Shelf =>
  store
    .select(shelfSums)
    .from(stockMovement)
    .where(
      and(
        eq(stockMovement.partId, partId),
        at === undefined ? undefined : lte(stockMovement.at, at),
      ),
    )
    .get() ?? EMPTY_SHELF;

/** What of a part is promised to a job. */
export const promisedTo = (store: ReadStore, partId: string, jobId: string): number =>
  store
    .select({ promised: shelfSums.promised })
    .from(stockMovement)
    .where(and(eq(stockMovement.partId, partId), eq(stockMovement.jobId, jobId)))
    .get()?.promised ?? 0;

/** What of a part went to a job and has not come back, and what it was worth. */
export const issuedTo = (store: ReadStore, partId: string, jobId: string): IssuedToJob =>
  store
    .select({
      quantity: sql<number>`coalesce(-sum(${stockMovement.quantity}), 0)`,
      worth: sql<number>`coalesce(-sum(${stockMovement.worth}), 0)`,
    })
    .from(stockMovement)
    .where(
      and(
        eq(stockMovement.partId, partId),
        eq(stockMovement.jobId, jobId),
        inArray(stockMovement.kind, ['issued', 'returned']),
      ),
    )
    .get() ?? { quantity: 0, worth: 0 };

/** What a supplier still owes on a line of an order. */
export const owedOn = (store: ReadStore, orderLineId: string): number =>
  store
    .select({ owed: shelfSums.onOrder })
    .from(stockMovement)
    .where(eq(stockMovement.orderLineId, orderLineId))
    .get()?.owed ?? 0;
