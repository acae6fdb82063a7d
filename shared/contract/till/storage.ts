import { z } from 'zod';
import { reads } from '../base.ts';
import { JobCard } from '../counter/index.ts';
import { CalendarDate } from '../fields.ts';
import { JobId } from '../ids.ts';
import { LineInput } from './lines.ts';

/** Machines that nobody collects. Local law decides what may be charged for one, and after what notice. */

export const Storage = z.object({
  /** The day from which it could be collected. */
  since: CalendarDate,
  /** Days since then. */
  waited: z.int(),
  /** Days of those that are charged by the shop's rule. */
  charged: z.int(),
  /** What they cost, with the part that was billed. */
  amount: z.int(),
  /** What has not been billed of it. */
  toBill: z.int(),
  /** That as a line of a bill; null when there is nothing to bill. */
  line: LineInput.nullable(),
});
export type Storage = z.infer<typeof Storage>;

export const storage = {
  /** Null while the machine can’t be collected, or was. */
  storage: reads.input(z.strictObject({ jobId: JobId })).output(Storage.nullable()),

  /** Machines that have waited for two weeks or longer, or cost something already; the longest first. */
  uncollected: reads
    .input(z.strictObject({}))
    .output(z.array(z.object({ job: JobCard, storage: Storage }))),
};
