import { gaugeById, readingsOf } from '../../../db/queries/bench.ts';
import { torquePull } from '../../../db/schema/index.ts';
import type { GaugeId } from '../../../shared/contract/ids.ts';
import type { Specification } from '../../../shared/contract/specbook.ts';
import { dimensionOf } from '../../../shared/trade/index.ts';
import { isTurn, ROUND_BEGUN } from '../../../shared/work/bench/torque-walk.ts';
import { wrenchMark } from '../../../shared/work/bench/wrench-mark.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { demandApproval } from '../till/limit/bill-ahead.ts';
import { type Writing, write } from '../writing.ts';
import { takeSteps } from './job-steps.ts';
import { enterReading } from './record.ts';
import { type Group, groupOf, keptBolt, type Which, walkOf } from './torque-group.ts';

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
  { gaugeId, extension, angle, ...hand }: Wrench,
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
  const wrenchLength = extension === 0 ? null : (hand.wrenchLength ?? wrench?.length ?? null);
  try {
    const { setting, atBolt } = wrenchMark({
      target,
      unit,
      wrench,
      extension,
      angle,
      wrenchLength,
    });
    return { setting, atBolt, unit: wrench?.unit ?? unit, wrenchLength };
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
    demandApproval(writing, jobId, errors);
    const { fastener, specification, targets } = group;
    const target = targets[stage - 1];
    if (target === undefined || bolt > fastener.count) throw errors.NO_SUCH_BOLT();
    const before = walkOf(store, input, group);
    const inTurn = isTurn(before, { stage, bolt });
    if (!inTurn && !input.outOfOrder) throw errors.OUT_OF_ORDER({ data: before.next });

    const { setting, unit, atBolt, wrenchLength } = settingFor(
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
        wrenchLength,
        by: staff.id,
        at,
      })
      .run();
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
