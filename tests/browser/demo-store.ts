import { copyFileSync, existsSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fingerprint } from '../../electron/launch/fingerprint.ts';
import { programRoot } from '../../electron/launch/root.ts';

const storeFile = 'tappet.db';
const lockedFor = 5 * 60_000;

/** One for each state of the sources and each moment at which the shop's story ends. */
function cacheFolder(storyEnds: Date): string {
  const sources = fingerprint(programRoot, [
    'db',
    'shared',
    'electron/command',
    'electron/desk',
    'electron/paper',
  ]);
  const end = storyEnds.toISOString().replaceAll(/\D/g, '').slice(0, 12);
  return join(programRoot, 'dist', `demo-store-${end}-${sources.slice(0, 12)}`);
}

/** True for the one worker that gets to fill; the lock of one that was stopped goes stale. */
function takeLock(lock: string): boolean {
  try {
    mkdirSync(lock, { recursive: false });
    return true;
  } catch {
    const isStale = existsSync(lock) && Date.now() - statSync(lock).mtimeMs > lockedFor;
    if (isStale) rmSync(lock, { recursive: true, force: true });
    return false;
  }
}

function dropOlder(keep: string): void {
  const dist = join(programRoot, 'dist');
  for (const name of readdirSync(dist)) {
    const path = join(dist, name);
    const isOld = Date.now() - statSync(path).mtimeMs > 24 * 60 * 60_000;
    if (name.startsWith('demo-store-') && path !== keep && isOld) {
      rmSync(path, { recursive: true, force: true });
    }
  }
}

/**
 * Puts a copy of the filled demo shop into a fresh data folder. Filling takes half a minute, so it
 * is done once for all workers and kept for the next run.
 * @param fill fills the invented shop into the folder that it is given
 * @param storyEnds the time at which it does so
 */
export async function copyDemoStore(
  folder: string,
  fill: (cache: string) => Promise<void>,
  storyEnds: Date,
): Promise<void> {
  const cache = cacheFolder(storyEnds);
  mkdirSync(cache, { recursive: true });
  const lock = join(cache, 'being-filled');
  while (!existsSync(join(cache, storeFile)) || existsSync(lock)) {
    if (!takeLock(lock)) {
      await pause(250);
      continue;
    }
    try {
      if (!existsSync(join(cache, storeFile))) await fill(cache);
      dropOlder(cache);
    } finally {
      rmSync(lock, { recursive: true, force: true });
    }
  }
  copyFileSync(join(cache, storeFile), join(folder, storeFile));
}
