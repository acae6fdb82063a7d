import { z } from 'zod';
import { CHECK_OUTCOMES, LEAK_PATHS } from '../../work/bench/test-run.ts';
import { RUN_FEATURES } from '../../work/features.ts';
import { CYCLES, MACHINE_KINDS } from '../../work/vocabulary.ts';
import { reads, writes } from '../base.ts';
import { Instant, maybeText } from '../fields.ts';
import { GaugeId, JobId, SpecificationId, StaffId } from '../ids.ts';
import { Specification } from '../specbook.ts';
import { JOB_CLOSED, VERDICTS } from './common.ts';

/** Test runs: what the engine did once it was built, signed off by whoever ran it. */

/** 1/min. */
const Speed = z
  .number()
  .min(0, 'A speed is zero or more revolutions per minute.')
  .max(20_000, 'No small engine turns faster than 20,000 revolutions per minute.');

/** kPa (gauge). */
const Pressure = z
  .number()
  .min(0, 'A pressure here is zero or more.')
  .max(5_000, 'That is more than any engine here can press: give it in kPa.');

const LeakDown = z.object({
  percent: z
    .number()
    .min(0, 'A leak is 0 to 100 per cent.')
    .max(100, 'A leak is 0 to 100 per cent.')
    .nullable(),
  path: z.enum(LEAK_PATHS),
});

const Findings = z.object({
  idleSpeed: Speed.nullable(),
  topSpeed: Speed.nullable(),
  /** By cylinder, in order; null where it was not measured. */
  compression: z.array(Pressure.nullable()),
  leakDown: z.array(LeakDown),
  stopSwitch: z.enum(CHECK_OUTCOMES),
  interlocks: z.enum(CHECK_OUTCOMES),
  governor: z.enum(CHECK_OUTCOMES),
  /** Whether the fuel system is dry; null in runs that were not asked for it. */
  fuelTight: z.enum(CHECK_OUTCOMES).nullable(),
  /** Of a chainsaw. */
  chainBrake: z.enum(CHECK_OUTCOMES).nullable(),
  /** Of a mower: seconds until the blade stands. */
  bladeStop: z.number().nullable(),
  notFittedWhy: z.string(),
  outputVolts: z.number().nullable(),
  outputAmps: z.number().nullable(),
  leaks: z.string(),
  note: z.string(),
  /** What the speeds were read from; null when no gauge was named. */
  tachometer: GaugeId.nullable(),
});

/** A speed as it was judged when the run was signed off; all in 1/min. */
export const SpeedFound = z.object({
  feature: z.enum(RUN_FEATURES),
  value: z.number(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  /** The revision that it was held against; null when the book has no figure. */
  specificationId: SpecificationId.nullable(),
  verdict: z.enum(VERDICTS),
  conformance: z.number().nullable(),
  /** Expanded (k = 2); 0 when no tachometer was named. */
  uncertainty: z.number(),
  gauge: z.string(),
  gaugeRemark: z.string(),
});

const FindingsInput = z.strictObject({
  ...Findings.shape,
  /** One for each cylinder, or none. */
  compression: z.array(Pressure.nullable()).max(4).default([]),
  leakDown: z.array(z.strictObject(LeakDown.shape)).max(4).default([]),
  fuelTight: z.enum(CHECK_OUTCOMES).nullable().default('not-tried'),
  chainBrake: z.enum(CHECK_OUTCOMES).nullable().default(null),
  bladeStop: z
    .number()
    .min(0, 'A time is zero seconds or more.')
    .max(60, 'A blade that runs on for a minute is not braked: type the seconds.')
    .nullable()
    .default(null),
  notFittedWhy: maybeText(200),
  outputVolts: z.number().min(0).max(1000).nullable().default(null),
  outputAmps: z.number().min(0).max(1000).nullable().default(null),
  leaks: maybeText(500),
  note: maybeText(2000),
  tachometer: GaugeId.nullable().default(null),
});

export const TestRun = z.object({
  id: z.uuid(),
  findings: Findings,
  speeds: z.array(SpeedFound),
  /** Why it could not be signed off as passed; empty of one that could. */
  against: z.array(z.string()),
  passed: z.boolean(),
  by: z.string(),
  at: Instant,
});
export type TestRun = z.infer<typeof TestRun>;

export const TestRuns = z.object({
  jobId: JobId,
  machine: z.enum(MACHINE_KINDS),
  cycle: z.enum(CYCLES),
  cylinders: z.int(),
  /** What the spec book says of cranking pressure, kPa; null where it says nothing. */
  compression: z.object({ low: z.number().nullable(), high: z.number().nullable() }).nullable(),
  /** What the spec book says of the speeds; empty where it says nothing. */
  speeds: z.array(Specification.extend({ feature: z.enum(RUN_FEATURES) })),
  closed: z.boolean(),
  /** The latest first; an earlier run stays as it was. */
  runs: z.array(TestRun),
});
export type TestRuns = z.infer<typeof TestRuns>;

export const testRun = {
  testRuns: reads.input(z.strictObject({ jobId: JobId })).output(TestRuns),

  recordTestRun: writes
    .errors({
      JOB_CLOSED,
      UNSAFE_TO_PASS: {
        status: 409,
        message:
          'This run can’t be signed off as passed: something that keeps its user safe failed, was not tried, or is not as the spec book has it. Mend it and run it again, or record the run as not passed.',
        data: z.object({ because: z.array(z.string()) }),
      },
    })
    .input(
      z.strictObject({ by: StaffId, jobId: JobId, findings: FindingsInput, passed: z.boolean() }),
    )
    .output(TestRuns),
};
