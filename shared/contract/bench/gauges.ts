import { z } from 'zod';
import { GAUGE_KINDS } from '../../work/vocabulary.ts';
import { reads, writes } from '../base.ts';
import { CalendarDate, maybeText, text } from '../fields.ts';
import { GaugeId, StaffId } from '../ids.ts';
import { Unit } from './common.ts';

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
  /** Expanded (k = 2), in `unit`, from resolution and maximum permissible error. */
  uncertainty: z.number(),
  calibratedOn: CalendarDate.nullable(),
  calibrationDue: CalendarDate.nullable(),
  certificate: z.string(),
  expired: z.boolean(),
});
export type Gauge = z.infer<typeof Gauge>;

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
