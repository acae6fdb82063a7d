import { and, eq, inArray, isNotNull, sql } from 'drizzle-orm';
import { stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/** What of a part stands with a job, thousandths. */
export interface HeldByJob {
  partId: string;
  jobId: string;
  promised: number;
  /** All that went to it, what came back included: unused parts are not needed a second time. */
  issued: number;
  returned: number;
  /** What it has cost the job, minor units. */
  worth: number;
}

const columns = {
  partId: stockMovement.partId,
  jobId: sql<string>`${stockMovement.jobId}`,
  promised: sql<number>`sum(${stockMovement.reserved})`,
  // A kit that was opened for the job counts as issued: its pieces are what the job gets of it.
  issued: sql<number>`-sum(iif(${stockMovement.kind} IN ('issued', 'kit-opened'), min(${stockMovement.quantity}, 0), 0))`,
  returned: sql<number>`sum(iif(${stockMovement.kind} = 'returned', ${stockMovement.quantity}, 0))`,
  worth: sql<number>`-sum(iif(${stockMovement.kind} IN ('issued', 'returned'), ${stockMovement.worth}, 0))`,
};

/** What moved of parts with each job, and with none. */
export const movedOfParts = (store: ReadStore, partIds: readonly string[]) =>
  store
    .select({
      ...columns,
      jobId: stockMovement.jobId,
      quantity: sql<number>`sum(${stockMovement.quantity})`,
    })
    .from(stockMovement)
    .where(inArray(stockMovement.partId, [...partIds]))
    .groupBy(stockMovement.partId, stockMovement.jobId)
    .all();

/** Every job that any of these parts was promised or issued to. */
export const heldOfParts = (store: ReadStore, partIds: readonly string[]): HeldByJob[] =>
  store
    .select(columns)
    .from(stockMovement)
    .where(and(inArray(stockMovement.partId, [...partIds]), isNotNull(stockMovement.jobId)))
    .groupBy(stockMovement.partId, stockMovement.jobId)
    .all();

/** Every part that was promised or issued to a job. */
export const heldByJob = (store: ReadStore, jobId: string): HeldByJob[] =>
  store
    .select(columns)
    .from(stockMovement)
    .where(eq(stockMovement.jobId, jobId))
    .groupBy(stockMovement.partId, stockMovement.jobId)
    .all();
