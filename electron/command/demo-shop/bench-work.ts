import { DEMO_ENGINES, type EngineKey } from '../../../db/demo/engines/index.ts';
import type { Scope } from '../../../db/demo/jobs/index.ts';
import {
  type DemoReading,
  finalReadings,
  receivedReadings,
  shapeOfDemo,
} from '../../../db/demo/measured.ts';
import type { WorkArea, WorkKind } from '../../../shared/work/bench/work/kinds-of-work.ts';
import { type MeasuredFeature, measuredFeaturesOf } from '../../../shared/work/features.ts';
import type { MachineKind } from '../../../shared/work/vocabulary.ts';
import { runEngine } from './run-work.ts';
import { idOf, type OpenShop } from './set-up.ts';

/** What is measured, by how much of the engine is opened. */
const SERVICE: readonly MeasuredFeature[] = [
  'coil-air-gap',
  'valve-lash-intake',
  'valve-lash-exhaust',
  'plug-gap',
];
const TOP_END: readonly MeasuredFeature[] = [
  ...SERVICE,
  'head-flatness',
  'head-bolt-torque',
  'compression',
  'coil-resistance',
];

function featuresOf({
  scope,
  engine,
  touched = [],
}: Pick<BenchJob, 'scope' | 'engine' | 'touched'>): readonly MeasuredFeature[] {
  if (scope === 'rebuild') return measuredFeaturesOf(shapeOfDemo(DEMO_ENGINES[engine]));
  if (scope === 'top-end') return TOP_END;
  return touched.includes('ignition') ? [...SERVICE, 'flywheel-nut-torque'] : SERVICE;
}

/** The kind of work that a scope is, and what it touches where the story doesn't say. */
const WORK: Record<Scope, { work: WorkKind; touched: WorkArea[] }> = {
  rebuild: { work: 'rebuild', touched: [] },
  'top-end': { work: 'repair', touched: ['head', 'service'] },
  service: { work: 'service', touched: [] },
};

export interface BenchJob {
  jobId: string;
  engine: EngineKey;
  /** Who measures and builds. */
  by: string;
  scope: Scope;
  machine: MachineKind;
  /** What a repair touches, where it isn't the head. */
  touched?: readonly WorkArea[];
  /** The same job has the same readings each time. */
  seed: string;
}

async function record(
  { desk, gauges }: OpenShop,
  { jobId, by }: Pick<BenchJob, 'jobId' | 'by'>,
  readings: readonly DemoReading[],
): Promise<void> {
  // A worn part may lie just where a slip would put it; here the gauge really said so.
  for (const { gauge, ...reading } of readings)
    await desk.bench.record({
      by,
      jobId,
      ...reading,
      gaugeId: idOf(gauges, gauge),
      keepAsTyped: reading.phase === 'as-received',
    });
}

export const measureAsReceived = (
  shop: OpenShop,
  job: BenchJob,
  {
    stillToMeasure = [],
    ...worn
  }: { wear: number; worstCylinder?: number; stillToMeasure?: readonly MeasuredFeature[] },
): Promise<void> =>
  record(
    shop,
    job,
    receivedReadings({
      engine: DEMO_ENGINES[job.engine],
      seed: job.seed,
      features: featuresOf(job).filter((feature) => !stillToMeasure.includes(feature)),
      ...worn,
    }),
  );

/** Says what kind of work it is, before the first of its steps is done. */
const sayWork = async (
  { desk }: OpenShop,
  { jobId, by, scope, touched = [] }: BenchJob,
): Promise<void> => {
  const said =
    touched.length > 0 ? { work: 'repair' as const, touched: [...touched] } : WORK[scope];
  await desk.bench.sayWork({ by, jobId, ...said });
};

/**
 * Measures what is built, runs it at the end, and passes each hold point as soon as its readings are there.
 * Whoever is part of the way through stops at the first point that is not due.
 */
export async function build(
  shop: OpenShop,
  job: BenchJob,
  { walkedPast = {}, soFar = 1, readings = buildReadings(job) }: Building,
): Promise<void> {
  const { desk } = shop;
  const { jobId, by } = job;
  await sayWork(shop, job);
  if (soFar === 0) return;
  const end = Math.round(readings.length * soFar);
  const { steps } = await desk.bench.build({ jobId });
  const points = steps.filter(({ kind }) => kind !== 'photo');
  let taken = 0;
  const takeUpTo = async (wanted: number) => {
    await record(shop, job, readings.slice(taken, Math.min(wanted, end)));
    taken = Math.max(taken, Math.min(wanted, end));
  };
  for (const { key, needs } of points) {
    const last = key === points.at(-1)?.key;
    const due = last
      ? readings.length
      : readings.findLastIndex(({ feature }) => needs.includes(feature)) + 1;
    await takeUpTo(due);
    if (due > end) return;
    const reason = walkedPast[key];
    if (reason !== undefined) {
      await desk.bench.overrideHoldPoint({ by, jobId, key, reason });
      continue;
    }
    if (last) await runEngine(shop, job);
    await desk.bench.passHoldPoint({ by, jobId, key, ...filledIn(key, job) });
  }
}

/** What a step asks for besides a tick. */
function filledIn(key: string, { engine }: BenchJob): { quantity?: string; grade?: string } {
  const { oilAmount, oilGrade } = DEMO_ENGINES[engine];
  if (key === 'oil') return { quantity: String(oilAmount), grade: oilGrade };
  // A tight crankcase loses next to nothing in a minute.
  if (key === 'pressure-test') return { quantity: '48' };
  return key === 'vacuum-test' ? { quantity: '47' } : {};
}

interface Building {
  walkedPast?: Readonly<Record<string, string>>;
  /** Share of the readings that are there so far. */
  soFar?: number;
  readings?: readonly DemoReading[];
}

export const buildReadings = (job: BenchJob): DemoReading[] =>
  finalReadings({
    engine: DEMO_ENGINES[job.engine],
    seed: job.seed,
    features: featuresOf(job),
  });
