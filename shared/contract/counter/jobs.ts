import { z } from 'zod';
import { JOB_STATES, WAITS_ON } from '../../work/counter/job-state.ts';
import { reads, writes } from '../base.ts';
import { CalendarDate, maybeText, text } from '../fields.ts';
import { JobCode, JobId, StaffId } from '../ids.ts';
import { JobCard, JobDossier } from './job.ts';

/** Jobs: listed, found, moved, and the day that they make. */

export const SearchHit = z.object({
  kind: z.enum(['job', 'customer', 'machine', 'part', 'engine-model']),
  /** Id of the thing itself; for a machine hit, the machine's. */
  id: z.uuid(),
  title: z.string(),
  detail: z.string(),
  /** The job's code for a job, the customer's id for a machine; else empty. */
  reference: z.string(),
});
export type SearchHit = z.infer<typeof SearchHit>;

const HOLD_POINT_OPEN = {
  status: 409,
  message:
    'Hold points of the build are still open. Pass them at the bench, or override them there with a reason in writing.',
  data: z.object({ open: z.array(z.string()) }),
} as const;

export const jobs = {
  jobs: reads
    .input(
      z.strictObject({
        text: maybeText(200),
        states: z.array(z.enum(JOB_STATES)).default([]),
        limit: z.int().min(1).max(1000).default(200),
      }),
    )
    .output(z.array(JobCard)),

  /** One job, by its id or by the code that the tag's barcode says. */
  job: reads
    .input(z.union([z.strictObject({ id: JobId }), z.strictObject({ code: JobCode })]))
    .output(JobDossier),

  moveJob: writes
    .errors({
      MOVE_REFUSED: {
        status: 409,
        message: 'The job can’t go there from where it stands. Choose one of the moves offered.',
        data: z.object({ from: z.enum(JOB_STATES), to: z.enum(JOB_STATES) }),
      },
      HOLD_POINT_OPEN,
      REASON_WANTED: {
        status: 409,
        message: 'Say why in a few words: this move needs a reason.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        to: z.enum(JOB_STATES),
        note: maybeText(500),
        /** Of a job that stops: nobody may run the machine as it stands, for the reason given. */
        doNotRun: z.boolean().default(false),
      }),
    )
    .output(JobDossier),

  /** The start page: what is promised, and what waits on whom. */
  day: reads.input(z.strictObject({ date: CalendarDate.nullable().default(null) })).output(
    z.object({
      date: CalendarDate,
      late: z.array(JobCard),
      today: z.array(JobCard),
      soon: z.array(JobCard),
      /** Another day was promised, and the customer does not know yet. */
      toTell: z.array(JobCard),
      /** Their slowest missing part is expected after the day promised. */
      partsTooLate: z.array(z.object({ job: JobCard, expectedOn: CalendarDate })),
      waiting: z.array(z.object({ on: z.enum(WAITS_ON), jobs: z.array(JobCard) })),
      figures: z.object({
        open: z.int(),
        ready: z.int(),
        takenInThisWeek: z.int(),
        handedOverThisWeek: z.int(),
      }),
    }),
  ),

  /** Jobs, customers, machines, parts and engine models, from anywhere. */
  search: reads.input(z.strictObject({ text: text(200) })).output(z.array(SearchHit)),
};
