import {
  type EngineShape,
  type Feature,
  MEASURED_FEATURES,
  type MeasuredFeature,
  measuredFeaturesOf,
  placesOf,
} from '../features.ts';
import type { BuildStep } from './build-steps.ts';
import { type PartDecision, renewalsOf } from './deciding/renewed-parts.ts';
import type { MissingReading } from './hold-points.ts';

/**
 * The final readings that are owed: what this job has machined or replaced is measured at every place before
 * it goes out, since nobody knows what the machine shop or the maker delivered until somebody put a gauge to it.
 */

export interface DatedDecision extends PartDecision {
  at: string;
}

export interface FinalReading {
  feature: MeasuredFeature;
  place: string;
  at: string;
}

export interface OwedFacts {
  shape: EngineShape;
  /** Decisions that stand. */
  standing: readonly DatedDecision[];
  /** Features that this engine is measured on: those that the spec book knows, and those of every rebuild. */
  asked: readonly Feature[];
  /** Final readings that stand. */
  finals: readonly FinalReading[];
}

/** The features that owe final readings because of what was decided, in the order of the work. */
export const owingFeatures = ({
  shape,
  standing,
  asked,
}: Pick<OwedFacts, 'shape' | 'standing' | 'asked'>): MeasuredFeature[] =>
  MEASURED_FEATURES.filter(
    (feature) =>
      asked.includes(feature) &&
      measuredFeaturesOf(shape).includes(feature) &&
      placesOf(feature, shape).some(
        ({ cylinder }) => renewalsOf(feature, cylinder, standing).length > 0,
      ),
  );

/**
 * What is owed and not there yet, by feature; a feature without a reading at any of its owing places comes
 * without places. A reading from before the decision is one of the part that is gone.
 */
export function owedReadings(facts: OwedFacts): MissingReading[] {
  const { shape, standing, finals } = facts;
  return owingFeatures(facts).flatMap((feature) => {
    const places = placesOf(feature, shape);
    const owing = places.flatMap((place) => {
      const since = renewalsOf(feature, place.cylinder, standing)
        .map(({ at }) => at)
        .toSorted()
        .at(-1);
      return since === undefined ? [] : [{ ...place, since }];
    });
    const missing = owing.filter(
      ({ key, since }) =>
        !finals.some(
          (reading) => reading.feature === feature && reading.place === key && reading.at >= since,
        ),
    );
    if (missing.length === 0) return [];
    const all = missing.length === places.length;
    return [{ feature, places: all ? [] : missing.map(({ label }) => label) }];
  });
}

export const FINAL_READINGS_STEP = 'final-readings';

/**
 * The steps of a job with a hold point for the final readings that it owes, before the engine is closed: ahead
 * of the first step that tightens or runs anything. A job that owes none has none.
 */
export function withFinalReadings(
  steps: readonly BuildStep[],
  owing: readonly MeasuredFeature[],
): BuildStep[] {
  if (owing.length === 0 || steps.some(({ key }) => key === FINAL_READINGS_STEP)) return [...steps];
  const closing = steps.findIndex(
    ({ key, kind }) => key === 'head-gasket' || kind === 'torque' || kind === 'run',
  );
  return steps.toSpliced(closing < 0 ? steps.length : closing, 0, {
    key: FINAL_READINGS_STEP,
    kind: 'measure',
    label: 'Final readings taken of what was machined or replaced',
    caution: '',
    hold: true,
    needs: [...owing],
    wires: [],
    unit: '',
    grade: false,
    note: 'Every place, as it goes into the engine, held to the limits of a new part.',
  });
}
