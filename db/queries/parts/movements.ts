import { and, desc, eq, inArray, sql } from 'drizzle-orm';
import { jobCode } from '../../../shared/contract/ids.ts';
import type { Movement, Part } from '../../../shared/contract/parts/index.ts';
import { job, staff, stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { partById } from './part.ts';

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
      worth: movement.worth,
      reserved: movement.reserved,
      ordered: movement.ordered,
      reason: movement.reason,
      jobCode: jobNumber === null ? '' : jobCode(jobNumber),
      by: byName,
      at: movement.at,
    }));

/** What went from the shelf to a job less what came back, thousandths; a part that came back whole isn't there. */
export const issuedTo = (store: ReadStore, jobId: string): { part: Part; quantity: number }[] =>
  store
    .select({
      partId: stockMovement.partId,
      quantity: sql<number>`-sum(${stockMovement.quantity})`,
    })
    .from(stockMovement)
    .where(and(eq(stockMovement.jobId, jobId), inArray(stockMovement.kind, ['issued', 'returned'])))
    .groupBy(stockMovement.partId)
    .all()
    .flatMap(({ partId, quantity }) => {
      const part = partById(store, partId);
      return part === undefined || quantity <= 0 ? [] : [{ part, quantity }];
    });
