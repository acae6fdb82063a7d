import { existsSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import {
  type BackUpOrigin,
  dailyToDrop,
  readBackUpName,
} from '../../shared/work/office/back-ups.ts';

export interface BackUpFile {
  fileName: string;
  /** When it was made, or, of a file that somebody put there, when it was last written. */
  at: string;
  bytes: number;
  origin: BackUpOrigin;
  /** A copy of ours gets its name only after it was checked; what others put there was not. */
  verified: boolean;
}

/** The back-ups there are, newest first. */
export function backUpsIn(folder: string): BackUpFile[] {
  mkdirSync(folder, { recursive: true });
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.db'))
    .map(({ name }) => {
      const { size, mtime } = statSync(join(folder, name));
      const said = readBackUpName(name);
      return {
        fileName: name,
        at: said?.at ?? mtime.toISOString(),
        bytes: size,
        origin: said?.origin ?? 'put-there',
        verified: said !== null,
      };
    })
    .sort((a, b) => (a.at < b.at ? 1 : -1));
}

/** Leaves as many daily back-ups as are kept. */
export function dropOldDaily(folder: string): void {
  for (const name of dailyToDrop(readdirSync(folder))) rmSync(join(folder, name));
}

/** What a program that was stopped in the middle of copying left behind. */
export function dropUnfinished(folder: string): void {
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder))
    if (name.includes('.db.unfinished')) rmSync(join(folder, name), { force: true });
}
