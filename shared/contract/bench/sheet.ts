import { z } from 'zod';
import { FEATURES, MEASURED_FEATURES } from '../../work/features.ts';
import { CYCLES, PHASES } from '../../work/vocabulary.ts';
import { reads, writes } from '../base.ts';
import { Instant } from '../fields.ts';
import { EngineModelId, JobCode, JobId, StaffId } from '../ids.ts';
import { EngineModel, Specification } from '../specbook.ts';
import { StepRecord } from './build.ts';
import { JOB_CLOSED, Unit, VERDICTS } from './common.ts';
import { Reading } from './readings.ts';

/** The bench sheet: everything that the bench sees of a job. */

/** A reading of the same engine from an earlier job. */
const EarlierReading = z.object({
  jobCode: JobCode,
  phase: z.enum(PHASES),
  text: z.string(),
  unit: Unit,
  valueBase: z.number(),
  at: Instant,
});
export type EarlierReading = z.infer<typeof EarlierReading>;

/** Limits that a decision moved, by `step` off nominal. */
const MovedLimits = z.object({
  low: z.number().nullable(),
  high: z.number().nullable(),
  aim: z.number().nullable(),
  wearLimit: z.number().nullable(),
  step: z.number(),
});

/** One place to be measured, with its band in the base unit and the reading that stands. */
const PlaceOnSheet = z.object({
  key: z.string(),
  label: z.string(),
  cylinder: z.int(),
  share: z.number(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  aim: z.number().nullable(),
  /** Beyond this a part that has run is replaced. */
  wearLimit: z.number().nullable(),
  /** Where an earlier job of the engine gave it another size: that, which low, high and the rest say too. */
  came: MovedLimits.nullable(),
  /** What holds after machining instead, where this job decided on another size. */
  decided: MovedLimits.nullable(),
  /** This job has it machined or replaced: from then on it is held to the limits of a new part. */
  renewed: z.boolean(),
  readings: z.array(Reading),
  /** What this engine showed here on earlier jobs, newest first, two at most. */
  earlier: z.array(EarlierReading),
});

export const FeatureOnSheet = z.object({
  feature: z.enum(MEASURED_FEATURES),
  label: z.string(),
  hint: z.string(),
  /** Every rebuild asks for it, or the spec book knows it, or somebody measured it. */
  asked: z.boolean(),
  specification: Specification.nullable(),
  /** The unit that the field offers first: the source's, else the base unit. */
  unit: Unit,
  places: z.array(PlaceOnSheet),
});
export type FeatureOnSheet = z.infer<typeof FeatureOnSheet>;

export const DerivedOnSheet = z.object({
  feature: z.enum(FEATURES),
  /** 0 for what belongs to the engine as a whole. */
  cylinder: z.int(),
  label: z.string(),
  phase: z.enum(PHASES),
  /** Base unit; of a clearance at its tightest spot. */
  value: z.number(),
  /** Expanded (k = 2), base unit. */
  uncertainty: z.number(),
  /** Of a clearance that isn't the same all round: at its loosest spot. Then `value` is the tightest. */
  largest: z.object({ value: z.number(), uncertainty: z.number() }).nullable(),
  verdict: z.enum(VERDICTS),
  specification: Specification.nullable(),
  /** It follows from parts that this job has machined or replaced, and from no others. */
  renewed: z.boolean(),
});
export type DerivedOnSheet = z.infer<typeof DerivedOnSheet>;

export const HoldPointOnSheet = z.object({
  key: z.string(),
  label: z.string(),
  caution: z.string(),
  state: z.enum(['open', 'passed', 'overridden']),
  /** Features that lack a final reading before it can be passed. */
  missing: z.array(z.string()),
  by: z.string(),
  at: Instant.nullable(),
  reason: z.string(),
  /** What was noted with it: `600 ml`, how a part lies, which wires were joined. */
  detail: z.string(),
  /** Labels of the steps before it that were open when it was done. */
  doneBefore: z.array(z.string()),
  ...StepRecord,
});
export type HoldPointOnSheet = z.infer<typeof HoldPointOnSheet>;

export const BenchSheet = z.object({
  jobId: JobId,
  engineModel: EngineModel.nullable(),
  cycle: z.enum(CYCLES),
  cylinders: z.int(),
  features: z.array(FeatureOnSheet),
  derived: z.array(DerivedOnSheet),
  holdPoints: z.array(HoldPointOnSheet),
  closed: z.boolean(),
});
export type BenchSheet = z.infer<typeof BenchSheet>;

export const sheet = {
  sheet: reads.input(z.strictObject({ jobId: JobId })).output(BenchSheet),

  chooseEngineModel: writes
    .errors({ JOB_CLOSED })
    .input(z.strictObject({ by: StaffId, jobId: JobId, engineModelId: EngineModelId }))
    .output(BenchSheet),
};
