import { oc } from '@orpc/contract';
import { z } from 'zod';

/**
 * Every error that a user can meet is declared here or beside the procedure that raises it. The message
 * says what to do next.
 */
export const Issue = z.object({ path: z.string(), message: z.string() });

/** What any procedure can answer. */
const everywhere = {
  BAD_INPUT: {
    status: 422,
    message: 'Some of what was entered can’t be used. Mend the fields named and try again.',
    data: z.object({ issues: z.array(Issue) }),
  },
  NOT_FOUND: {
    status: 404,
    message: 'That is not in the store. Search for it again; it may have another number.',
    data: z.object({ what: z.string() }),
  },
  STORE_BUSY: {
    status: 503,
    message: 'The store is closing or busy with a back-up. Wait a moment and try again.',
  },
} as const;

/** What any procedure that writes can answer besides. */
const writing = {
  STAFF_UNKNOWN: {
    status: 409,
    message: 'Nobody on the staff list goes by that. Choose who is at this station and try again.',
  },
} as const;

/** A procedure that only reads. */
export const reads = oc.errors(everywhere);

/** A procedure that writes: its input names who did it (`by`), and it is one transaction. */
export const writes = oc.errors({ ...everywhere, ...writing });
