import { earlierReadings, readingsOf } from '../../../db/queries/bench.ts';
import { sizesOfJob } from '../../../db/queries/decisions.ts';
import { specificationsById } from '../../../db/queries/specbook.ts';
import type { ReadStore } from '../../../db/store.ts';
import type {
  BenchSheet,
  DerivedOnSheet,
  FeatureOnSheet,
  Reading,
} from '../../../shared/contract/bench/index.ts';
import { jobCode } from '../../../shared/contract/ids.ts';
import type { Specification } from '../../../shared/contract/specbook.ts';
import {
  type JobSizes,
  limitsOfPlace,
  stepInPhase,
} from '../../../shared/work/bench/deciding/decided-limits.ts';
import { isRenewed, withoutWear } from '../../../shared/work/bench/deciding/renewed-parts.ts';
import {
  type DerivedValue,
  derivedFrom,
  type StandingReading,
} from '../../../shared/work/bench/derived.ts';
import { verdictOnSpread } from '../../../shared/work/bench/derived-verdict.ts';
import { FEATURE_HINTS } from '../../../shared/work/bench/feature-hints.ts';
import { acceptedBand, limitsAt } from '../../../shared/work/bench/reading-verdict.ts';
import {
  CORE_FEATURES,
  type EngineShape,
  FEATURE_LABELS,
  FEATURE_UNITS,
  type Feature,
  MEASURED_FEATURES,
  measuredFeaturesOf,
  placesOf,
} from '../../../shared/work/features.ts';
import { bookOf } from './book.ts';
import { holdPointsOnSheet } from './build-state.ts';
import { formerPlaces } from './former-places.ts';

const forFeature = (specifications: readonly Specification[], feature: Feature) =>
  specifications.find((specification) => specification.feature === feature) ?? null;

/** Readings that stand, the latest of each place and phase, as the derived values want them. */
function standing(readings: readonly Reading[], shape: EngineShape): StandingReading[] {
  const cylinders = new Map(
    measuredFeaturesOf(shape).flatMap((feature) =>
      placesOf(feature, shape).map((place) => [`${feature} ${place.key}`, place.cylinder] as const),
    ),
  );
  const latest = new Map<string, StandingReading>();
  for (const reading of readings) {
    const cylinder = cylinders.get(`${reading.feature} ${reading.place}`);
    if (reading.superseded || cylinder === undefined) continue;
    latest.set(`${reading.feature} ${reading.place} ${reading.phase}`, {
      feature: reading.feature,
      place: reading.place,
      cylinder,
      phase: reading.phase,
      value: reading.valueBase,
      uncertainty: reading.uncertaintyBase,
    });
  }
  return [...latest.values()];
}

const onSheet = (
  derived: DerivedValue,
  specifications: readonly Specification[],
  standing: JobSizes['standing'],
): DerivedOnSheet => {
  const specification = forFeature(specifications, derived.feature);
  const renewed = isRenewed(derived.feature, derived.cylinder, standing);
  return {
    ...derived,
    label: FEATURE_LABELS[derived.feature],
    specification,
    renewed,
    verdict: verdictOnSpread(
      derived,
      acceptedBand(
        derived.feature,
        withoutWear(limitsAt(specification, 1), renewed, derived.phase),
        derived.phase,
      ),
    ),
  };
};

/** Everything that the bench sees of a job. */
export function sheetOf(store: ReadStore, jobId: string): BenchSheet {
  const { job, model, specifications, shape } = bookOf(store, jobId);
  const readings = readingsOf(store, jobId);
  const sizes = sizesOfJob(store, { engineId: job.machineDetails.engine.id, jobId });
  const used = specificationsById(
    store,
    readings.flatMap(({ specificationId }) => specificationId ?? []),
  );
  const earlier = Map.groupBy(
    earlierReadings(store, job.machineDetails.engine.id, jobId),
    ({ feature, place }) => `${feature} ${place}`,
  );
  const measured = new Set(readings.map(({ feature }) => feature));
  const own = measuredFeaturesOf(shape);
  const listed = MEASURED_FEATURES.filter((each) => own.includes(each) || measured.has(each));
  const features = listed.map((feature): FeatureOnSheet => {
    const specification =
      forFeature(specifications, feature) ?? used.find((old) => old.feature === feature) ?? null;
    const present = own.includes(feature) ? placesOf(feature, shape) : [];
    return {
      feature,
      label: FEATURE_LABELS[feature],
      hint: FEATURE_HINTS[feature],
      asked:
        CORE_FEATURES.includes(feature) ||
        specification !== null ||
        readings.some((reading) => reading.feature === feature),
      specification,
      unit: specification?.unit ?? FEATURE_UNITS[feature],
      places: [...present, ...formerPlaces(feature, present, readings, used)].map((place) => ({
        ...place,
        ...limitsOfPlace(feature, place.cylinder, limitsAt(specification, place.share), sizes),
        readings: readings.filter(
          (reading) => reading.feature === feature && reading.place === place.key,
        ),
        earlier: (earlier.get(`${feature} ${place.key}`) ?? [])
          .slice(0, 2)
          .map(({ phase, text, unit, valueBase, at, jobNumber }) => ({
            jobCode: jobCode(jobNumber),
            phase,
            text,
            unit,
            valueBase,
            at,
          })),
      })),
    };
  });
  return {
    jobId: job.id,
    engineModel: model,
    cycle: shape.cycle,
    cylinders: shape.cylinders,
    features,
    derived: derivedFrom(standing(readings, shape), {
      bore: model?.bore ?? null,
      stroke: model?.stroke ?? null,
      cylinders: shape.cylinders,
      boreStep: (cylinder, phase) => stepInPhase('bore', cylinder, phase, sizes),
    }).map((value) => onSheet(value, specifications, sizes.standing)),
    holdPoints: holdPointsOnSheet(store, job),
    closed: job.state === 'handed-over',
  };
}
