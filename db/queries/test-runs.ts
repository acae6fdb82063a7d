import { desc, eq, sql } from 'drizzle-orm';
import { SpeedFound, type TestRun } from '../../shared/contract/bench/index.ts';
import { GaugeId } from '../../shared/contract/ids.ts';
import { prepared } from '../prepared.ts';
import { staff, testRun } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';

const rows = (store: ReadStore) =>
  store
    .select({ run: testRun, byName: staff.name })
    .from(testRun)
    .innerJoin(staff, eq(staff.id, testRun.by));

const asTestRun = ({
  run: { id, findings, passed, at },
  byName,
}: ReturnType<ReturnType<typeof rows>['all']>[number]): TestRun => {
  const {
    speeds = [],
    against = [],
    tachometer = null,
    fuelTight = null,
    chainBrake = null,
    bladeStop = null,
    notFittedWhy = '',
    ...found
  } = findings;
  return {
    id,
    findings: {
      ...found,
      fuelTight,
      chainBrake,
      bladeStop,
      notFittedWhy,
      tachometer: tachometer === null ? null : GaugeId.parse(tachometer),
    },
    against,
    speeds: speeds.map((speed) => SpeedFound.parse(speed)),
    passed,
    at,
    by: byName,
  };
};

const rowsOfJob = prepared((store) =>
  rows(store)
    .where(eq(testRun.jobId, sql.placeholder('jobId')))
    .orderBy(desc(testRun.at), desc(testRun.id))
    .prepare(),
);

/** A job's test runs, the latest first. */
export const testRunsOf = (store: ReadStore, jobId: string): TestRun[] =>
  rowsOfJob(store).all({ jobId }).map(asTestRun);

/** The runs whose speeds were read from this tachometer, the latest first, each with its job. */
export const testRunsBy = (store: ReadStore, gaugeId: string): { jobId: string; run: TestRun }[] =>
  rows(store)
    .where(sql`json_extract(${testRun.findings}, '$.tachometer') = ${gaugeId}`)
    .orderBy(desc(testRun.at), desc(testRun.id))
    .all()
    .map((row) => ({ jobId: row.run.jobId, run: asTestRun(row) }));
