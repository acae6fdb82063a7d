import { desc, eq } from 'drizzle-orm';
import { jobCode } from '../../../shared/contract/ids.ts';
import type { Movement } from '../../../shared/contract/parts/index.ts';
import { job, staff, stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

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
