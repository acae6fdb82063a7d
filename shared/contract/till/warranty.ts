import { z } from 'zod';
import { reads } from '../base.ts';
import { JobCard } from '../counter/index.ts';
import { Instant } from '../fields.ts';
import { JobCode, JobId } from '../ids.ts';

/** Work that comes back: done again at no charge, with its cost on the job that it goes back to. */

export const WarrantyWork = z.object({
  /** The job on which it was done. */
  jobId: JobId,
  jobCode: JobCode,
  /** The job that it goes back to. */
  warrantyOf: JobCode,
  invoiceNumber: z.string(),
  reason: z.string(),
  /** What it cost the shop, as far as it is known. */
  cost: z.int(),
  /** Lines whose cost nobody knows: they are not in it. */
  unknown: z.int(),
  at: Instant,
});
export type WarrantyWork = z.infer<typeof WarrantyWork>;

export const warranty = {
  warranty: reads.input(z.strictObject({ jobId: JobId })).output(
    z.object({
      /** Jobs that this one may go back to: those of the same machine that were handed over, newest first. */
      earlier: z.array(JobCard),
      /** What this job was done for at no charge, and what came back from it; oldest first. */
      work: z.array(WarrantyWork),
    }),
  ),
};
