import { z } from 'zod';
import { SPECIFICATION_UNITS } from '../specbook.ts';

/** What the files of the bench share. */

export const VERDICTS = ['within', 'outside', 'too-close', 'no-band'] as const;
export type Verdict = (typeof VERDICTS)[number];

export const Unit = z.enum(SPECIFICATION_UNITS);

/** From the square drive of a torque wrench to the mark on its grip, mm. */
export const WrenchLength = z
  .number()
  .positive('A wrench has a length above zero.')
  .max(2_000, 'That is longer than any wrench here. Type it in millimetres, drive to grip.');

export const JOB_CLOSED = {
  status: 409,
  message: 'The job was handed over; its record is closed. Take the machine in again to add to it.',
} as const;
