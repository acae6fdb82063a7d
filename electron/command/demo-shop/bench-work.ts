import { DEMO_ENGINES, type EngineKey } from '../../../db/demo/engines/index.ts';
import type { Scope } from '../../../db/demo/jobs/index.ts';
import {
  type DemoReading,
  finalReadings,
  receivedReadings,
  shapeOfDemo,
} from '../../../db/demo/measured.ts';
import { type MeasuredFeature, measuredFeaturesOf } from '../../../shared/work/features.ts';
import { holdPointsOf } from '../../../shared/work/hold-points.ts';
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

export function featuresOf(scope: Scope, engine: EngineKey): readonly MeasuredFeature[] {
  if (scope === 'rebuild') return measuredFeaturesOf(shapeOfDemo(DEMO_ENGINES[engine]));
  return scope === 'top-end' ? TOP_END : SERVICE;
}

/** Points of what stays closed when only the top, or nothing, is opened. */
const CRANKCASE = ['rod-cap', 'ring-gaps', 'timing-marks'];
const HEAD = ['head-gasket', 'head-bolts'];

const closedPoints = (scope: Scope): readonly string[] =>
  scope === 'rebuild' ? [] : scope === 'top-end' ? CRANKCASE : [...CRANKCASE, ...HEAD];

export interface BenchJob {
  jobId: string;
  engine: EngineKey;
  /** Who measures and builds. */
  by: string;
  scope: Scope;
  /** The same job has the same readings each time. */
  seed: string;
}

export async function record(
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
  worn: { wear: number; worstCylinder?: number },
): Promise<void> =>
  record(
    shop,
    job,
    receivedReadings({
      engine: DEMO_ENGINES[job.engine],
      seed: job.seed,
      features: featuresOf(job.scope, job.engine),
      ...worn,
    }),
  );

/** Measures what was built and passes its hold points; those of what stayed closed are overridden. */
export async function build(
  shop: OpenShop,
  job: BenchJob,
  { stayedClosed = '', soFar = 1 }: { stayedClosed?: string; soFar?: number },
): Promise<void> {
  const { desk } = shop;
  const engine = DEMO_ENGINES[job.engine];
  const readings = finalReadings({
    engine,
    seed: job.seed,
    features: featuresOf(job.scope, job.engine),
  });
  const done = readings.slice(0, Math.round(readings.length * soFar));
  await record(shop, job, done);
  const measured = new Set(done.map(({ feature }) => feature));
  const closed = closedPoints(job.scope);
  const { jobId, by } = job;
  for (const { key, needs } of holdPointsOf(engine.cycle)) {
    if (closed.includes(key))
      await desk.bench.overrideHoldPoint({ by, jobId, key, reason: stayedClosed });
    // Whoever is half way through has passed what the readings so far allow, and nothing after it.
    else if (needs.every((feature) => measured.has(feature)))
      await desk.bench.passHoldPoint({ by, jobId, key });
    else if (soFar < 1) return;
  }
}
