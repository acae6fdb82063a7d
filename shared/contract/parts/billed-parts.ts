import { z } from 'zod';
import { JOB_STATES } from '../../work/counter/job-state.ts';
import { reads, writes } from '../base.ts';
import { text } from '../fields.ts';
import { JobCode, JobId, PartId, StaffId } from '../ids.ts';
import { Thousandths } from './movements.ts';
import { PartName } from './numbers.ts';

/** What is billed and has not left the shelf. Quantities are thousandths. */

export const BilledPart = z.object({
  part: PartName.extend({ bin: z.string() }),
  /** Billed, neither issued nor from elsewhere. */
  quantity: z.int(),
  /** As much of that as the shelf holds for this job, of this part or of one in its place. */
  onShelf: z.int(),
});
export type BilledPart = z.infer<typeof BilledPart>;

export const JobWithBilledParts = z.object({
  jobId: JobId,
  jobCode: JobCode,
  customerName: z.string(),
  machine: z.string(),
  state: z.enum(JOB_STATES),
  parts: z.array(BilledPart),
  /** Why the machine went out nevertheless; empty while it is here. */
  passedOver: z.string(),
});
export type JobWithBilledParts = z.infer<typeof JobWithBilledParts>;

export const billedParts = {
  /** Every job, here or gone, that was billed for parts which have not left the shelf. */
  billedNotIssued: reads.input(z.strictObject({})).output(z.array(JobWithBilledParts)),

  /** What a bill that is about to be issued names and the job was not given. */
  notIssuedOf: reads
    .input(
      z.strictObject({
        jobId: JobId,
        lines: z
          .array(z.strictObject({ partId: PartId, quantity: Thousandths }))
          .max(300, 'No bill has more than 300 lines.'),
      }),
    )
    .output(z.array(BilledPart)),

  /** Takes off the shelf what is billed on a job and has not left it, as far as it is there for that job. */
  issueBilled: writes
    .errors({
      NOTHING_TO_ISSUE: {
        status: 409,
        message:
          'Nothing of what is billed is on the shelf for this job. Receive what came in, or say where it came from.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        /** Of these parts of the bill only; null for all. */
        partIds: z.array(PartId).min(1, 'Choose a part at least.').nullable().default(null),
      }),
    )
    .output(z.array(BilledPart)),

  /** A billed part did not come off the shelf: the customer brought it, or it was bought on the way. */
  fromElsewhere: writes
    .errors({
      MORE_THAN_BILLED: {
        status: 409,
        message: 'Fewer than that are billed and not issued. Look at the bill again.',
        data: z.object({ open: z.int() }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        partId: PartId,
        quantity: Thousandths,
        reason: text(300).pipe(z.string().min(5, 'Say in a few words where it came from.')),
      }),
    )
    .output(z.array(BilledPart)),
};
