import { z } from 'zod';
import { STEP_KINDS } from '../../work/bench/build-steps.ts';
import { RUN_STANDINGS } from '../../work/bench/run-step.ts';
import { WORK_AREAS, WORK_KINDS } from '../../work/bench/work/kinds-of-work.ts';
import { MEASURED_FEATURES } from '../../work/features.ts';
import { reads, writes } from '../base.ts';
import { Instant, maybeText, text } from '../fields.ts';
import { EngineModelId, JobId, StaffId } from '../ids.ts';
import { JOB_CLOSED } from './common.ts';

/** Build sheets: what an engine is built by, and how far a job has come along its own. */

const BuildStep = z.object({
  key: z.string(),
  kind: z.enum(STEP_KINDS),
  label: z.string(),
  caution: z.string(),
  hold: z.boolean(),
  needs: z.array(z.enum(MEASURED_FEATURES)),
  wires: z.array(z.object({ from: z.string(), to: z.string() })),
  unit: z.string(),
  /** Asks for the grade beside the amount; sheets from before it was asked for don't. */
  grade: z.boolean().default(false),
  note: z.string(),
  /** Keys of steps after which this one has to be done again. */
  undoneBy: z.array(z.string()).optional(),
});

const StepInput = z.strictObject({
  key: text(60).pipe(
    z
      .string()
      .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'A key is small letters and figures, joined by hyphens.'),
  ),
  kind: z.enum(STEP_KINDS),
  label: text(160),
  caution: maybeText(300),
  hold: z.boolean(),
  needs: z.array(z.enum(MEASURED_FEATURES)).max(20).default([]),
  wires: z
    .array(z.strictObject({ from: text(40), to: text(40) }))
    .max(40)
    .default([]),
  unit: maybeText(20),
  grade: z.boolean().default(false),
  note: maybeText(300),
  undoneBy: z.array(text(60)).max(20).optional(),
});

/** Where the steps of a sheet come from: the model's own, its family's, the shop's, or nobody's. */
const SHEET_ORIGINS = ['model', 'family', 'shop', 'usual'] as const;

export const BuildSheet = z.object({
  /** Without one it is the shop's sheet for every engine. */
  engineModel: z.object({ id: EngineModelId, make: z.string(), model: z.string() }).nullable(),
  /** Of this model's own sheet; 0 while it has none and takes the steps from elsewhere. */
  revision: z.int(),
  by: z.string(),
  at: Instant.nullable(),
  steps: z.array(BuildStep),
  /** What it would have without a sheet of its own, and whose that is. */
  inherited: z.object({
    origin: z.enum(SHEET_ORIGINS),
    name: z.string(),
    steps: z.array(BuildStep),
  }),
});
export type BuildSheet = z.infer<typeof BuildSheet>;

/** When and how a step was done, among the others. */
export const StepRecord = {
  /** Counted from 1 in the order in which the steps were done; null while it is open. */
  order: z.int().nullable(),
  /** Seconds since the step done before it; null for the first, and while it is open. */
  seconds: z.int().nullable(),
  /** What undid it after it was passed: it is open again. */
  openedAgain: z.object({ by: z.string(), at: Instant }).nullable(),
  /** Of a step that is measured or tightened: the gauges that were named, and whether one was not. */
  gauges: z.array(z.string()),
  gaugeNotNamed: z.boolean(),
  /** Of a tightening: how many pulls, and the seconds from the first to the last. */
  pulls: z.object({ count: z.int(), seconds: z.int() }).nullable(),
};

const StepOnBuild = BuildStep.extend({
  state: z.enum(['open', 'passed', 'overridden']),
  /** Features that lack a final reading at some place before it can be passed. */
  missing: z.array(z.enum(MEASURED_FEATURES)),
  /** The same in words, with the places where some of a feature's are there: `Coil air gap: leg 2`. */
  missingWords: z.array(z.string()),
  /** Of a step that a test run passes: how the runs stand; null of every other. */
  run: z.enum(RUN_STANDINGS).nullable(),
  by: z.string(),
  at: Instant.nullable(),
  reason: z.string(),
  /** What it asked for besides a tick, in words; of a photo, its id. */
  detail: z.string(),
  /** Labels of the steps before it that were open when it was done. */
  doneBefore: z.array(z.string()),
  ...StepRecord,
});
export type StepOnBuild = z.infer<typeof StepOnBuild>;

export const Build = z.object({
  jobId: JobId,
  /** Whether the job has taken its steps over; until then it shows what it would take. */
  begun: z.boolean(),
  /** Of whom the steps were taken. */
  origin: z.enum(SHEET_ORIGINS),
  /** What kind of work it is; null while nobody said, and it is held for a rebuild. */
  work: z.enum(WORK_KINDS).nullable(),
  /** What a repair touches. */
  touched: z.array(z.enum(WORK_AREAS)),
  /** Why it became this kind of work after the first step was done. */
  workReason: z.string(),
  /** What it seems to be, by what was measured and decided; null when nothing speaks for either. */
  seems: z.enum(WORK_KINDS).nullable(),
  steps: z.array(StepOnBuild),
  closed: z.boolean(),
});
export type Build = z.infer<typeof Build>;

export const build = {
  build: reads.input(z.strictObject({ jobId: JobId })).output(Build),

  /** The job takes its steps over, once; a later revision of the sheet does not change them. */
  beginBuild: writes
    .errors({ JOB_CLOSED })
    .input(z.strictObject({ by: StaffId, jobId: JobId }))
    .output(Build),

  /** Says what kind of work it is; its steps follow. What was done already stays on the list. */
  sayWork: writes
    .errors({
      JOB_CLOSED,
      WORK_REASON_WANTED: {
        status: 409,
        message:
          'Steps were done already. Say in a few words why it is another kind of work now; it is printed.',
      },
    })
    .input(
      z
        .strictObject({
          by: StaffId,
          jobId: JobId,
          work: z.enum(WORK_KINDS),
          touched: z.array(z.enum(WORK_AREAS)).max(WORK_AREAS.length).default([]),
          reason: maybeText(300),
        })
        .refine(({ work, touched }) => work !== 'repair' || touched.length > 0, {
          path: ['touched'],
          message: 'Say what the repair touches: at least one thing.',
        }),
    )
    .output(Build),

  buildSheet: reads
    .input(z.strictObject({ engineModelId: EngineModelId.nullable() }))
    .output(BuildSheet),

  /** A new revision of the sheet; jobs that were begun keep the steps that they have. */
  reviseBuildSheet: writes
    .errors({
      SHEET_MOVED_ON: {
        status: 409,
        message:
          'Somebody revised this build sheet meanwhile. Open it again and amend the newer one.',
        data: z.object({ revision: z.int() }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        engineModelId: EngineModelId.nullable(),
        steps: z.array(StepInput).min(1, 'A build has one step at least.').max(80),
        /** The revision that was amended; without it, whichever is the latest. */
        basedOn: z.int().min(0).nullable().default(null),
      }),
    )
    .output(BuildSheet),
};
