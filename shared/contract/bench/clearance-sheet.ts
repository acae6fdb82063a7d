import { z } from 'zod';
import { writes } from '../base.ts';
import { PaperCard } from '../counter/index.ts';
import { JobId, StaffId } from '../ids.ts';

/** The clearance sheet: what was measured so far, as a paper of its own. */
export const clearanceSheet = {
  /** Issues the sheet of what stands now; one issued before stays as it was. */
  printClearanceSheet: writes
    .errors({
      NOTHING_MEASURED: {
        status: 409,
        message:
          'Nothing was measured on this job yet. Take a reading first, then print the sheet.',
      },
    })
    .input(z.strictObject({ by: StaffId, jobId: JobId, bothUnits: z.boolean() }))
    .output(PaperCard),
};
