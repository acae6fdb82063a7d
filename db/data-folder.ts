import { accessSync, constants, existsSync, mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { StoreRefusal } from './refusal.ts';

/**
 * Makes the folder if it isn't there, for its owner's eyes only, and sees that it can be used.
 * @throws StoreRefusal NO_ACCESS
 */
export function provideDataFolder(folder: string): void {
  try {
    makeFolder(folder, 0o700);
    accessSync(folder, constants.R_OK | constants.W_OK);
  } catch (error) {
    throw new StoreRefusal('NO_ACCESS', { cause: error, detail: folder });
  }
}

const isFolder = (path: string): boolean =>
  statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;

/**
 * Makes a folder with those above it, step by step: Node's own recursion never ends where the system denies
 * that anything can be made.
 * @throws Error of the system
 */
export function makeFolder(folder: string, mode = 0o777): void {
  if (isFolder(folder)) return;
  if (!existsSync(folder)) makeFolder(dirname(folder), mode);
  try {
    mkdirSync(folder, { mode });
  } catch (error) {
    // Another program that starts at the same moment may have been quicker.
    if (!isFolder(folder)) throw error;
  }
}
