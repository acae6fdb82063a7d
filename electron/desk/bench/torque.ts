import { gaugeById, readingsOf } from '../../../db/queries/bench.ts';
import { pullsOf } from '../../../db/queries/build.ts';
import { torquePull } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { TorqueWalk } from '../../../shared/contract/bench/index.ts';
import type { GaugeId, JobId } from '../../../shared/contract/ids.ts';
import type { Specification } from '../../../shared/contract/specbook.ts';
import { aim, convert, dimensionOf, torqueStages } from '../../../shared/trade/index.ts';
import {
  FEATURE_LABELS,
  FEATURE_UNITS,
  type MeasuredFeature,
  placesOf,
} from '../../../shared/work/features.ts';
import {
  isTurn,
  outOfTurn,
  type Pull,
  ROUND_BEGUN,
  torqueWalk as walk,
} from '../../../shared/work/torque-walk.ts';
import { wrenchMark } from '../../../shared/work/wrench-mark.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { takeSteps } from './job-steps.ts';
import { enterReading } from './record.ts';
import { bookOf } from './sheet.ts';

interface Which {
  jobId: JobId;
  feature: MeasuredFeature;
  cylinder: number;
}

/** Bolts of the second head and on are kept with its number before theirs: 204 is bolt 4 of head 3. */
const HEAD = 100;
const keptBolt = (cylinder: number, bolt: number): number => (cylinder - 1) * HEAD + bolt;
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
function groupOf(store: ReadStore, { jobId, feature, cylinder }: Which) {
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

type Group = NonNullable<ReturnType<typeof groupOf>>;

function pulledSoFar(store: ReadStore, { jobId, feature, cylinder }: Which) {
  return pullsOf(store, jobId, feature)
    .filter(({ pull }) => headOf(pull.bolt) === cylinder)
    .map(({ pull, ...who }) => ({ ...who, pull: { ...pull, bolt: pull.bolt % HEAD } }));
}

function walkOf(store: ReadStore, which: Which, group: Group): TorqueWalk {
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
    thread: `M${fastener.diameter} × ${fastener.pitch}, class ${fastener.propertyClass}`,
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

export const torqueWalk = os.bench.torqueWalk.handler(({ input, context, errors }) => {
  const group = groupOf(context.store.read, input);
  if (group === null) throw errors.TORQUE_UNKNOWN();
  return walkOf(context.store.read, input, group);
});

export const beginTorqueAnew = os.bench.beginTorqueAnew.handler(
  ({ input, context, errors, path }) =>
    write(context, path, input.by, ({ store, staff, at, newId, note }) => {
      const group = groupOf(store, input);
      if (group === null) throw errors.TORQUE_UNKNOWN();
      if (group.job.state === 'handed-over') throw errors.JOB_CLOSED();
      const { round } = walkOf(store, input, group);
      store
        .insert(torquePull)
        .values({
          id: newId(),
          jobId: input.jobId,
          feature: input.feature,
          round: round + 1,
          stage: ROUND_BEGUN,
          bolt: keptBolt(input.cylinder, 0),
          gaugeId: null,
          setting: 0,
          settingUnit: group.specification.unit,
          extension: 0,
          angle: 0,
          by: staff.id,
          at,
        })
        .run();
      note({
        job: input.jobId,
        feature: input.feature,
        cylinder: input.cylinder,
        round: round + 1,
      });
      return walkOf(store, input, group);
    }),
);

interface Wrench {
  gaugeId: string | null;
  extension: number;
  angle: number;
  wrenchLength: number | null;
}

/** What the wrench is set to, in its own unit, and the torque that it then gives at the bolt. */
function settingFor(
  writing: Writing,
  { gaugeId, ...lever }: Wrench,
  target: number,
  unit: Specification['unit'],
  noLever: () => Error,
) {
  const wrench =
    gaugeId === null ? null : found(gaugeById(writing.store, gaugeId, writing.today), 'gauge');
  if (wrench !== null && dimensionOf(wrench.unit) !== dimensionOf(unit))
    throw badInput([
      { path: 'gaugeId', message: `${wrench.name} is no torque wrench. Choose another gauge.` },
    ]);
  try {
    const { setting, atBolt } = wrenchMark({ target, unit, wrench, ...lever });
    return { setting, atBolt, unit: wrench?.unit ?? unit };
  } catch (error) {
    if (error instanceof RangeError) throw noLever();
    throw error;
  }
}

const cannotHappen = (what: string) => () =>
  new Error(`A torque stage that was walked was refused as a reading: ${what}.`);

export const pullBolt = os.bench.pullBolt.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, staff, at, newId, note } = writing;
    const { jobId, feature, cylinder, stage, bolt, gaugeId } = input;
    const group = groupOf(store, input);
    if (group === null) throw errors.TORQUE_UNKNOWN();
    if (group.job.state === 'handed-over') throw errors.JOB_CLOSED();
    const { fastener, specification, targets } = group;
    const target = targets[stage - 1];
    if (target === undefined || bolt > fastener.count) throw errors.NO_SUCH_BOLT();
    const before = walkOf(store, input, group);
    const inTurn = isTurn(before, { stage, bolt });
    if (!inTurn && !input.outOfOrder) throw errors.OUT_OF_ORDER({ data: before.next });

    const { setting, unit, atBolt } = settingFor(
      writing,
      {
        gaugeId,
        extension: input.extension,
        angle: input.angle,
        wrenchLength: input.wrenchLength,
      },
      target,
      specification.unit,
      errors.NO_LEVER,
    );
    takeSteps(writing, group.job);
    store
      .insert(torquePull)
      .values({
        id: newId(),
        jobId,
        feature,
        round: before.round,
        stage,
        bolt: keptBolt(cylinder, bolt),
        gaugeId,
        setting,
        settingUnit: unit,
        extension: input.extension,
        angle: input.extension === 0 ? 0 : input.angle,
        by: staff.id,
        at,
      })
      .run();
    const wrenchLength = input.extension === 0 ? null : input.wrenchLength;
    note({ job: jobId, feature, cylinder, stage, bolt, setting, unit, wrenchLength, inTurn });

    const after = walkOf(store, input, group);
    const bolts = after.pulled[stage - 1]?.length ?? 0;
    const wasWhole = before.pulled[stage - 1]?.length === fastener.count;
    if (bolts === fastener.count && !wasWhole) recordStage(writing, input, group, { atBolt, unit });
    return walkOf(store, input, group);
  }),
);

/** The stage is whole: its reading is what the wrench was set to, so that sheet and paper show it. */
function recordStage(
  writing: Writing,
  { jobId, feature, stage, gaugeId }: Which & { stage: number; gaugeId: GaugeId | null },
  { places, fastener }: Group,
  { atBolt, unit }: { atBolt: number; unit: Specification['unit'] },
) {
  // A feature without a place for each stage keeps the final torque only.
  const staged = places.length === fastener.stages.length;
  if (!staged && stage !== fastener.stages.length) return;
  const place = places[staged ? stage - 1 : 0];
  if (place === undefined) return;
  const standing = readingsOf(writing.store, jobId).findLast(
    (each) =>
      each.feature === feature &&
      each.place === place.key &&
      each.phase === 'final' &&
      !each.superseded,
  );
  enterReading(
    writing,
    {
      jobId,
      feature,
      place: place.key,
      phase: 'final',
      text: String(atBolt),
      unit,
      gaugeId,
      temperature: null,
      keepAsTyped: true,
      supersedes: standing?.id ?? null,
    },
    {
      JOB_CLOSED: cannotHappen('the job is closed'),
      PLACE_UNKNOWN: cannotHappen('no such place'),
      READING_UNREADABLE: cannotHappen('not a number'),
      READING_QUESTIONED: cannotHappen('questioned'),
      SUPERSEDED_ALREADY: cannotHappen('corrected meanwhile'),
    },
  );
}
