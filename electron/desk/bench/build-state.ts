import { holdPointEventsOf } from '../../../db/queries/bench.ts';
import { movesOf } from '../../../db/queries/counter/jobs.ts';
import { cycleOfModel } from '../../../db/queries/specbook.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { HoldPointOnSheet, Reading } from '../../../shared/contract/bench/index.ts';
import type { JobDossier } from '../../../shared/contract/counter.ts';
import { FEATURE_LABELS } from '../../../shared/work/features.ts';
import {
  type HoldPoint,
  holdPointState,
  holdPointsOf,
  missingReadings,
  openHoldPoints,
} from '../../../shared/work/hold-points.ts';
import type { Cycle } from '../../../shared/work/vocabulary.ts';

/** The cycle of a job's engine; four-stroke until the spec book says otherwise: its list is the longer. */
export function cycleOf(store: ReadStore, job: JobDossier): Cycle {
  const { engineModelId } = job.machineDetails.engine;
  const cycle = engineModelId === null ? undefined : cycleOfModel(store, engineModelId);
  return cycle ?? 'four-stroke';
}

/** The points still open; none as long as the engine was never on the bench to be built. */
export function openPointsOf(store: ReadStore, job: JobDossier): HoldPoint[] {
  const built = movesOf(store, job.id).some(({ to }) => to === 'on-the-bench');
  return built ? openHoldPoints(cycleOf(store, job), holdPointEventsOf(store, job.id)) : [];
}

// A point asks for readings of the finished build: what came in worn proves nothing.
export const finals = (readings: readonly Reading[]) =>
  new Set(
    readings
      .filter(({ phase, superseded }) => phase === 'final' && !superseded)
      .map(({ feature }) => feature),
  );

/** The hold points of a job as the sheet shows them. */
export function holdPointsOnSheet(
  store: ReadStore,
  jobId: string,
  cycle: Cycle,
  readings: readonly Reading[],
): HoldPointOnSheet[] {
  const events = holdPointEventsOf(store, jobId);
  const measured = finals(readings);
  return holdPointsOf(cycle).map((point) => {
    const last = events.findLast(({ key }) => key === point.key);
    return {
      key: point.key,
      label: point.label,
      caution: point.caution,
      state: holdPointState(point.key, events),
      missing: missingReadings(point, measured).map((feature) => FEATURE_LABELS[feature]),
      by: last?.by ?? '',
      at: last?.at ?? null,
      reason: last?.reason ?? '',
    };
  });
}
