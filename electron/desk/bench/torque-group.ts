import { pullsOf } from '../../../db/queries/build.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { TorqueWalk } from '../../../shared/contract/bench/index.ts';
import type { JobId } from '../../../shared/contract/ids.ts';
import type { Specification } from '../../../shared/contract/specbook.ts';
import { aim, convert, dimensionOf, torqueStages } from '../../../shared/trade/index.ts';
import {
  outOfTurn,
  type Pull,
  ROUND_BEGUN,
  torqueWalk as walk,
} from '../../../shared/work/bench/torque-walk.ts';
import {
  FEATURE_LABELS,
  FEATURE_UNITS,
  type MeasuredFeature,
  placesOf,
} from '../../../shared/work/features.ts';
import { classWords, threadWords } from '../../../shared/work/specbook/fastener-words.ts';
import { bookOf } from './book.ts';

export interface Which {
  jobId: JobId;
  feature: MeasuredFeature;
  cylinder: number;
}

/** Bolts of the second head and on are kept with its number before theirs: 204 is bolt 4 of head 3. */
const HEAD = 100;
export const keptBolt = (cylinder: number, bolt: number): number => (cylinder - 1) * HEAD + bolt;
const headOf = (kept: number): number => Math.floor(kept / HEAD) + 1;

/** The final torque in the unit of the source: what it aims at. */
function finalTorque({ lowBase, highBase, aimBase, unit, feature }: Specification): number | null {
  if (lowBase === null && highBase === null && aimBase === null) return null;
  const base =
    aimBase ??
    (lowBase === null || highBase === null
      ? (lowBase ?? highBase)
      : aim({ low: lowBase, high: highBase }));
  return base === null ? null : Number(convert(base, FEATURE_UNITS[feature], unit).toPrecision(6));
}

/** What is to be tightened, by the spec book as it stands; null when the book does not say enough. */
export function groupOf(store: ReadStore, { jobId, feature, cylinder }: Which) {
  const book = bookOf(store, jobId);
  const specification = book.specifications.find((each) => each.feature === feature);
  const fastener = specification?.fastener ?? null;
  const final = specification ? finalTorque(specification) : null;
  const places = placesOf(feature, book.shape).filter((place) => place.cylinder === cylinder);
  if (specification === undefined || fastener === null || final === null || places.length === 0)
    return null;
  if (dimensionOf(specification.unit) !== dimensionOf('N·m')) return null;
  return {
    ...book,
    specification,
    fastener,
    places,
    targets: torqueStages(final, fastener.stages),
  };
}

export type Group = NonNullable<ReturnType<typeof groupOf>>;

function pulledSoFar(store: ReadStore, { jobId, feature, cylinder }: Which) {
  return pullsOf(store, jobId, feature)
    .filter(({ pull }) => headOf(pull.bolt) === cylinder)
    .map(({ pull, ...who }) => ({ ...who, pull: { ...pull, bolt: pull.bolt % HEAD } }));
}

export function walkOf(store: ReadStore, which: Which, group: Group): TorqueWalk {
  const { fastener, specification, targets, job, shape } = group;
  const rows = pulledSoFar(store, which);
  const pulls = rows.map(({ pull }) => pull);
  const odd = new Set<Pull>(oddPulls(fastener, pulls));
  return {
    jobId: job.id,
    feature: which.feature,
    label: FEATURE_LABELS[which.feature],
    cylinder: which.cylinder,
    cylinders: Math.max(...placesOf(which.feature, shape).map(({ cylinder }) => cylinder)),
    count: fastener.count,
    pattern: fastener.pattern,
    thread: `${threadWords(fastener)}, ${classWords(fastener.propertyClass)}`,
    condition: specification.condition,
    stages: fastener.stages.map((share, index) => ({ share, target: targets[index] ?? 0 })),
    unit: specification.unit,
    ...walk(fastener, pulls),
    pulls: rows
      .filter(({ pull }) => pull.stage !== ROUND_BEGUN)
      .map(({ pull, wrench, byName }) => ({
        round: pull.round,
        stage: pull.stage,
        bolt: pull.bolt,
        outOfOrder: odd.has(pull),
        wrench: wrench ?? '',
        setting: pull.setting,
        settingUnit: pull.settingUnit,
        extension: pull.extension,
        angle: pull.angle,
        wrenchLength: pull.wrenchLength,
        by: byName,
        at: pull.at,
      })),
    closed: job.state === 'handed-over',
  };
}

/** The pulls of every round that were made out of their order. */
const oddPulls = (fastener: Group['fastener'], pulls: readonly Pull[]): Pull[] =>
  [...new Set(pulls.map(({ round }) => round))].flatMap((round) =>
    outOfTurn(
      fastener,
      pulls.filter((pull) => pull.round === round),
    ),
  );

/** Whether a walk of these features was begun on any head and has bolts to go. */
export const tighteningUnderWay = (
  store: ReadStore,
  jobId: JobId,
  features: readonly MeasuredFeature[],
): boolean =>
  features.some((feature) =>
    [...new Set(pullsOf(store, jobId, feature).map(({ pull }) => headOf(pull.bolt)))].some(
      (cylinder) => {
        const which = { jobId, feature, cylinder };
        const group = groupOf(store, which);
        return group !== null && walkOf(store, which, group).next !== null;
      },
    ),
  );
