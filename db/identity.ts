import { closeSync, existsSync, openSync, readSync, statSync } from 'node:fs';
import { StoreRefusal } from './refusal.ts';

/** SQLite's application id of a Tappet store: `TPPT` in ASCII. */
export const APPLICATION_ID = 0x54505054;

/**
 * Looks at the first hundred bytes only, without SQLite, so that a file that isn't ours is not so much as
 * locked. Offsets: SQLite file format, section 1.3, 'The Database Header' (magic at 0, application id at 68).
 * @returns whether the file is still to be made
 * @throws StoreRefusal NOT_OURS
 */
export function isNewStore(file: string): boolean {
  if (!existsSync(file)) return true;
  if (!statSync(file).isFile()) throw new StoreRefusal('NOT_OURS');
  if (statSync(file).size === 0) return true;
  const header = Buffer.alloc(100);
  const handle = openSync(file, 'r');
  try {
    readSync(handle, header, 0, 100, 0);
  } finally {
    closeSync(handle);
  }
  const magic = header.toString('latin1', 0, 16) === 'SQLite format 3\0';
  if (!magic || header.readUInt32BE(68) !== APPLICATION_ID) throw new StoreRefusal('NOT_OURS');
  return false;
}
