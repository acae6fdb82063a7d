import { z } from 'zod';
import {
  HANDOVER_MATTERS,
  MATTER_STANDINGS,
  PASSABLE_MATTERS,
} from '../../work/counter/handover-matters.ts';
import { JOB_STATES } from '../../work/counter/job-state.ts';
import { reads, writes } from '../base.ts';
import { CalendarDate, maybeText, SignatureInput, text } from '../fields.ts';
import { JobId, StaffId } from '../ids.ts';
import { JobDossier, PaperCard } from './job.ts';

/** Handover: what is not settled is settled or explained, both sign, and the work order is kept. */

const HandoverMatter = z.object({
  key: z.enum(HANDOVER_MATTERS),
  standing: z.enum(MATTER_STANDINGS),
  says: z.string(),
  /** Single things that it is about, by name. */
  items: z.array(z.string()),
});

/** What a customer is told when the machine goes home. */
export const LeavingWords = z.object({
  /** Why nobody may run it as it leaves; empty of one that may be run. */
  doNotRun: z.string(),
  /** Running in and care, by what was done. */
  advice: z.array(z.string()),
  cautions: z.array(z.string()),
});
export type LeavingWords = z.infer<typeof LeavingWords>;

export const handover = {
  /** What stands between a machine and its owner, settled or not, in the order in which it is settled. */
  handoverMatters: reads.input(z.strictObject({ jobId: JobId })).output(z.array(HandoverMatter)),

  leaving: reads.input(z.strictObject({ jobId: JobId })).output(LeavingWords),

  handOver: writes
    .errors({
      MOVE_REFUSED: {
        status: 409,
        message: 'The machine was handed over already. Look at the work order that was signed.',
        data: z.object({ from: z.enum(JOB_STATES), to: z.enum(JOB_STATES) }),
      },
      NOT_SETTLED: {
        status: 409,
        message:
          'Not everything is settled yet. Settle what is named, or write why it goes out with it where that is allowed.',
        /** All of it at once. */
        data: z.object({ open: z.array(HandoverMatter) }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        /** What was done, in a few sentences, as it stands on the work order. */
        workDone: text(4000),
        oldParts: maybeText(300),
        nextServiceOn: CalendarDate.nullable().default(null),
        /** Why the machine goes out with money owing; empty when nothing is. */
        owingReason: maybeText(500),
        /** Why it goes out with what is not settled; printed on the work order. */
        passedOver: z
          .array(
            z.strictObject({
              matter: z.enum(PASSABLE_MATTERS),
              reason: text(500).pipe(
                z.string().min(10, 'Give the reason in a sentence; it is printed.'),
              ),
            }),
          )
          .max(PASSABLE_MATTERS.length, 'Name each matter once.')
          .default([]),
        customerSignature: SignatureInput,
        shopSignature: SignatureInput,
      }),
    )
    .output(z.object({ job: JobDossier, workOrder: PaperCard })),
};
