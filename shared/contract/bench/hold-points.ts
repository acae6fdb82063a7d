import { z } from 'zod';
import { writes } from '../base.ts';
import { text } from '../fields.ts';
import { JobId, StaffId } from '../ids.ts';
import { JOB_CLOSED } from './common.ts';
import { BenchSheet } from './sheet.ts';

/** Hold points: passed, overridden in writing, reopened. */

export const holdPoints = {
  passHoldPoint: writes
    .errors({
      JOB_CLOSED,
      HOLD_POINT_UNKNOWN: {
        status: 409,
        message: 'This build has no such hold point. Choose one of those on the sheet.',
      },
      READINGS_MISSING: {
        status: 409,
        message: 'This point asks for readings that are not there yet. Record them, then pass it.',
        data: z.object({ features: z.array(z.string()) }),
      },
    })
    .input(z.strictObject({ by: StaffId, jobId: JobId, key: text(60) }))
    .output(BenchSheet),

  overrideHoldPoint: writes
    .errors({
      JOB_CLOSED,
      HOLD_POINT_UNKNOWN: {
        status: 409,
        message: 'This build has no such hold point. Choose one of those on the sheet.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        key: text(60),
        reason: text(500).pipe(z.string().min(5, 'Give the reason in a few words; it is printed.')),
      }),
    )
    .output(BenchSheet),

  reopenHoldPoint: writes
    .errors({
      JOB_CLOSED,
      HOLD_POINT_UNKNOWN: {
        status: 409,
        message: 'This build has no such hold point. Choose one of those on the sheet.',
      },
    })
    .input(z.strictObject({ by: StaffId, jobId: JobId, key: text(60), reason: text(500) }))
    .output(BenchSheet),
};
