import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  lstatSync,
  openSync,
  readSync,
  statSync,
} from 'node:fs';
import { StoreRefusal } from './refusal.ts';

/** SQLite's application id of a Tappet store: `TPPT` in ASCII. */
export const APPLICATION_ID = 0x54505054;

/** How long the header of a SQLite file is. */
const HEADER = 100;

/**
 * Whether a file that begins so is a Tappet store. Offsets: SQLite file format, section 1.3, 'The Database
 * Header' (magic at 0, application id at 68).
 */
export const beginsLikeStore = (bytes: Buffer): boolean =>
  bytes.length >= HEADER &&
  bytes.toString('latin1', 0, 16) === 'SQLite format 3\0' &&
  bytes.readUInt32BE(68) === APPLICATION_ID;

/**
 * Looks at the first hundred bytes only, without SQLite, so that a file that isn't ours is not so much as
 * locked.
 * @returns whether the file is still to be made
 * @throws StoreRefusal NOT_OURS, NO_ACCESS, DAMAGED
 */
export function isNewStore(file: string): boolean {
  if (!existsSync(file)) {
    // A link may lead to a disk that isn't plugged in: a new store there would hide the shop's own.
    if (lstatSync(file, { throwIfNoEntry: false }) !== undefined)
      throw new StoreRefusal('NO_ACCESS', { detail: `${file} leads to nothing that is there.` });
    refuseOrphanedLog(file);
    return true;
  }
  if (!statSync(file).isFile()) throw new StoreRefusal('NOT_OURS');
  accessSync(file, constants.R_OK | constants.W_OK);
  if (statSync(file).size === 0) {
    refuseOrphanedLog(file);
    return true;
  }
  const header = Buffer.alloc(HEADER);
  const handle = openSync(file, 'r');
  try {
    readSync(handle, header, 0, HEADER, 0);
  } finally {
    closeSync(handle);
  }
  if (!beginsLikeStore(header)) throw new StoreRefusal('NOT_OURS');
  return false;
}

/** SQLite would throw away a log without its file, and with it what may be the last of somebody's work. */
function refuseOrphanedLog(file: string): void {
  const log = `${file}-wal`;
  if (existsSync(log) && statSync(log).size > 0)
    throw new StoreRefusal('DAMAGED', { detail: `${log} is there without its store.` });
}
