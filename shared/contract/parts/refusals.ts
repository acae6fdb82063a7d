import { z } from 'zod';
import { PartId } from '../ids.ts';

/** Refusals that several procedures of the parts room share. */

export const NOT_ON_THE_SHELF = {
  status: 409,
  message:
    'The shelf holds fewer than that. Count the bin, or receive what came in first; with the part in your hand, say so and why.',
  data: z.object({ onHand: z.int() }),
} as const;

export const PROMISED_ELSEWHERE = {
  status: 409,
  message: 'So many are promised to other jobs. Take fewer, or say why this job goes before them.',
  data: z.object({
    /** What this job may take without a reason, thousandths. */
    available: z.int(),
    jobs: z.array(z.string()),
  }),
} as const;

export const MORE_THAN_ISSUED = {
  status: 409,
  message:
    'Fewer than that went to this job and are still with it. Enter fewer; what came from elsewhere is received.',
  data: z.object({ withJob: z.int() }),
} as const;

export const PART_NUMBER_TAKEN = {
  status: 409,
  message:
    'A part has this number already (spaces, dashes and case don’t count). Open that one instead.',
  data: z.object({ partId: PartId }),
} as const;

export const REASON_WANTED = {
  status: 409,
  message: 'Say why in a few words: the next one to look at this shelf will ask.',
} as const;

export const NOTHING_OWED = {
  status: 409,
  message: 'Nothing is to come on this line any more. Look at the order again.',
} as const;
