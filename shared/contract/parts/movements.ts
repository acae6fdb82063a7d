import { z } from 'zod';
import { MOVEMENT_KINDS } from '../../work/parts/stock-words.ts';
import { writes } from '../base.ts';
import { Instant, maybeText, text } from '../fields.ts';
import { JobId, PartId, StaffId } from '../ids.ts';
import { OVER_APPROVAL } from '../till/refusals.ts';
import { Part } from './part.ts';
import {
  MORE_THAN_ISSUED,
  NOT_ON_THE_SHELF,
  PROMISED_ELSEWHERE,
  REASON_WANTED,
} from './refusals.ts';

/** Movements that a person enters by hand; the others follow from jobs and orders. */
export const HAND_MOVEMENTS = ['received', 'issued', 'returned', 'scrapped', 'counted'] as const;

export const Movement = z.object({
  kind: z.enum(MOVEMENT_KINDS),
  /** Signed thousandths: what it adds to the shelf. */
  quantity: z.int(),
  /** What it adds to the shelf's worth, minor units. */
  worth: z.int(),
  /** What it adds to what is promised to its job. */
  reserved: z.int(),
  /** What it adds to what suppliers owe. */
  ordered: z.int(),
  reason: z.string(),
  jobCode: z.string(),
  by: z.string(),
  at: Instant,
});
export type Movement = z.infer<typeof Movement>;

const MOST = 1_000_000_000;

/** A quantity above zero. */
export const Thousandths = z.int().min(1, 'A quantity is more than zero.').max(MOST);

export const movements = {
  /** One movement on the shelf: received, returned, scrapped or issued to a job. */
  move: writes
    .errors({
      NOT_ON_THE_SHELF,
      PROMISED_ELSEWHERE,
      MORE_THAN_ISSUED,
      REASON_WANTED,
      OVER_APPROVAL,
      JOB_WANTED: {
        status: 409,
        message: 'Say which job the part goes to: issuing and returning need a job.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        partId: PartId,
        kind: z.enum(HAND_MOVEMENTS),
        /** Thousandths; for a count, what is in the bin (zero or more). */
        quantity: z.union([Thousandths, z.literal(0)]),
        jobId: JobId.nullable().default(null),
        reason: maybeText(300),
        /** For what is issued with a reason: the part is there, whatever the shelf should hold. */
        belowNothing: z.boolean().default(false),
      }),
    )
    .output(Part),

  /** Puts a shelf right by a difference that somebody can explain: found, missed, booked wrongly. */
  putRight: writes
    .errors({ NOT_ON_THE_SHELF })
    .input(
      z.strictObject({
        by: StaffId,
        partId: PartId,
        /** Thousandths, below zero for what is missing. */
        difference: z
          .int()
          .min(-MOST)
          .max(MOST)
          .refine((difference) => difference !== 0, 'A difference is not zero.'),
        reason: text(300),
      }),
    )
    .output(Part),
};
