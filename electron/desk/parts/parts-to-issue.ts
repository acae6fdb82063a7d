import { eq } from 'drizzle-orm';
import { notIssued } from '../../../db/queries/parts/billed-parts.ts';
import { job } from '../../../db/schema/index.ts';
import type { Writing } from '../writing.ts';

/**
 * Marks a job where billed parts have not left the shelf, or takes the mark away: a list then looks at these
 * jobs alone. How much of what it is, nobody keeps: the bill and the ledger say.
 */
export function markPartsToIssue({ store }: Writing, jobId: string): void {
  const partsToIssue = notIssued(store, jobId).length > 0;
  store.update(job).set({ partsToIssue }).where(eq(job.id, jobId)).run();
}
