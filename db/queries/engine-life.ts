import { asc, desc, eq } from 'drizzle-orm';
import type { JobOfEngine } from '../../shared/contract/bench/index.ts';
import type { Machine } from '../../shared/contract/counter/index.ts';
import { JobId, jobCode } from '../../shared/contract/ids.ts';
import { decision, engine, job, staff } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';
import { machineById } from './counter/machines.ts';
import { testRunsOf } from './test-runs.ts';

/** The machine that an engine sits in, with the engine. */
export function machineOfEngine(store: ReadStore, engineId: string): Machine | undefined {
  const row = store.select().from(engine).where(eq(engine.id, engineId)).get();
  return row && machineById(store, row.machineId);
}

/** Decisions that stand: a changed mind leaves out what it supersedes. */
function decisionsOf(store: ReadStore, jobId: string): JobOfEngine['decisions'] {
  const rows = store
    .select({ decision, byName: staff.name })
    .from(decision)
    .innerJoin(staff, eq(staff.id, decision.by))
    .where(eq(decision.jobId, jobId))
    .orderBy(asc(decision.at), asc(decision.id))
    .all();
  const superseded = new Set(rows.map((row) => row.decision.supersedes));
  return rows
    .filter((row) => !superseded.has(row.decision.id))
    .map(({ decision: { subject, cylinder, choice, step, reason, at }, byName }) => ({
      subject,
      cylinder,
      choice,
      step,
      reason,
      by: byName,
      at,
    }));
}

/** Every job of an engine, the latest first. */
export const jobsOfEngine = (store: ReadStore, engineId: string): JobOfEngine[] =>
  store
    .select()
    .from(job)
    .where(eq(job.engineId, engineId))
    .orderBy(desc(job.number))
    .all()
    .map((row) => ({
      id: JobId.parse(row.id),
      code: jobCode(row.number),
      takenInOn: row.takenInOn,
      engineHours: row.engineHours,
      state: row.state,
      complaint: row.complaint,
      workDone: row.workDone,
      decisions: decisionsOf(store, row.id),
      testRuns: testRunsOf(store, row.id).map(({ passed, by, at }) => ({ passed, by, at })),
    }));
