import { accessSync, constants, existsSync, mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { StoreRefusal } from './refusal.ts';

/**
 * Makes the folder if it isn't there, for its owner's eyes only, and sees that it can be used.
 * @throws StoreRefusal NO_ACCESS
 */
export function provideDataFolder(folder: string): void {
  try {
    make(folder);
    accessSync(folder, constants.R_OK | constants.W_OK);
  } catch (error) {
    throw new StoreRefusal('NO_ACCESS', { cause: error, detail: folder });
  }
}

/** Step by step: Node's own recursion never ends where the system denies that anything can be made. */
function make(folder: string): void {
  if (existsSync(folder)) return;
  make(dirname(folder));
  try {
    mkdirSync(folder, { mode: 0o700 });
  } catch (error) {
    // Another program that starts at the same moment may have been quicker.
    if (!existsSync(folder)) throw error;
  }
}
