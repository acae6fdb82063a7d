import { z } from 'zod';
import { CHECKS, FOUND } from '../../work/bench/diagnosis.ts';
import { LEAK_PATHS } from '../../work/bench/test-run.ts';
import { reads, writes } from '../base.ts';
import { Instant, maybeText, text } from '../fields.ts';
import { FindingId, JobId, StaffId } from '../ids.ts';
import { JOB_CLOSED } from './common.ts';
import { Proposal } from './decisions.ts';

/** Diagnosis: what was looked at before anything is taken apart, what was found, and what it takes. */

const WORK_KINDS = ['labour', 'part', 'outside'] as const;

export const Finding = z.object({
  id: FindingId,
  check: z.enum(CHECKS),
  found: z.enum(FOUND),
  figures: z.array(
    z.object({
      cylinder: z.int(),
      /** As typed. */
      text: z.string(),
      unit: z.string(),
      /** kPa or per cent. */
      base: z.number(),
      path: z.enum(LEAK_PATHS).nullable(),
    }),
  ),
  words: z.string(),
  work: z.array(z.object({ kind: z.enum(WORK_KINDS), description: z.string() })),
  by: z.string(),
  at: Instant,
});
export type Finding = z.infer<typeof Finding>;

export const Diagnosis = z.object({
  jobId: JobId,
  cylinders: z.int(),
  /** What the spec book says of cranking pressure, kPa; null where it says nothing. */
  compression: z.object({ low: z.number().nullable(), high: z.number().nullable() }).nullable(),
  closed: z.boolean(),
  /** Those that stand, in the order of the checks. */
  findings: z.array(Finding),
  /** Those that were corrected since, the latest first. */
  superseded: z.array(Finding),
  /** The estimate lines that follow; nothing is written. */
  lines: z.array(Proposal),
});
export type Diagnosis = z.infer<typeof Diagnosis>;

export const diagnosis = {
  diagnosis: reads.input(z.strictObject({ jobId: JobId })).output(Diagnosis),

  noteFinding: writes
    .errors({
      JOB_CLOSED,
      SUPERSEDED_ALREADY: {
        status: 409,
        message:
          'Somebody noted or corrected this check meanwhile. Look at what stands now, then correct it if you see it otherwise.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        check: z.enum(CHECKS),
        found: z.enum(FOUND),
        /** Of compression and leak-down: what the gauge showed, empty where it was not measured. */
        figures: z
          .array(
            z.strictObject({
              cylinder: z.int().min(1).max(4),
              text: maybeText(40),
              unit: z.enum(['kPa', 'psi', '%']),
              path: z.enum(LEAK_PATHS).nullable().default(null),
            }),
          )
          .max(4)
          .default([]),
        words: maybeText(1000),
        /** What it takes, a line of the estimate each. */
        work: z
          .array(z.strictObject({ kind: z.enum(WORK_KINDS), description: text(200) }))
          .max(8)
          .default([]),
        /** The finding on this check that stands, when there is one; only `other` may have more. */
        supersedes: FindingId.nullable().default(null),
      }),
    )
    .output(Diagnosis),
};
