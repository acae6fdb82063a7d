import { inArray, sql } from 'drizzle-orm';
import { partFromElsewhere } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/** What is billed on jobs and did not come off the shelf, by job and part; thousandths. */
export function fromElsewhere(
  store: ReadStore,
  jobIds: readonly string[],
): Map<string, Map<string, number>> {
  const jobs = new Map<string, Map<string, number>>();
  if (jobIds.length === 0) return jobs;
  const rows = store
    .select({
      jobId: partFromElsewhere.jobId,
      partId: partFromElsewhere.partId,
      quantity: sql<number>`sum(${partFromElsewhere.quantity})`,
    })
    .from(partFromElsewhere)
    .where(inArray(partFromElsewhere.jobId, [...jobIds]))
    .groupBy(partFromElsewhere.jobId, partFromElsewhere.partId)
    .all();
  for (const { jobId, partId, quantity } of rows) {
    const parts = jobs.get(jobId) ?? new Map<string, number>();
    jobs.set(jobId, parts.set(partId, quantity));
  }
  return jobs;
}
