import { z } from 'zod';
import { RUN_STANDINGS } from '../../work/bench/run-step.ts';
import { isSentence } from '../../work/written-reason.ts';
import { writes } from '../base.ts';
import { maybeText, text } from '../fields.ts';
import { JobId, StaffId } from '../ids.ts';
import { OVER_APPROVAL } from '../till/refusals.ts';
import { JOB_CLOSED } from './common.ts';
import { BenchSheet } from './sheet.ts';

/** Steps of the build, hold points among them: passed, overridden in writing, reopened. */

const Colour = text(40);

/** What a step asks for besides a tick; each kind of step looks at its own. */
const Done = {
  /** For a quantity: a number, in the unit of the step. */
  quantity: maybeText(20),
  /** For a quantity of which the grade counts: `SAE 30`. */
  grade: maybeText(60),
  /** For which way round, where the sheet does not say it: how it lies. */
  way: maybeText(200),
  /** For wiring: what each wire of the diagram was found joined to. */
  wires: z
    .array(z.strictObject({ from: Colour, to: Colour }))
    .max(40)
    .default([]),
};

const HOLD_POINT_UNKNOWN = {
  status: 409,
  message: 'This build has no such hold point. Choose one of those on the sheet.',
} as const;

export const holdPoints = {
  passHoldPoint: writes
    .errors({
      JOB_CLOSED,
      HOLD_POINT_UNKNOWN,
      OVER_APPROVAL,
      READINGS_MISSING: {
        status: 409,
        message: 'This point asks for readings that are not there yet. Record them, then pass it.',
        data: z.object({ features: z.array(z.string()) }),
      },
      QUANTITY_WANTED: {
        status: 409,
        message: 'This step asks how much. Type the amount as a number, then pass it.',
        data: z.object({ unit: z.string() }),
      },
      GRADE_WANTED: {
        status: 409,
        message: 'This step asks for the grade as well. Type it as it is printed on the can.',
      },
      WAY_WANTED: {
        status: 409,
        message: 'This step asks which way round. Say in a few words how it lies, then pass it.',
      },
      WIRES_DIFFER: {
        status: 409,
        message:
          'A wire is not joined as in the diagram. Put it right and look again, then pass the step.',
        data: z.object({
          wires: z.array(z.object({ from: z.string(), to: z.string(), found: z.string() })),
        }),
      },
      TIGHTENING_UNFINISHED: {
        status: 409,
        message:
          'The tightening was begun and has bolts to go. Pull those that are left, or begin it anew, then pass the step.',
      },
      RUN_WANTED: {
        status: 409,
        message:
          'This step is passed by a test run that was signed off as passed, after it was last reopened. Write that run down, or override the step with the reason.',
        data: z.object({ run: z.enum(RUN_STANDINGS) }),
      },
      PHOTO_WANTED: {
        status: 409,
        message: 'This step asks for a photo. Take or choose one, then pass it.',
      },
    })
    .input(z.strictObject({ by: StaffId, jobId: JobId, key: text(60), ...Done }))
    .output(BenchSheet),

  overrideHoldPoint: writes
    .errors({
      JOB_CLOSED,
      HOLD_POINT_UNKNOWN,
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        key: text(60),
        reason: text(500).refine(isSentence, {
          message:
            'Say why in a sentence, four words or more: whoever reads the work order a year later has only this.',
        }),
      }),
    )
    .output(BenchSheet),

  reopenHoldPoint: writes
    .errors({
      JOB_CLOSED,
      HOLD_POINT_UNKNOWN,
    })
    .input(z.strictObject({ by: StaffId, jobId: JobId, key: text(60), reason: text(500) }))
    .output(BenchSheet),
};
