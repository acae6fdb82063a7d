import { z } from 'zod';
import { GAUGE_KINDS } from '../../work/vocabulary.ts';
import { reads, writes } from '../base.ts';
import { CalendarDate, Instant, maybeText, text } from '../fields.ts';
import { GaugeId, JobCode, JobId, StaffId } from '../ids.ts';
import { Unit, WrenchLength } from './common.ts';
import { Reading } from './readings.ts';

/** Gauges: what they measure, how well, and when they were last checked. */

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
  /** Of a torque wrench: from the square drive to the mark on the grip, mm; null while nobody measured it. */
  length: z.number().nullable(),
  /** Expanded (k = 2), in `unit`, from resolution and maximum permissible error. */
  uncertainty: z.number(),
  /** As the last good check leaves it, else as it was registered. */
  calibratedOn: CalendarDate.nullable(),
  calibrationDue: CalendarDate.nullable(),
  certificate: z.string(),
  expired: z.boolean(),
  /** The day that it was found bad; null unless it is out of use since. */
  foundBadOn: CalendarDate.nullable(),
});
export type Gauge = z.infer<typeof Gauge>;

export const GaugeCheck = z.object({
  on: CalendarDate,
  good: z.boolean(),
  certificate: z.string(),
  dueOn: CalendarDate.nullable(),
  note: z.string(),
  by: z.string(),
  at: Instant,
});
export type GaugeCheck = z.infer<typeof GaugeCheck>;

/** A reading that a gauge took, with the job that it belongs to. */
export const TouchedReading = Reading.extend({
  jobId: JobId,
  jobCode: JobCode,
  machine: z.string(),
  featureLabel: z.string(),
  /** The customer has the machine again. */
  handedOver: z.boolean(),
});
export type TouchedReading = z.infer<typeof TouchedReading>;

/** A test run whose speeds were read from a tachometer. */
export const TouchedRun = z.object({
  id: z.uuid(),
  jobId: JobId,
  jobCode: JobCode,
  machine: z.string(),
  handedOver: z.boolean(),
  passed: z.boolean(),
  /** Each speed in words, with what it was held against. */
  speeds: z.array(z.object({ label: z.string(), words: z.string() })),
  by: z.string(),
  at: Instant,
});
export type TouchedRun = z.infer<typeof TouchedRun>;

export const GaugeRecord = z.object({
  gauge: Gauge,
  /** Newest first. */
  checks: z.array(GaugeCheck),
});
export type GaugeRecord = z.infer<typeof GaugeRecord>;

export const GaugeReadings = z.object({
  /** The last good check before; null when there is none, and every reading counts. */
  since: CalendarDate.nullable(),
  /** The day that the gauge was found bad; null when it never was. */
  badOn: CalendarDate.nullable(),
  /** The good check that put it into use again. */
  until: CalendarDate.nullable(),
  /** Newest first. */
  readings: z.array(TouchedReading),
  /** Of a tachometer: test runs in the same span, newest first. */
  runs: z.array(TouchedRun),
});
export type GaugeReadings = z.infer<typeof GaugeReadings>;

export const gauges = {
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
          /** Of a torque wrench, mm. */
          length: WrenchLength.nullable().default(null),
          calibratedOn: CalendarDate.nullable().default(null),
          calibrationDue: CalendarDate.nullable().default(null),
          certificate: maybeText(120),
        })
        .refine((gauge) => gauge.rangeLow < gauge.rangeHigh, {
          path: ['rangeHigh'],
          message: 'The range ends above where it begins.',
        })
        .refine(({ kind, length }) => kind === 'torque-wrench' || length === null, {
          path: ['length'],
          message: 'Only a torque wrench has a lever. Leave its length empty.',
        }),
    )
    .output(Gauge),

  gauge: reads.input(z.strictObject({ gaugeId: GaugeId })).output(GaugeRecord),

  /** How long a torque wrench's lever is: it decides the setting with an extension. */
  measureWrench: writes
    .input(z.strictObject({ by: StaffId, gaugeId: GaugeId, length: WrenchLength }))
    .output(GaugeRecord),

  /** A check of a gauge, good or bad. A bad one puts it out of use until a good one. */
  checkGauge: writes
    .input(
      z
        .strictObject({
          by: StaffId,
          gaugeId: GaugeId,
          on: CalendarDate,
          good: z.boolean(),
          certificate: maybeText(120),
          /** When the next check is due, after a good one. */
          dueOn: CalendarDate.nullable().default(null),
          /** What was found, and against what. */
          note: maybeText(500),
        })
        .refine(({ on, dueOn }) => dueOn === null || dueOn > on, {
          path: ['dueOn'],
          message: 'The next check is due after this one.',
        })
        .refine(({ good, dueOn }) => good || dueOn === null, {
          path: ['dueOn'],
          message: 'A gauge found bad is out of use: its next check is the one that finds it good.',
        })
        .refine(({ good, note }) => good || note !== '', {
          path: ['note'],
          message: 'Say in a few words what is wrong with it.',
        }),
    )
    .output(GaugeRecord),

  /**
   * The readings that a gauge touched since its last good check; for one that was found bad those between
   * the good check before and the good one after.
   */
  gaugeReadings: reads.input(z.strictObject({ gaugeId: GaugeId })).output(GaugeReadings),
};
