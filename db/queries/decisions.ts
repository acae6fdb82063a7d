import { and, asc, desc, eq, lt, ne, sql } from 'drizzle-orm';
import type { Decision } from '../../shared/contract/bench/decisions.ts';
import { DecisionId } from '../../shared/contract/ids.ts';
import { type JobSizes, sizesItCameWith } from '../../shared/work/bench/deciding/decided-limits.ts';
import { choiceLabel } from '../../shared/work/bench/deciding/decision-rules.ts';
import { prepared } from '../prepared.ts';
import { remembered } from '../remembered.ts';
import { decision, job, jobMove, staff } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';

/** Decisions of a job that no later one superseded. */
export function standingDecisions(store: ReadStore, jobId: string): Decision[] {
  const all = decisionsOf(store, jobId);
  const superseded = new Set(all.map(({ supersedes }) => supersedes));
  return all.filter(({ id }) => !superseded.has(id));
}

/** What moves the limits of a job's sizes: what its engine came with, and what the job itself decided. */
export const sizesOfJob = (
  store: ReadStore,
  { engineId, jobId }: { engineId: string; jobId: string },
): JobSizes => ({
  cameWith: sizesItCameWith(earlierDecisions(store, engineId, jobId)),
  standing: standingDecisions(store, jobId),
});

/**
 * What stands of the decisions of an engine's jobs before this one, oldest first. A job that was not built
 * (not handed over, or stopped) changed no part.
 */
function earlierDecisions(store: ReadStore, engineId: string, jobId: string): Decision[] {
  const thisJob = store.select({ number: job.number }).from(job).where(eq(job.id, jobId));
  return store
    .select({ id: job.id })
    .from(job)
    .where(and(eq(job.engineId, engineId), eq(job.state, 'handed-over'), lt(job.number, thisJob)))
    .orderBy(asc(job.number))
    .all()
    .filter(({ id }) => wasBuilt(store, id))
    .flatMap(({ id }) => standingDecisions(store, id));
}

/** Whether a job that was handed over had been finished before, and not stopped. */
const wasBuilt = (store: ReadStore, jobId: string): boolean =>
  store
    .select({ to: jobMove.to })
    .from(jobMove)
    .where(and(eq(jobMove.jobId, jobId), ne(jobMove.to, 'handed-over')))
    .orderBy(desc(jobMove.id))
    .limit(1)
    .get()?.to === 'ready';

const rowsOfJob = prepared((store) =>
  store
    .select({ decision, byName: staff.name })
    .from(decision)
    .innerJoin(staff, eq(staff.id, decision.by))
    .where(eq(decision.jobId, sql.placeholder('jobId')))
    .orderBy(asc(decision.at), asc(decision.id))
    .prepare(),
);

/** A job's decisions in the order in which they were taken, superseded ones among them. */
export const decisionsOf = remembered((store, jobId): Decision[] =>
  rowsOfJob(store)
    .all({ jobId })
    .map(({ decision: row, byName }) => ({
      id: DecisionId.parse(row.id),
      subject: row.subject,
      cylinder: row.cylinder,
      choice: row.choice,
      choiceLabel: choiceLabel(row.subject, row.choice),
      step: row.step,
      machineTo:
        row.machineToLow === null || row.machineToHigh === null
          ? null
          : { low: row.machineToLow, high: row.machineToHigh },
      reason: row.reason,
      by: byName,
      at: row.at,
      supersedes: row.supersedes === null ? null : DecisionId.parse(row.supersedes),
    })),
);
