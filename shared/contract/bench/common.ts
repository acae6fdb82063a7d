import { z } from 'zod';
import { SPECIFICATION_UNITS } from '../specbook.ts';

/** What the files of the bench share. */

export const VERDICTS = ['within', 'outside', 'too-close', 'no-band'] as const;
export type Verdict = (typeof VERDICTS)[number];

export const Unit = z.enum(SPECIFICATION_UNITS);

export const JOB_CLOSED = {
  status: 409,
  message: 'The job was handed over; its record is closed. Take the machine in again to add to it.',
} as const;
