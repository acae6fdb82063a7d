import { z } from 'zod';
import { JOB_STATES } from '../../work/counter/job-state.ts';
import { writes } from '../base.ts';
import { CalendarDate, maybeText, SignatureInput, text } from '../fields.ts';
import { JobId, StaffId } from '../ids.ts';
import { JobDossier, PaperCard } from './job.ts';
import { HOLD_POINT_OPEN } from './jobs.ts';

/** Handover: both sign, and the work order is kept. */

export const handover = {
  handOver: writes
    .errors({
      MOVE_REFUSED: {
        status: 409,
        message:
          'Only a job that is ready, or stopped, can be handed over. Finish it at the bench first.',
        data: z.object({ from: z.enum(JOB_STATES), to: z.enum(JOB_STATES) }),
      },
      HOLD_POINT_OPEN,
      NOT_INVOICED: {
        status: 409,
        message: 'There is no invoice yet. Issue it at the till, then hand over.',
      },
      PAYMENT_DUE: {
        status: 409,
        message:
          'The invoice is not paid. Take the payment, or say why the machine goes out owing.',
        data: z.object({ due: z.int() }),
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
        customerSignature: SignatureInput,
        shopSignature: SignatureInput,
      }),
    )
    .output(z.object({ job: JobDossier, workOrder: PaperCard })),
};
