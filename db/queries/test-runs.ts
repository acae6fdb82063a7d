import { desc, eq } from 'drizzle-orm';
import type { TestRun } from '../../shared/contract/bench/index.ts';
import { staff, testRun } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';

/** A job's test runs, the latest first. */
export const testRunsOf = (store: ReadStore, jobId: string): TestRun[] =>
  store
    .select({ run: testRun, byName: staff.name })
    .from(testRun)
    .innerJoin(staff, eq(staff.id, testRun.by))
    .where(eq(testRun.jobId, jobId))
    .orderBy(desc(testRun.at), desc(testRun.id))
    .all()
    .map(({ run: { id, findings, passed, at }, byName }) => ({
      id,
      findings,
      passed,
      at,
      by: byName,
    }));
