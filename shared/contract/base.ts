import { oc } from '@orpc/contract';
import { z } from 'zod';
import './sentences.ts';

/**
 * Every error that a user can meet is declared here or beside the procedure that raises it. The message
 * says what to do next.
 */
export const Issue = z.object({ path: z.string(), message: z.string() });

export const BAD_INPUT = {
  status: 422,
  message: 'Some of what was entered can’t be used. Mend the fields named and try again.',
  data: z.object({ issues: z.array(Issue) }),
} as const;

export const NOT_FOUND = {
  status: 404,
  message: 'That is not in the store. Search for it again; it may have another number.',
  data: z.object({ what: z.string() }),
} as const;

export const STAFF_UNKNOWN = {
  status: 409,
  message: 'Nobody on the staff list goes by that. Choose who is at this station and try again.',
} as const;

/** For what only the owner decides. */
export const OWNER_WANTED = {
  status: 409,
  message: 'Only an owner can do this. Let the owner take this station, then repeat it.',
} as const;

export const STORE_BUSY = {
  status: 503,
  message: 'Tappet is closing. Start it again, then repeat this step.',
} as const;

/** The disk under the store, which any procedure may meet with. */
export const STORE_TROUBLE = {
  DISK_FULL: {
    status: 507,
    message:
      'There is no room left on the disk, so nothing of this step was kept. Make room on it, then try again.',
  },
  STORE_FAILING: {
    status: 500,
    message:
      'The store can’t be read or written as it should, so nothing of this step was kept. Close Tappet and have the disk looked at; start it again with the latest back-up if it can’t be mended.',
  },
} as const;

/** A procedure that only reads. */
export const reads = oc.errors({ BAD_INPUT, NOT_FOUND, STORE_BUSY, ...STORE_TROUBLE });

/** A procedure that writes: its input names who did it (`by`), and it is one transaction. */
export const writes = oc.errors({
  BAD_INPUT,
  NOT_FOUND,
  STORE_BUSY,
  STAFF_UNKNOWN,
  ...STORE_TROUBLE,
});

/** The one procedure that writes before there is anybody who could have done it. */
export const opens = oc.errors({ BAD_INPUT, STORE_BUSY, ...STORE_TROUBLE });
