/** Why a store can't be opened, for people: the message says what happened and what to do next. */
export type StoreRefusalCode =
  | 'NOT_OURS'
  | 'NEWER_PROGRAM'
  | 'MIGRATIONS_DIFFER'
  | 'IN_USE'
  | 'DAMAGED'
  | 'MIGRATION_FAILED'
  | 'NO_ACCESS'
  | 'DISK_FULL'
  | 'DISK_FAILING';

const SENTENCES: Record<StoreRefusalCode, string> = {
  NOT_OURS:
    'That file is not a Tappet store, so it was left as it is. Choose another folder, or move the file away first.',
  NEWER_PROGRAM:
    'This store was written by a newer Tappet, so it was left as it is. Install that version or a later one and open it again.',
  MIGRATIONS_DIFFER:
    'This store was built by another make of Tappet than this one, so it was left as it is. Open it with the program that made it, or move it away and bring a back-up back on the first page.',
  IN_USE: 'Another Tappet has this store open. Close that one, or use the address that it printed.',
  DAMAGED:
    'This store is damaged and was left as it is. Move it away, with the files beside it whose names begin with its own; start Tappet again, and bring the latest back-up back on its first page.',
  MIGRATION_FAILED:
    'The store could not be brought up to this version; nothing in it was changed. Go back to the version you had, and report what follows.',
  NO_ACCESS:
    'The place of the store can’t be read and written. Choose another folder, or mend its permissions.',
  DISK_FULL:
    'There is no room left on the disk, so the store was left as it is. Make room, then start Tappet again.',
  DISK_FAILING:
    'The disk does not read or write as it should, so the store was left as it is. Have the disk looked at, and start Tappet again.',
};

/** A store that is not opened, with its file untouched. */
export class StoreRefusal extends Error {
  readonly code: StoreRefusalCode;

  constructor(code: StoreRefusalCode, options: { cause?: unknown; detail?: string } = {}) {
    super(options.detail ? `${SENTENCES[code]} (${options.detail})` : SENTENCES[code], {
      cause: options.cause,
    });
    this.name = 'StoreRefusal';
    this.code = code;
  }
}

/** Nobody may write just now: another store is about to take this one's place. */
export class StoreHeld extends Error {
  constructor() {
    super('The store is held.');
    this.name = 'StoreHeld';
  }
}
