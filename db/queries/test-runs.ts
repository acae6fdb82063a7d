import { desc, eq } from 'drizzle-orm';
import { SpeedFound, type TestRun } from '../../shared/contract/bench/index.ts';
import { GaugeId } from '../../shared/contract/ids.ts';
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
    .map(({ run: { id, findings, passed, at }, byName }) => {
      const { speeds = [], tachometer = null, ...found } = findings;
      return {
        id,
        findings: { ...found, tachometer: tachometer === null ? null : GaugeId.parse(tachometer) },
        speeds: speeds.map((speed) => SpeedFound.parse(speed)),
        passed,
        at,
        by: byName,
      };
    });
