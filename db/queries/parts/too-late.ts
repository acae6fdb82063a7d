import { eq, gt, sql } from 'drizzle-orm';
import type { JobCard } from '../../../shared/contract/counter/index.ts';
import { comesTooLate } from '../../../shared/work/counter/promise.ts';
import { purchaseOrder, purchaseOrderLine, stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { chainOf } from './chain.ts';
import { expectedDay } from './expected.ts';
import { jobPartsOf } from './job-parts.ts';
import { openNeeds } from './needs.ts';

/** Parts that suppliers owe and that are expected after a day, by the latest that one is expected on. */
function expectedAfter(store: ReadStore, day: string): Map<string, string> {
  const rows = store
    .select({ partId: purchaseOrderLine.partId, expectedOn: expectedDay })
    .from(purchaseOrderLine)
    .innerJoin(purchaseOrder, eq(purchaseOrder.id, purchaseOrderLine.orderId))
    .innerJoin(stockMovement, eq(stockMovement.orderLineId, purchaseOrderLine.id))
    .where(gt(expectedDay, day))
    .groupBy(purchaseOrderLine.id)
    .having(gt(sql`sum(${stockMovement.ordered})`, 0))
    .all();
  const latest = new Map<string, string>();
  for (const { partId, expectedOn } of rows)
    for (const id of chainOf(store, partId))
      if (expectedOn !== null && expectedOn > (latest.get(id) ?? '')) latest.set(id, expectedOn);
  return latest;
}

/** Jobs whose slowest missing part is expected after the day promised, in the order given. */
export function partsTooLate(store: ReadStore, jobs: readonly JobCard[]) {
  const [first] = jobs.flatMap(({ promisedFor }) => promisedFor ?? []).toSorted();
  if (first === undefined) return [];
  // What a job needs is looked at closely only where something of it could come too late.
  const after = expectedAfter(store, first);
  if (after.size === 0) return [];
  const needed = new Map(openNeeds(store).map((each) => [each.jobId, [...each.needed.keys()]]));
  return jobs.flatMap((job) => {
    const couldBe = (needed.get(job.id) ?? []).some((partId) =>
      comesTooLate(after.get(partId) ?? '', job.promisedFor),
    );
    const expectedOn = couldBe ? (jobPartsOf(store, job.id)?.expectedOn ?? null) : null;
    return expectedOn !== null && comesTooLate(expectedOn, job.promisedFor)
      ? [{ job, expectedOn }]
      : [];
  });
}
