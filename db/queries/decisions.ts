import { asc, eq } from 'drizzle-orm';
import type { Decision } from '../../shared/contract/bench/decisions.ts';
import { DecisionId } from '../../shared/contract/ids.ts';
import { choiceLabel } from '../../shared/work/decision-rules.ts';
import { decision, staff } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';

/** Decisions of a job that no later one superseded. */
export function standingDecisions(store: ReadStore, jobId: string): Decision[] {
  const all = decisionsOf(store, jobId);
  const superseded = new Set(all.map(({ supersedes }) => supersedes));
  return all.filter(({ id }) => !superseded.has(id));
}

/** A job's decisions in the order in which they were taken, superseded ones among them. */
export const decisionsOf = (store: ReadStore, jobId: string): Decision[] =>
  store
    .select({ decision, byName: staff.name })
    .from(decision)
    .innerJoin(staff, eq(staff.id, decision.by))
    .where(eq(decision.jobId, jobId))
    .orderBy(asc(decision.at), asc(decision.id))
    .all()
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
    }));
