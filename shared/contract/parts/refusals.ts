import { z } from 'zod';

/** Refusals that several procedures of the parts room share. */

export const NOT_ON_THE_SHELF = {
  status: 409,
  message: 'The shelf holds fewer than that. Count the bin, or receive what came in first.',
  data: z.object({ onHand: z.int() }),
} as const;
