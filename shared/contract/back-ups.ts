import { z } from 'zod';
import {
  BACK_UP_ORIGINS,
  type BackUpTroubleCode,
  LONG_WORK_KINDS,
  LONG_WORK_STATES,
  LONG_WORK_STEPS,
} from '../work/office/back-ups.ts';
import { OWNER_WANTED, reads, writes } from './base.ts';
import { Instant, text } from './fields.ts';
import { LongWorkId, StaffId, UploadId } from './ids.ts';

/** Back-ups: made, kept elsewhere, and brought back. What takes long shows how far it is, and can be stopped. */

/** A file goes over the contract in pieces of so many bytes: 4 MB. */
export const LARGEST_PIECE = 4 * 1024 * 1024;

/** Nothing was touched when one of these is met. */
export const BACK_UP_REFUSALS = {
  NOT_OURS: {
    status: 422,
    message:
      'That file is not a back-up of Tappet. Choose one that Tappet made: its name begins with “tappet-” and ends in “.db”.',
  },
  NEWER_PROGRAM: {
    status: 409,
    message:
      'A newer Tappet made this back-up. Install that version or a later one on this machine, then bring it back.',
  },
  MIGRATIONS_DIFFER: {
    status: 409,
    message:
      'This back-up was made, or changed, by another program than this Tappet. Bring it back with the program that made it, or choose another.',
  },
  DAMAGED: {
    status: 422,
    message:
      'This file is damaged, and nothing of it was used. Take another copy of it, or an earlier back-up.',
  },
  JOURNAL_BROKEN: {
    status: 422,
    message:
      'The journal in this back-up does not hold together: an entry was changed or taken out after it was written. Choose an earlier back-up.',
  },
  NO_SHOP: {
    status: 422,
    message: 'There is no shop in this back-up: no owner is on its staff list. Choose another.',
  },
  FILE_CHANGED: {
    status: 409,
    message: 'This is not the file that was checked. Check it again before you bring it back.',
  },
  UPDATE_FAILED: {
    status: 409,
    message:
      'This back-up could not be brought up to this version of Tappet, and nothing was changed. Bring it back with the version that made it.',
  },
} as const satisfies Record<BackUpTroubleCode, { status: number; message: string }>;

export const STOPPED = {
  status: 409,
  message: 'This was stopped before its end, and nothing was changed. Begin again when you like.',
} as const;

const WORK_UNDER_WAY = {
  status: 409,
  message: 'A back-up is being made, checked or brought back. Wait for it, or stop it first.',
} as const;

const ofLongWork = { ...BACK_UP_REFUSALS, STOPPED, WORK_UNDER_WAY };

/** Answers only when the work is done, for who can't come back to look. */
const wait = z.boolean().default(true);

const BackUp = z.object({
  fileName: z.string(),
  folder: z.string(),
  bytes: z.int(),
  /** Hexadecimal. */
  sha256: z.string(),
  at: Instant,
});

const BackUpFile = z.object({
  fileName: z.string(),
  at: Instant,
  bytes: z.int(),
  origin: z.enum(BACK_UP_ORIGINS),
  /** Whether it was read through when it was made. */
  verified: z.boolean(),
});
export type BackUpFile = z.infer<typeof BackUpFile>;

/** What is in a file that was checked, and what the store has that the file has not. */
const FoundBackUp = z.object({
  fileName: z.string(),
  bytes: z.int(),
  sha256: z.string(),
  /** As its name says; null for a file with another name. */
  madeAt: Instant.nullable(),
  shop: z.string(),
  demo: z.boolean(),
  /** Whether an older version made it: it is brought up to this one. */
  older: z.boolean(),
  /** Entries of its journal, and the last of them. */
  entries: z.int(),
  lastEntry: z.object({ at: Instant, by: z.string(), what: z.string() }).nullable(),
  owners: z.array(z.object({ id: StaffId, name: z.string() })),
  customers: z.int(),
  jobs: z.int(),
  invoices: z.int(),
  lost: z.object({
    /** Entries of the store's journal when the file was checked. */
    storeEntries: z.int(),
    /** Those of them that the file has not. */
    entries: z.int(),
    /** False for a back-up of another shop. */
    sameShop: z.boolean(),
    customers: z.int(),
    /** Jobs and invoices as their tags and papers name them. */
    jobs: z.array(z.string()),
    invoices: z.array(z.string()),
    payments: z.int(),
    readings: z.int(),
  }),
});
export type FoundBackUp = z.infer<typeof FoundBackUp>;

const LongWork = z.object({
  id: LongWorkId,
  kind: z.enum(LONG_WORK_KINDS),
  state: z.enum(LONG_WORK_STATES),
  step: z.enum(LONG_WORK_STEPS),
  /** How much of the step is done, from 0 to 1. */
  share: z.number(),
  /** The copy that was made: of a back-up, or of what was there before another was brought back. */
  backUp: BackUp.nullable(),
  /** Of a check that is done. */
  found: FoundBackUp.nullable(),
  /** Why it failed, with what to do next. */
  trouble: z.object({ code: z.string(), message: z.string() }).nullable(),
});
export type LongWork = z.infer<typeof LongWork>;

const BackUpsList = z.object({
  folder: z.string(),
  files: z.array(BackUpFile),
  /** How many daily ones are kept. */
  dailyKept: z.int(),
  /** Why the last daily one was not made; null when it was. */
  dailyTrouble: z.string().nullable(),
  underWay: LongWork.nullable(),
});
export type BackUpsList = z.infer<typeof BackUpsList>;

/** One of the list; or, with `upload`, a file that came in pieces and had this name where it came from. */
const BackUpSource = z.strictObject({
  fileName: text(255),
  upload: UploadId.nullable().default(null),
});
export type BackUpSource = z.infer<typeof BackUpSource>;

export const backUps = {
  /** Copies the store into the folder of back-ups, and reads the copy through before it counts. */
  backUp: writes
    .errors(ofLongWork)
    .input(z.strictObject({ by: StaffId, wait }))
    .output(LongWork),

  /** The back-ups there are, newest first. */
  backUps: reads.input(z.strictObject({})).output(BackUpsList),

  longWork: reads.input(z.strictObject({ id: LongWorkId })).output(LongWork),

  /** Once a file is being put in place it is too late: then it is done in a moment. */
  stopLongWork: reads.input(z.strictObject({ id: LongWorkId })).output(LongWork),

  /** A piece of a back-up, to keep the file elsewhere; the last one ends at `size`. */
  readBackUpPiece: reads
    .input(z.strictObject({ fileName: text(255), at: z.int().min(0) }))
    .output(z.object({ bytes: z.base64(), size: z.int() })),

  /** Takes in a file from elsewhere, piece by piece, to be checked. One that was sent before makes way for it. */
  sendBackUpPiece: reads
    .errors({
      NOT_OURS: BACK_UP_REFUSALS.NOT_OURS,
      WORK_UNDER_WAY,
      PIECE_MISSING: {
        status: 409,
        message: 'The file did not arrive whole. Choose it again.',
      },
    })
    .input(
      z.strictObject({
        /** Null for the first piece of a file. */
        upload: UploadId.nullable().default(null),
        /** Where in the file the piece belongs. */
        at: z.int().min(0),
        bytes: z.base64().max(Math.ceil(LARGEST_PIECE / 3) * 4 + 4),
      }),
    )
    .output(z.object({ upload: UploadId })),

  /** Reads a file through, and says what is in it and what would be lost. Nothing is changed. */
  checkBackUp: reads
    .errors(ofLongWork)
    .input(z.strictObject({ from: BackUpSource, wait }))
    .output(LongWork),

  /**
   * Puts a back-up in the place of the store, which is itself backed up first; nobody can write meanwhile. Only
   * for an owner. Before the shop is set up nobody is on the staff list: then `by` is an owner of the back-up's.
   */
  bringBack: writes
    .errors({
      ...ofLongWork,
      OWNER_WANTED,
      STORE_MOVED_ON: {
        status: 409,
        message:
          'Something was written in the shop since this back-up was checked. Check it again, and look at what would be lost.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        from: BackUpSource,
        /** What the check found: of the file, and how many entries the store’s journal had. */
        sha256: z.string().regex(/^[0-9a-f]{64}$/, 'Give the SHA-256 that the check found.'),
        storeEntries: z.int().min(0),
        reason: text(300),
        wait,
      }),
    )
    .output(LongWork),
};
