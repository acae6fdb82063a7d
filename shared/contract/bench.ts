import { z } from 'zod';
import { FEATURES, MEASURED_FEATURES } from '../work/features.ts';
import { CYCLES, GAUGE_KINDS, PHASES } from '../work/vocabulary.ts';
import { reads, writes } from './base.ts';
import { CalendarDate, Instant, maybeText, text } from './fields.ts';
import { EngineModelId, GaugeId, JobId, ReadingId, SpecificationId, StaffId } from './ids.ts';
import { EngineModel, SPECIFICATION_UNITS, Specification } from './specbook.ts';

/** The bench: readings with unit, gauge and verdict; hold points; gauges. */

export const VERDICTS = ['within', 'outside', 'too-close', 'no-band'] as const;
export type Verdict = (typeof VERDICTS)[number];

const Unit = z.enum(SPECIFICATION_UNITS);

export const Gauge = z.object({
  id: GaugeId,
  name: z.string(),
  kind: z.enum(GAUGE_KINDS),
  unit: Unit,
  /** All in `unit`. */
  rangeLow: z.number(),
  rangeHigh: z.number(),
  resolution: z.number(),
  maxError: z.number(),
  /** Expanded (k = 2), in `unit`, from resolution and maximum permissible error. */
  uncertainty: z.number(),
  calibratedOn: CalendarDate.nullable(),
  calibrationDue: CalendarDate.nullable(),
  certificate: z.string(),
  expired: z.boolean(),
});
export type Gauge = z.infer<typeof Gauge>;

const Slip = z.object({ kind: z.enum(['decimal', 'inch', 'foot-inch']), likely: z.number() });

export const Reading = z.object({
  id: ReadingId,
  feature: z.enum(MEASURED_FEATURES),
  place: z.string(),
  placeLabel: z.string(),
  phase: z.enum(PHASES),
  /** As typed, without its unit unless the unit was typed too. */
  text: z.string(),
  unit: Unit,
  /** In `unit`. */
  value: z.number(),
  /** In the base unit of the feature. */
  valueBase: z.number(),
  gauge: z.object({ id: GaugeId, name: z.string() }).nullable(),
  /** Something about the gauge that the paper has to say: out of calibration, out of its range. */
  gaugeRemark: z.string(),
  /** Expanded (k = 2), base unit; 0 when no gauge was named. */
  uncertaintyBase: z.number(),
  temperature: z.number().nullable(),
  verdict: z.enum(VERDICTS),
  conformance: z.number().nullable(),
  /** A slip that was named and waved on: the likely value, in `unit`. */
  questioned: Slip.nullable(),
  /** The revision it was held against, and the band of its place at that moment, base unit. */
  specificationId: SpecificationId.nullable(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  by: z.string(),
  at: Instant,
  supersedes: ReadingId.nullable(),
  superseded: z.boolean(),
});
export type Reading = z.infer<typeof Reading>;

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
  readings: z.array(Reading),
});

export const FeatureOnSheet = z.object({
  feature: z.enum(MEASURED_FEATURES),
  label: z.string(),
  hint: z.string(),
  specification: Specification.nullable(),
  /** The unit that the field offers first: the source's, else the base unit. */
  unit: Unit,
  places: z.array(PlaceOnSheet),
});
export type FeatureOnSheet = z.infer<typeof FeatureOnSheet>;

export const DerivedOnSheet = z.object({
  feature: z.enum(FEATURES),
  cylinder: z.int(),
  label: z.string(),
  phase: z.enum(PHASES),
  /** Base unit. */
  value: z.number(),
  /** Expanded (k = 2), base unit. */
  uncertainty: z.number(),
  verdict: z.enum(VERDICTS),
  specification: Specification.nullable(),
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

const JOB_CLOSED = {
  status: 409,
  message: 'The job was handed over; its record is closed. Take the machine in again to add to it.',
} as const;

export const bench = {
  sheet: reads.input(z.strictObject({ jobId: JobId })).output(BenchSheet),

  chooseEngineModel: writes
    .errors({ JOB_CLOSED })
    .input(z.strictObject({ by: StaffId, jobId: JobId, engineModelId: EngineModelId }))
    .output(BenchSheet),

  record: writes
    .errors({
      JOB_CLOSED,
      READING_UNREADABLE: {
        status: 422,
        message:
          'That is not a reading. Type a number, with a unit if it is another than the one shown: 0.15, .006", 17 lbf·ft.',
        data: z.object({ reason: z.string() }),
      },
      READING_QUESTIONED: {
        status: 409,
        message:
          'That lies far outside the band, by a factor that slips make. Take the likely value, or keep it as typed if the gauge really says so.',
        data: z.object({
          kind: z.enum(['decimal', 'inch', 'foot-inch']),
          /** In the unit typed. */
          likely: z.number(),
          unit: Unit,
        }),
      },
      PLACE_UNKNOWN: {
        status: 409,
        message: 'This engine has no such place to measure. Choose one of those on the sheet.',
        data: z.object({ places: z.array(z.string()) }),
      },
      SUPERSEDED_ALREADY: {
        status: 409,
        message:
          'That reading was corrected meanwhile. Look at the sheet again and correct the newer one.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        feature: z.enum(MEASURED_FEATURES),
        place: text(60),
        phase: z.enum(PHASES),
        /** As typed; a unit in it wins over `unit`. */
        text: text(40),
        unit: Unit,
        gaugeId: GaugeId.nullable().default(null),
        /** Of the part, in °C, when it was not near 20. */
        temperature: z.number().min(-40).max(300).nullable().default(null),
        keepAsTyped: z.boolean().default(false),
        /** The reading that this one corrects. */
        supersedes: ReadingId.nullable().default(null),
      }),
    )
    .output(Reading),

  passHoldPoint: writes
    .errors({
      JOB_CLOSED,
      HOLD_POINT_UNKNOWN: {
        status: 409,
        message: 'This build has no such hold point. Choose one of those on the sheet.',
      },
      READINGS_MISSING: {
        status: 409,
        message: 'This point asks for readings that are not there yet. Record them, then pass it.',
        data: z.object({ features: z.array(z.string()) }),
      },
    })
    .input(z.strictObject({ by: StaffId, jobId: JobId, key: text(60) }))
    .output(BenchSheet),

  overrideHoldPoint: writes
    .errors({
      JOB_CLOSED,
      HOLD_POINT_UNKNOWN: {
        status: 409,
        message: 'This build has no such hold point. Choose one of those on the sheet.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        key: text(60),
        reason: text(500).pipe(z.string().min(5, 'Give the reason in a few words; it is printed.')),
      }),
    )
    .output(BenchSheet),

  reopenHoldPoint: writes
    .errors({
      JOB_CLOSED,
      HOLD_POINT_UNKNOWN: {
        status: 409,
        message: 'This build has no such hold point. Choose one of those on the sheet.',
      },
    })
    .input(z.strictObject({ by: StaffId, jobId: JobId, key: text(60), reason: text(500) }))
    .output(BenchSheet),

  gauges: reads.input(z.strictObject({})).output(z.array(Gauge)),

  addGauge: writes
    .errors({
      GAUGE_NAME_TAKEN: {
        status: 409,
        message: 'A gauge of that name is on the list. Give this one its own name or number.',
      },
    })
    .input(
      z
        .strictObject({
          by: StaffId,
          name: text(80),
          kind: z.enum(GAUGE_KINDS),
          unit: Unit,
          rangeLow: z.number(),
          rangeHigh: z.number(),
          resolution: z.number().positive('A gauge has a smallest step above zero.'),
          maxError: z.number().min(0),
          calibratedOn: CalendarDate.nullable().default(null),
          calibrationDue: CalendarDate.nullable().default(null),
          certificate: maybeText(120),
        })
        .refine((gauge) => gauge.rangeLow < gauge.rangeHigh, {
          path: ['rangeHigh'],
          message: 'The range ends above where it begins.',
        }),
    )
    .output(Gauge),
};
