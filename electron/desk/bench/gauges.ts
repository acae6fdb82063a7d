import { eq } from 'drizzle-orm';
import { gaugeById, gaugeList, gaugeRow, readingsBy } from '../../../db/queries/bench.ts';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { checksOf } from '../../../db/queries/gauge-checks.ts';
import { shopOf } from '../../../db/queries/office.ts';
import { testRunsBy } from '../../../db/queries/test-runs.ts';
import { gaugeCheck, gauge as gaugeTable } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import type {
  GaugeRecord,
  TouchedReading,
  TouchedRun,
} from '../../../shared/contract/bench/index.ts';
import { calibrationOf, doubtfulSpans, inDoubt } from '../../../shared/work/bench/gauge-checks.ts';
import { speedWords } from '../../../shared/work/bench/run-speed.ts';
import { dateIn } from '../../../shared/work/calendar.ts';
import { FEATURE_LABELS } from '../../../shared/work/features.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';

export const gauges = os.bench.gauges.handler(({ context: { store, now } }) =>
  gaugeList(store.read, dateIn(shopOf(store.read).timeZone, now())),
);

const recordOf = (store: ReadStore, gaugeId: string, today: string): GaugeRecord => ({
  gauge: found(gaugeById(store, gaugeId, today), 'gauge'),
  checks: checksOf(store, gaugeId).toReversed(),
});

export const gauge = os.bench.gauge.handler(({ input, context: { store, now } }) =>
  recordOf(store.read, input.gaugeId, dateIn(shopOf(store.read).timeZone, now())),
);

export const addGauge = os.bench.addGauge.handler(
  ({ input: { by, ...facts }, context, errors, path }) =>
    write(context, path, by, ({ store, today, newId, note }) => {
      if (store.select().from(gaugeTable).where(eq(gaugeTable.name, facts.name)).get())
        throw errors.GAUGE_NAME_TAKEN();
      const id = newId();
      store
        .insert(gaugeTable)
        .values({ id, ...facts })
        .run();
      note({ gauge: id, name: facts.name });
      return found(gaugeById(store, id, today), 'gauge');
    }),
);

export const measureWrench = os.bench.measureWrench.handler(
  ({ input: { by, gaugeId, length }, context, path }) =>
    write(context, path, by, ({ store, today, note }) => {
      const { name, kind, length: before } = found(gaugeRow(store, gaugeId), 'gauge');
      if (kind !== 'torque-wrench')
        throw badInput([
          { path: 'gaugeId', message: `${name} is no torque wrench. Choose one that is.` },
        ]);
      store.update(gaugeTable).set({ length }).where(eq(gaugeTable.id, gaugeId)).run();
      note({ gauge: gaugeId, length, before });
      return recordOf(store, gaugeId, today);
    }),
);

export const checkGauge = os.bench.checkGauge.handler(
  ({ input: { by, ...check }, context, path }) =>
    write(context, path, by, ({ store, staff, at, today, newId, note }) => {
      found(gaugeRow(store, check.gaugeId), 'gauge');
      if (check.on > today)
        throw badInput([{ path: 'on', message: 'A check is entered once it has been made.' }]);
      store
        .insert(gaugeCheck)
        .values({ id: newId(), ...check, by: staff.id, at })
        .run();
      note({ gauge: check.gaugeId, on: check.on, good: check.good, found: check.note });
      return recordOf(store, check.gaugeId, today);
    }),
);

/** What the gauge touched: in the span that its last bad check puts in doubt, else since it was good. */
export const gaugeReadings = os.bench.gaugeReadings.handler(({ input, context }) => {
  const store = context.store.read;
  const register = found(gaugeRow(store, input.gaugeId), 'gauge');
  const checks = checksOf(store, input.gaugeId);
  const doubtful = doubtfulSpans(register, checks).at(-1);
  const span = doubtful ?? {
    since: calibrationOf(register, checks).calibratedOn,
    badOn: null,
    until: null,
  };
  const { timeZone } = shopOf(store);
  const inSpan = ({ at }: { at: string }) =>
    inDoubt(dateIn(timeZone, at), { ...span, badOn: span.badOn ?? '' });
  const readings = readingsBy(store, input.gaugeId).filter(({ reading }) => inSpan(reading));
  const runs = testRunsBy(store, input.gaugeId).filter(({ run }) => inSpan(run));
  const cards = new Map(
    [...new Set([...readings, ...runs].map(({ jobId }) => jobId))].map((id) => [
      id,
      found(dossierOf(store, id), 'job'),
    ]),
  );
  return {
    ...span,
    readings: readings.map(({ jobId, reading }): TouchedReading => {
      const job = found(cards.get(jobId), 'job');
      return {
        ...reading,
        jobId: job.id,
        jobCode: job.code,
        machine: job.machine,
        featureLabel: FEATURE_LABELS[reading.feature],
        handedOver: job.state === 'handed-over',
      };
    }),
    runs: runs.map(({ jobId, run }): TouchedRun => {
      const job = found(cards.get(jobId), 'job');
      return {
        id: run.id,
        jobId: job.id,
        jobCode: job.code,
        machine: job.machine,
        handedOver: job.state === 'handed-over',
        passed: run.passed,
        speeds: run.speeds.map((speed) => ({
          label: FEATURE_LABELS[speed.feature],
          words: speedWords(speed),
        })),
        by: run.by,
        at: run.at,
      };
    }),
  };
});
