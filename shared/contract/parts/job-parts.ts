import { z } from 'zod';
import { JOB_STATES } from '../../work/counter/job-state.ts';
import { reads, writes } from '../base.ts';
import { CalendarDate, maybeText, text } from '../fields.ts';
import { JobId, PartId, StaffId } from '../ids.ts';
import { OVER_APPROVAL } from '../till/refusals.ts';
import { BilledPart } from './billed-parts.ts';
import { Thousandths } from './movements.ts';
import { PartName } from './numbers.ts';
import { MORE_THAN_ISSUED, NOT_ON_THE_SHELF, PROMISED_ELSEWHERE } from './refusals.ts';

/** What a job needs from the stores and what it has of it. Quantities are thousandths. */

export const JobPart = z.object({
  part: PartName.extend({ bin: z.string() }),
  /** Billed; or as long as there is no bill approved, or ordered for this job alone. Zero for what nobody asked for. */
  needed: z.int(),
  promised: z.int(),
  /** All that went to the job, of this part or one in its place; what came back included. */
  issued: z.int(),
  returned: z.int(),
  /** Still to leave the shelf for it: needed, less what was issued; of what is billed, less what is with it. */
  open: z.int(),
  /** Billed and not off the shelf here, by what somebody wrote; thousandths, taken off what is needed. */
  elsewhere: z.int(),
  /** Needed, and neither issued nor there. */
  missing: z.int(),
  /** Of what is missing: on order for it, and the day by which the last of that should be there. */
  onOrder: z.int(),
  expectedOn: CalendarDate.nullable(),
  /** Parts of the same chain with stock, or with something promised or issued to the job. */
  inItsPlace: z.array(
    PartName.extend({
      bin: z.string(),
      former: z.boolean(),
      promised: z.int(),
      withJob: z.int(),
    }),
  ),
  /** Of this very part, issued and not returned. */
  withJob: z.int(),
  isKit: z.boolean(),
});
export type JobPart = z.infer<typeof JobPart>;

export const JobParts = z.object({
  jobId: JobId,
  jobCode: z.string(),
  state: z.enum(JOB_STATES),
  /** There is a bill of the work: what is needed is what it names. */
  billed: z.boolean(),
  parts: z.array(JobPart),
  /** Of the bill, what has not left the shelf and does not come from elsewhere. */
  notIssued: z.array(BilledPart),
  /** Issued, and not on the bill; thousandths. */
  notBilled: z.array(z.object({ part: PartName, quantity: z.int() })),
  /** How many of the parts are missing. */
  missing: z.int(),
  /** The day by which the slowest missing part should be there; null when one is not on order or has no date. */
  expectedOn: CalendarDate.nullable(),
  /** Where the job may go because of its parts: to wait for them, or on with it, now that all are there. */
  mayMoveTo: z.enum(JOB_STATES).nullable(),
  /** What the parts that the job has had cost the shop, minor units. */
  cost: z.int(),
});
export type JobParts = z.infer<typeof JobParts>;

export const JobPartsCard = z.object({
  jobId: JobId,
  jobCode: z.string(),
  customerName: z.string(),
  machine: z.string(),
  state: z.enum(JOB_STATES),
  /** What is missing, in words: `Piston +0.50 (HV 740-50)`. */
  missing: z.array(z.string()),
  expectedOn: CalendarDate.nullable(),
  /** There and not taken off the shelf yet: how many parts. */
  toIssue: z.int(),
});
export type JobPartsCard = z.infer<typeof JobPartsCard>;

export const jobParts = {
  jobParts: reads.input(z.strictObject({ jobId: JobId })).output(JobParts),

  /** Open jobs that need parts: those that wait though all is there first, then by the day expected. */
  jobsAndParts: reads.input(z.strictObject({})).output(z.array(JobPartsCard)),

  /**
   * Takes a part off the shelf for a job by what was scanned: its own number, any other, or a barcode. A
   * number that several parts have means the one that the job needs.
   */
  issue: writes
    .errors({
      NUMBER_UNKNOWN: {
        status: 404,
        message: 'No part here has this number. Search for it by name, then add the number to it.',
      },
      NUMBER_OF_SEVERAL: {
        status: 409,
        message: 'Several parts have this number, and the job needs none of them. Choose one.',
        data: z.object({ parts: z.array(PartName) }),
      },
      JOB_CLOSED: {
        status: 409,
        message:
          'The job was handed over: only what it was billed for and not given can be issued to it. Issue other parts to a job that is open.',
      },
      NOT_ON_THE_SHELF,
      PROMISED_ELSEWHERE,
      OVER_APPROVAL,
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        number: text(120),
        quantity: Thousandths.default(1000),
        /** Why it is taken from other jobs, or from a shelf that should hold none. */
        reason: maybeText(300),
        belowNothing: z.boolean().default(false),
      }),
    )
    .output(z.object({ issued: PartName, job: JobParts })),

  /** Unused parts go back onto the shelf at what they were issued at. */
  takeBack: writes
    .errors({ MORE_THAN_ISSUED })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        partId: PartId,
        quantity: Thousandths,
        reason: maybeText(300),
      }),
    )
    .output(JobParts),

  /** Puts the job where it waits for what is missing, or on with it when the last of it is there. */
  moveByParts: writes
    .errors({
      NOTHING_TO_MOVE: {
        status: 409,
        message:
          'The parts are no reason to move this job now. See what is missing, then move it by hand.',
      },
    })
    .input(z.strictObject({ by: StaffId, jobId: JobId }))
    .output(JobParts),
};
