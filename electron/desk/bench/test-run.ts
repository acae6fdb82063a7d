import { gaugeById } from '../../../db/queries/bench.ts';
import { testRunsOf } from '../../../db/queries/test-runs.ts';
import { testRun as testRunTable } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { TestRuns } from '../../../shared/contract/bench/index.ts';
import { dimensionOf } from '../../../shared/trade/index.ts';
import { unsafeToPass } from '../../../shared/work/bench/run-safety.ts';
import { judgeSpeeds, speedBand } from '../../../shared/work/bench/run-speed.ts';
import { RUN_FEATURES } from '../../../shared/work/features.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';
import { bookOf } from './book.ts';

function runsOf(store: ReadStore, jobId: string): TestRuns {
  const { job, specifications, shape, compression } = bookOf(store, jobId);
  return {
    jobId: job.id,
    machine: job.machineDetails.kind,
    cycle: shape.cycle,
    cylinders: shape.cylinders,
    compression,
    speeds: specifications.flatMap((each) => {
      const feature = RUN_FEATURES.find((run) => run === each.feature);
      return feature === undefined ? [] : [{ ...each, feature }];
    }),
    closed: job.state === 'handed-over',
    runs: testRunsOf(store, jobId),
  };
}

export const testRuns = os.bench.testRuns.handler(({ input, context }) =>
  runsOf(context.store.read, input.jobId),
);

export const recordTestRun = os.bench.recordTestRun.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, today, newId, note }) => {
    const { jobId, findings, passed } = input;
    const { closed, machine, cycle, cylinders, speeds: book } = runsOf(store, jobId);
    if (closed) throw errors.JOB_CLOSED();
    const wrong = (['compression', 'leakDown'] as const).filter(
      (key) => findings[key].length > 0 && findings[key].length !== cylinders,
    );
    if (wrong.length > 0)
      throw badInput(
        wrong.map((key) => ({
          path: `findings.${key}`,
          message: `This engine has ${cylinders === 1 ? 'one cylinder' : `${cylinders} cylinders`}: give one figure for each, or leave them empty.`,
        })),
      );
    const tachometer =
      findings.tachometer === null
        ? null
        : found(gaugeById(store, findings.tachometer, today), 'gauge');
    if (tachometer !== null && dimensionOf(tachometer.unit) !== dimensionOf('1/min'))
      throw badInput([
        {
          path: 'findings.tachometer',
          message: `${tachometer.name} does not measure speed. Choose a tachometer.`,
        },
      ]);
    const speeds = judgeSpeeds(findings, book.map(speedBand), tachometer);
    const because = unsafeToPass(findings, {
      machine,
      cycle,
      speeds,
      known: book.map(({ feature }) => feature),
    });
    if (passed && because.length > 0) throw errors.UNSAFE_TO_PASS({ data: { because } });
    const id = newId();
    store
      .insert(testRunTable)
      .values({
        id,
        jobId,
        findings: { ...findings, speeds, against: because },
        passed,
        by: staff.id,
        at,
      })
      .run();
    note({ job: jobId, testRun: id, passed, notPassedFor: because.join('; ') });
    return runsOf(store, jobId);
  }),
);
