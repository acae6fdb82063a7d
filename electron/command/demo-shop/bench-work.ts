import { DEMO_ENGINES, type EngineKey } from '../../../db/demo/engines/index.ts';
import type { Scope } from '../../../db/demo/jobs/index.ts';
import {
  type DemoReading,
  finalReadings,
  receivedReadings,
  shapeOfDemo,
} from '../../../db/demo/measured.ts';
import { holdPointsOf } from '../../../shared/work/bench/hold-points.ts';
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

function featuresOf(scope: Scope, engine: EngineKey): readonly MeasuredFeature[] {
  if (scope === 'rebuild') return measuredFeaturesOf(shapeOfDemo(DEMO_ENGINES[engine]));
  return scope === 'top-end' ? TOP_END : SERVICE;
}

/** Points of what stays closed when only the top, or nothing, is opened. */
const CRANKCASE = ['rod-cap', 'ring-gaps', 'timing-marks'];
const HEAD = ['head-gasket', 'head-bolts'];

const closedPoints = (scope: Scope): readonly string[] =>
  scope === 'rebuild' ? [] : scope === 'top-end' ? CRANKCASE : [...CRANKCASE, ...HEAD];

/** Millilitres, to the mark of every engine of the demo. */
const OIL_FILLED = '600';

export interface BenchJob {
  jobId: string;
  engine: EngineKey;
  /** Who measures and builds. */
  by: string;
  scope: Scope;
  machine: MachineKind;
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
      features: featuresOf(job.scope, job.engine).filter(
        (feature) => !stillToMeasure.includes(feature),
      ),
      ...worn,
    }),
  );

/**
 * Measures what is built, runs it at the end, and passes each hold point as soon as its readings are there; the points of what
 * stayed closed are overridden. Whoever is part of the way through stops at the first point that is not due.
 */
export async function build(
  shop: OpenShop,
  job: BenchJob,
  { stayedClosed = '', soFar = 1, readings = buildReadings(job) }: Building,
): Promise<void> {
  const { desk } = shop;
  const { jobId, by } = job;
  const end = Math.round(readings.length * soFar);
  const closed = closedPoints(job.scope);
  const points = holdPointsOf(DEMO_ENGINES[job.engine].cycle);
  let taken = 0;
  const takeUpTo = async (wanted: number) => {
    await record(shop, job, readings.slice(taken, Math.min(wanted, end)));
    taken = Math.max(taken, Math.min(wanted, end));
  };
  for (const { key, needs } of points) {
    if (closed.includes(key)) {
      await desk.bench.overrideHoldPoint({ by, jobId, key, reason: stayedClosed });
      continue;
    }
    const last = key === points.at(-1)?.key;
    const due = last
      ? readings.length
      : readings.findLastIndex(({ feature }) => needs.includes(feature)) + 1;
    await takeUpTo(due);
    if (due > end) return;
    if (last) await runEngine(shop, job);
    await desk.bench.passHoldPoint({ by, jobId, key, quantity: key === 'oil' ? OIL_FILLED : '' });
  }
}

interface Building {
  stayedClosed?: string;
  /** Share of the readings that are there so far. */
  soFar?: number;
  readings?: readonly DemoReading[];
}

export const buildReadings = ({ engine, scope, seed }: BenchJob): DemoReading[] =>
  finalReadings({ engine: DEMO_ENGINES[engine], seed, features: featuresOf(scope, engine) });
