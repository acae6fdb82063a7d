import { z } from 'zod';

/** Refusals that several procedures of the till share. */

export const JOB_CLOSED = {
  status: 409,
  message: 'The job was handed over; its bill is closed. Open a new job for further work.',
} as const;

export const ALREADY_INVOICED = {
  status: 409,
  message: 'The invoice of this job is issued and never changes. Correct it by a credit note.',
} as const;

export const OVER_APPROVAL = {
  status: 409,
  message:
    'The bill would pass what the customer approved. Ask for another approval first; local law decides what may be charged without one.',
  data: z.object({
    /** What the bill would come to, taxes included. */
    total: z.int(),
    /** What it may come to without asking again. */
    limit: z.int(),
    over: z.int(),
  }),
} as const;
