import { z } from 'zod';
import { LASH_POSITIONS } from '../../work/bench/lash-position.ts';
import { MEASURED_FEATURES } from '../../work/features.ts';
import { PHASES } from '../../work/vocabulary.ts';
import { writes } from '../base.ts';
import { Instant, text } from '../fields.ts';
import { GaugeId, JobId, ReadingId, SpecificationId, StaffId } from '../ids.ts';
import { JOB_CLOSED, Unit, VERDICTS } from './common.ts';

/** Readings: as typed, with unit, gauge and verdict. */

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
  /** Where the engine stood, for valve lash. */
  position: z.enum(LASH_POSITIONS).nullable(),
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

export const readings = {
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
          'That lies far outside the band, or far from the reading beside it, by a factor that slips make. Take the likely value, or keep it as typed if the gauge really says so.',
        data: z.object({
          kind: z.enum(['decimal', 'inch', 'foot-inch']),
          /** In the unit typed. */
          likely: z.number(),
          unit: Unit,
          /** What it was held against: its band, or without one the readings beside it. */
          against: z.enum(['band', 'pair']).default('band'),
        }),
      },
      POSITION_WANTED: {
        status: 409,
        message:
          'Valve lash counts only on the compression stroke, at or just past top dead centre. Turn the engine there, plug lead off and earthed, and say which of the two it is.',
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
        /** Where the engine stands; valve lash is refused without it. */
        position: z.enum(LASH_POSITIONS).nullable().default(null),
        keepAsTyped: z.boolean().default(false),
        /** The reading that this one corrects. */
        supersedes: ReadingId.nullable().default(null),
      }),
    )
    .output(Reading),
};
