import { and, asc, eq, inArray, isNotNull, ne, or, type SQL, sql } from 'drizzle-orm';
import { JOB_STATES, type JobState } from '../../../shared/work/counter/job-state.ts';
import { approvedParts, billedParts, neededParts } from '../../../shared/work/parts/part-needs.ts';
import { remembered } from '../../remembered.ts';
import {
  approval,
  estimate,
  invoice,
  job,
  purchaseOrderLine,
  stockMovement,
} from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { fromElsewhere } from './from-elsewhere.ts';
import { heldOfParts } from './job-movements.ts';
import { standingBills } from './standing-bills.ts';

/**
 * What jobs need of which parts: what is billed, or what is approved as long as nothing is. A stopped job needs
 * what it was billed and no more. One that went home claims nothing any more, and keeps what is promised to it
 * until that is issued, or found to have come from elsewhere.
 */

const AT_WORK = JOB_STATES.filter((state) => state !== 'stopped' && state !== 'handed-over');
const HERE: JobState[] = [...AT_WORK, 'stopped'];

export interface JobNeeds {
  jobId: string;
  /** By part, thousandths; what was issued is not taken off. */
  needed: Map<string, number>;
  /** It is what the bill names, and not what was approved. */
  billed: boolean;
  /** The machine went home: what is not there is not waited for. */
  gone: boolean;
}

/** The newest approval of each job at work with the estimate that it is of, the job approved first at the head. */
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
    .where(and(inArray(job.state, AT_WORK), where))
    .orderBy(asc(approval.at), asc(approval.id))
    .all()
    .map(({ jobId, option, declined, options, lines }) => ({
      jobId,
      parts: approvedParts({
        lines: options.find(({ key }) => key === option)?.lines ?? lines,
        declined,
      }),
    }));

/** What was ordered for one job alone and not closed short, by job and part. */
function specialOrders(store: ReadStore, where: SQL | undefined): Map<string, Map<string, number>> {
  const special = new Map<string, Map<string, number>>();
  const rows = store
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
    .where(and(inArray(job.state, AT_WORK), isNotNull(purchaseOrderLine.jobId), where))
    .orderBy(asc(purchaseOrderLine.id))
    .all();
  for (const { jobId, partId, quantity } of rows) {
    if (quantity <= 0) continue;
    const parts = special.get(jobId) ?? new Map<string, number>();
    special.set(jobId, parts.set(partId, quantity + (parts.get(partId) ?? 0)));
  }
  return special;
}

interface Among {
  works: SQL | undefined;
  specials: SQL | undefined;
  bills: SQL | undefined;
}

function needs(store: ReadStore, { works, specials, bills }: Among): JobNeeds[] {
  const billed = standingBills(store, and(ne(invoice.sort, 'storage'), bills));
  const elsewhere = fromElsewhere(store, [...billed.keys()]);
  const approved = approvedWork(store, works);
  const special = specialOrders(store, specials);
  const toBill = withoutBill(store, [...approved.map(({ jobId }) => jobId), ...special.keys()]);
  return [
    ...[...billed].map(([jobId, { state, bills: own }]) => ({
      jobId,
      needed: less(billedParts(own), elsewhere.get(jobId)),
      billed: true,
      gone: state === 'handed-over',
    })),
    ...[...toBill].map((jobId) => ({
      jobId,
      needed: neededParts(
        approved.find((one) => one.jobId === jobId)?.parts ?? new Map(),
        special.get(jobId) ?? new Map(),
      ),
      billed: false,
      gone: false,
    })),
  ];
}

/** Of some jobs those without a bill that stands, in their order. */
function withoutBill(store: ReadStore, jobIds: readonly string[]): Set<string> {
  const jobs = new Set(jobIds);
  if (jobs.size === 0) return jobs;
  const own = and(ne(invoice.sort, 'storage'), inArray(invoice.jobId, [...jobs]));
  const billed = standingBills(store, own);
  return new Set([...jobs].filter((jobId) => !billed.has(jobId)));
}

const less = (
  billed: Map<string, number>,
  elsewhere: ReadonlyMap<string, number> = new Map(),
): Map<string, number> =>
  new Map(
    [...billed].map(([partId, quantity]) => [
      partId,
      Math.max(0, quantity - (elsewhere.get(partId) ?? 0)),
    ]),
  );

const NOTHING: Omit<JobNeeds, 'jobId'> = { needed: new Map(), billed: false, gone: false };

/** What one job needs, also after it went home; nothing as long as nobody approved anything. */
export const jobNeeds = remembered(
  (store, jobId): JobNeeds =>
    needs(store, {
      works: eq(job.id, jobId),
      specials: eq(job.id, jobId),
      bills: eq(job.id, jobId),
    }).at(0) ?? { jobId, ...NOTHING },
);

export const needsOfJob = (store: ReadStore, jobId: string): Map<string, number> =>
  jobNeeds(store, jobId).needed;

/** What every job that is here needs: those that are billed, then the others, the one approved first at the head. */
export const openNeeds = (store: ReadStore): JobNeeds[] =>
  needs(store, { works: undefined, specials: undefined, bills: inArray(job.state, HERE) });

/** JSON lines: those without the id in them anywhere are not worth reading. */
const namesOne = (partIds: readonly string[], ...columns: Parameters<typeof sql>[1][]) =>
  or(...columns.flatMap((column) => partIds.map((id) => sql`instr(${column}, ${id})`)));

/**
 * The jobs that need one of some parts: those that are billed, then the others, the one approved first at the
 * head. Of those that went home only the ones that still have some of it promised.
 */
export function jobsNeeding(store: ReadStore, partIds: readonly string[]): JobNeeds[] {
  const promised = heldOfParts(store, partIds).filter((held) => held.promised > 0);
  return needs(store, {
    works: namesOne(partIds, estimate.options, estimate.lines),
    specials: inArray(purchaseOrderLine.partId, [...partIds]),
    bills: and(
      namesOne(partIds, invoice.lines),
      or(
        inArray(job.state, HERE),
        inArray(
          job.id,
          promised.map(({ jobId }) => jobId),
        ),
      ),
    ),
  });
}
