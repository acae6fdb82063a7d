import { z } from 'zod';
import { APPROVAL_WAYS } from '../../work/vocabulary.ts';
import { writes } from '../base.ts';
import { CalendarDate, SignatureInput, text } from '../fields.ts';
import { JobId, MachineId, PromiseId, StaffId } from '../ids.ts';
import { intakeFields, PROMISED_IN_THE_PAST } from './intake.ts';
import { JobDossier, PaperCard } from './job.ts';
import { enginePlate, Machine, machineFields } from './machine.ts';
import { SERIAL_TAKEN } from './records.ts';

/**
 * What is mended or promised anew after intake. What is mended is given whole, as it should stand; papers
 * that were issued stay as they were.
 */

const JOB_CLOSED = {
  status: 409,
  message:
    'The machine was handed over and the job is closed. What comes up now belongs to a new job.',
} as const;

const NOTHING_CHANGED = {
  status: 409,
  message: 'Nothing is different from what is written already. Mend what is wrong, then save it.',
} as const;

export const amendments = {
  /** Promises another day. What was promised before stays on record. */
  movePromise: writes
    .errors({
      PROMISED_IN_THE_PAST,
      JOB_CLOSED,
      SAME_DAY: {
        status: 409,
        message: 'That day is promised already. Choose another, or leave it as it is.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        promisedFor: CalendarDate,
        reason: text(300),
        /** How the customer was told; null when they are still to be told. */
        told: z.enum(APPROVAL_WAYS).nullable(),
      }),
    )
    .output(z.object({ job: JobDossier, tag: PaperCard.nullable() })),

  /** The customer was told of the day that was promised last. */
  tellPromise: writes
    .errors({
      TOLD_ALREADY: {
        status: 409,
        message: 'The customer was told of this day already. Nothing needs doing.',
      },
      PROMISE_MOVED_SINCE: {
        status: 409,
        message:
          'Another day was promised since. Look at the job again, and tell them of that one.',
      },
    })
    .input(z.strictObject({ by: StaffId, promiseId: PromiseId, how: z.enum(APPROVAL_WAYS) }))
    .output(JobDossier),

  /** Mends what was read off the plates. Open jobs get a new tag where theirs says otherwise. */
  amendMachine: writes
    .errors({ SERIAL_TAKEN, NOTHING_CHANGED })
    .input(
      z.strictObject({
        by: StaffId,
        id: MachineId,
        ...machineFields,
        engine: z.strictObject(enginePlate),
      }),
    )
    .output(z.object({ machine: Machine, tags: z.array(PaperCard) })),

  /**
   * Mends what intake wrote down of an open job. What was signed stays: a new claim ticket names the one
   * that it corrects, and the tag is made anew, each when what stands on it changed.
   */
  amendIntake: writes
    .errors({ JOB_CLOSED, NOTHING_CHANGED })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        ...intakeFields,
        reason: text(300),
        /** Of the customer, when they are there to sign again. */
        signature: SignatureInput.nullable().default(null),
      }),
    )
    .output(
      z.object({
        job: JobDossier,
        claimTicket: PaperCard.nullable(),
        tag: PaperCard.nullable(),
      }),
    ),
};
