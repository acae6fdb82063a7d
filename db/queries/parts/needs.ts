import { and, asc, eq, inArray, isNotNull, notInArray, or, type SQL, sql } from 'drizzle-orm';
import type { JobState } from '../../../shared/work/counter/job-state.ts';
import { approvedParts, neededParts } from '../../../shared/work/parts/part-needs.ts';
import {
  approval,
  creditNote,
  estimate,
  invoice,
  job,
  purchaseOrderLine,
  stockMovement,
} from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/** What open jobs need of which parts. A job that is stopped, billed or handed over needs none any more. */

const NEEDS_NOTHING: JobState[] = ['stopped', 'handed-over'];

export interface JobNeeds {
  jobId: string;
  /** By part, thousandths; what was issued is not taken off. */
  needed: Map<string, number>;
}

/** The bill of the work stands; one that was credited whole makes way for another. */
const billed = sql`EXISTS (
  SELECT 1 FROM ${invoice} WHERE ${invoice.jobId} = ${job.id} AND ${invoice.sort} <> 'storage' AND (
    ${invoice.total} = 0 OR ${invoice.total} > (
      SELECT coalesce(sum(${creditNote.total}), 0) FROM ${creditNote} WHERE ${creditNote.invoiceId} = ${invoice.id}
    )
  )
)`;

const isOpen = and(notInArray(job.state, NEEDS_NOTHING), sql`NOT ${billed}`);

/** The newest approval of each open job with the estimate that it is of, the job approved first at the head. */
const approvedWork = (store: ReadStore, where: SQL | undefined) =>
  store
    .select({
      jobId: job.id,
      option: approval.option,
      declined: approval.declined,
      options: estimate.options,
      lines: estimate.lines,
    })
    .from(job)
    .innerJoin(
      approval,
      sql`${approval.id} = (
        SELECT newest.id FROM ${approval} AS newest WHERE newest.job_id = ${job.id}
        ORDER BY newest.at DESC, newest.id DESC LIMIT 1
      )`,
    )
    .innerJoin(estimate, eq(estimate.id, approval.estimateId))
    .where(and(isOpen, where))
    .orderBy(asc(approval.at), asc(approval.id))
    .all();

/** What was ordered for one job alone and not closed short, by job and part. */
const specialOrders = (store: ReadStore, where: SQL | undefined) =>
  store
    .select({
      jobId: job.id,
      partId: purchaseOrderLine.partId,
      quantity: sql<number>`${purchaseOrderLine.quantity} + (
        SELECT coalesce(sum(${stockMovement.ordered}), 0) FROM ${stockMovement}
        WHERE ${stockMovement.orderLineId} = ${purchaseOrderLine.id}
          AND ${stockMovement.kind} = 'order-closed'
      )`,
    })
    .from(purchaseOrderLine)
    .innerJoin(job, eq(job.id, purchaseOrderLine.jobId))
    .where(and(isOpen, isNotNull(purchaseOrderLine.jobId), where))
    .orderBy(asc(purchaseOrderLine.id))
    .all()
    .filter(({ quantity }) => quantity > 0);

function needs(
  store: ReadStore,
  { works, specials }: { works: SQL | undefined; specials: SQL | undefined },
): JobNeeds[] {
  const approved = approvedWork(store, works).map(({ jobId, option, declined, ...of }) => ({
    jobId,
    parts: approvedParts({
      lines: of.options.find(({ key }) => key === option)?.lines ?? of.lines,
      declined,
    }),
  }));
  const special = new Map<string, Map<string, number>>();
  for (const { jobId, partId, quantity } of specialOrders(store, specials)) {
    const parts = special.get(jobId) ?? new Map<string, number>();
    special.set(jobId, parts.set(partId, quantity + (parts.get(partId) ?? 0)));
  }
  const jobs = new Set([...approved.map(({ jobId }) => jobId), ...special.keys()]);
  return [...jobs].map((jobId) => ({
    jobId,
    needed: neededParts(
      approved.find((one) => one.jobId === jobId)?.parts ?? new Map(),
      special.get(jobId) ?? new Map(),
    ),
  }));
}

/** What one job needs; nothing when it is closed or nobody approved anything. */
export const needsOfJob = (store: ReadStore, jobId: string): Map<string, number> =>
  needs(store, { works: eq(job.id, jobId), specials: eq(job.id, jobId) }).at(0)?.needed ??
  new Map();

/** What every open job needs, the one approved first at the head. */
export const openNeeds = (store: ReadStore): JobNeeds[] =>
  needs(store, { works: undefined, specials: undefined });

/** The open jobs that need one of some parts, the one approved first at the head. */
export const jobsNeeding = (store: ReadStore, partIds: readonly string[]): JobNeeds[] =>
  needs(store, {
    // Lines are JSON: those without the id in them anywhere are not worth reading.
    works: or(
      ...partIds.map(
        (id) => sql`(instr(${estimate.options}, ${id}) OR instr(${estimate.lines}, ${id}))`,
      ),
    ),
    specials: inArray(purchaseOrderLine.partId, [...partIds]),
  });
