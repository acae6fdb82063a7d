import { z } from 'zod';
import { MEASURED_FEATURES } from '../../work/features.ts';
import { reads, writes } from '../base.ts';
import { Instant } from '../fields.ts';
import { GaugeId, JobId, StaffId } from '../ids.ts';
import { OVER_APPROVAL } from '../till/refusals.ts';
import { JOB_CLOSED, Unit, WrenchLength } from './common.ts';

/** The walk around the bolts: which to pull next, to what, and what was pulled with which wrench. */

const BoltPull = z.object({
  round: z.int(),
  stage: z.int(),
  bolt: z.int(),
  outOfOrder: z.boolean(),
  wrench: z.string(),
  /** What the wrench was set to, in its own unit. */
  setting: z.number(),
  settingUnit: Unit,
  /** mm and degrees; 0 without an extension. */
  extension: z.number(),
  angle: z.number(),
  /** The wrench's own lever that the setting was worked out with, mm; null without an extension. */
  wrenchLength: z.number().nullable(),
  by: z.string(),
  at: Instant,
});

const Turn = z.object({ stage: z.int(), bolt: z.int() });

export const TorqueWalk = z.object({
  jobId: JobId,
  feature: z.enum(MEASURED_FEATURES),
  label: z.string(),
  /** A head for each; bolts are numbered on each from 1. */
  cylinder: z.int(),
  cylinders: z.int(),
  count: z.int(),
  pattern: z.enum(['cross', 'spiral', 'in-line']),
  /** The thread as the source prints it, and its class. */
  thread: z.string(),
  /** Cold, dry, oiled … as the source asks. */
  condition: z.string(),
  /** The target of each stage, in the unit of the source. */
  stages: z.array(z.object({ share: z.number(), target: z.number() })),
  unit: Unit,
  round: z.int(),
  order: z.array(z.int()),
  /** The bolts of each stage that were pulled in this round. */
  pulled: z.array(z.array(z.int())),
  next: Turn.nullable(),
  done: z.int(),
  of: z.int(),
  /** Every pull, of earlier rounds too, oldest first. */
  pulls: z.array(BoltPull),
  closed: z.boolean(),
});
export type TorqueWalk = z.infer<typeof TorqueWalk>;

const TORQUE_UNKNOWN = {
  status: 409,
  message:
    'The spec book has no torque with its bolts (count, pattern, stages) for this. Add it there, with its source, then tighten.',
} as const;

const which = {
  jobId: JobId,
  feature: z.enum(MEASURED_FEATURES),
  cylinder: z.int().min(1).max(4).default(1),
};

export const torque = {
  torqueWalk: reads.errors({ TORQUE_UNKNOWN }).input(z.strictObject(which)).output(TorqueWalk),

  /** One bolt was pulled to one stage. The last of a stage records the stage's reading. */
  pullBolt: writes
    .errors({
      JOB_CLOSED,
      TORQUE_UNKNOWN,
      OVER_APPROVAL,
      NO_SUCH_BOLT: {
        status: 409,
        message:
          'There is no such bolt or stage here. Look at the picture and choose one of those.',
      },
      OUT_OF_ORDER: {
        status: 409,
        message:
          'Another bolt comes first. Pull that one, or say that this one was pulled out of its order; it is kept as such.',
        data: Turn.nullable(),
      },
      NO_LEVER: {
        status: 409,
        message:
          'With an extension the wrench’s own length is needed: from the middle of the grip to the square. An extension folded back must be shorter than that.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        ...which,
        stage: z.int().min(1).max(6),
        bolt: z.int().min(1).max(24),
        gaugeId: GaugeId.nullable().default(null),
        /** From the square drive to the bolt, mm. */
        extension: z.number().min(0).max(1_000).default(0),
        /** Between wrench and extension, degrees: 0 straight out, 90 square to it. */
        angle: z.number().min(-180).max(180).default(0),
        /** The wrench's lever, where an extension is on it; null for the one in the register. */
        wrenchLength: WrenchLength.nullable().default(null),
        outOfOrder: z.boolean().default(false),
      }),
    )
    .output(TorqueWalk),

  /** Loosened and started over: the next round. What was pulled before stays on record. */
  beginTorqueAnew: writes
    .errors({ JOB_CLOSED, TORQUE_UNKNOWN })
    .input(z.strictObject({ by: StaffId, ...which }))
    .output(TorqueWalk),
};
