import { z } from 'zod';
import { DECISION_CHOICES, DECISION_SUBJECTS } from '../../work/bench/deciding/decisions.ts';
import { JOB_STATES } from '../../work/counter/job-state.ts';
import { FEATURES } from '../../work/features.ts';
import { PHASES } from '../../work/vocabulary.ts';
import { reads } from '../base.ts';
import { Machine } from '../counter/index.ts';
import { CalendarDate, Instant } from '../fields.ts';
import { EngineId, JobCode, JobId } from '../ids.ts';
import { EngineModel } from '../specbook.ts';
import { Unit, VERDICTS } from './common.ts';

/** An engine's life: its jobs, and how each place of it wore. */

const JobOfEngine = z.object({
  id: JobId,
  code: JobCode,
  takenInOn: CalendarDate,
  /** Running hours when it came in; null when nobody knew. */
  engineHours: z.number().nullable(),
  state: z.enum(JOB_STATES),
  complaint: z.string(),
  workDone: z.string(),
  decisions: z.array(
    z.object({
      subject: z.enum(DECISION_SUBJECTS),
      cylinder: z.int(),
      choice: z.enum(DECISION_CHOICES),
      /** mm over or under the nominal size. */
      step: z.number().nullable(),
      reason: z.string(),
      by: z.string(),
      at: Instant,
    }),
  ),
  testRuns: z.array(z.object({ passed: z.boolean(), by: z.string(), at: Instant })),
});
export type JobOfEngine = z.infer<typeof JobOfEngine>;

const HistoryPoint = z.object({
  jobId: JobId,
  code: JobCode,
  phase: z.enum(PHASES),
  /** The day it was taken, in the shop's time zone. */
  on: CalendarDate,
  /** The engine's running hours at the intake of that job. */
  hours: z.number().nullable(),
  /** As typed, with the unit it was taken in; empty for a value that follows from others. */
  text: z.string(),
  unit: Unit,
  /** Base unit of the feature. */
  value: z.number(),
  /** Expanded (k = 2), base unit. */
  uncertainty: z.number(),
  verdict: z.enum(VERDICTS),
});
export type HistoryPoint = z.infer<typeof HistoryPoint>;

const PlaceHistory = z.object({
  key: z.string(),
  label: z.string(),
  /** What the spec book says today, base unit. */
  low: z.number().nullable(),
  high: z.number().nullable(),
  wearLimit: z.number().nullable(),
  /** In the order in which they were taken; superseded ones are left out. */
  points: z.array(HistoryPoint),
});
export type PlaceHistory = z.infer<typeof PlaceHistory>;

const FeatureHistory = z.object({
  feature: z.enum(FEATURES),
  label: z.string(),
  /** What it is shown in: the source's, else the base unit. */
  unit: Unit,
  places: z.array(PlaceHistory),
});
export type FeatureHistory = z.infer<typeof FeatureHistory>;

export const EngineHistory = z.object({
  machine: Machine,
  engineModel: EngineModel.nullable(),
  /** The latest first. */
  jobs: z.array(JobOfEngine),
  /** Those that have a reading, in the order of the work. */
  features: z.array(FeatureHistory),
});
export type EngineHistory = z.infer<typeof EngineHistory>;

export const history = {
  engineHistory: reads.input(z.strictObject({ engineId: EngineId })).output(EngineHistory),
};
