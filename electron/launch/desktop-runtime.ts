import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { programRoot } from './root.ts';

const electronFolder = join(programRoot, 'node_modules', 'electron');
/** A note of the last failure, so that the next start does not wait for the network again. */
const failureNote = join(programRoot, '.tappet', 'window-unavailable');
const hours = 60 * 60 * 1000;

/** The path of Electron's executable if its runtime is on this machine, else undefined. */
export function installedRuntime(): string | undefined {
  try {
    const name = readFileSync(join(electronFolder, 'path.txt'), 'utf8').trim();
    const folder = process.env.ELECTRON_OVERRIDE_DIST_PATH ?? join(electronFolder, 'dist');
    const executable = join(folder, name);
    return existsSync(executable) ? executable : undefined;
  } catch {
    return undefined;
  }
}

function failedLately(now: number): boolean {
  try {
    return now - Number(readFileSync(failureNote, 'utf8')) < 6 * hours;
  } catch {
    return false;
  }
}

function noteFailure(now: number): void {
  mkdirSync(join(programRoot, '.tappet'), { recursive: true });
  writeFileSync(failureNote, String(now));
}

/** The words of fetch-runtime.mjs, one a line on its standard output. */
type Progress = 'arriving' | 'fetched';

/**
 * Fetches the runtime in a process of its own.
 * @param patience milliseconds without a byte arriving after which it is given up
 */
function fetchRuntime(patience: number): Promise<boolean> {
  return new Promise((resolve) => {
    const script = join(import.meta.dirname, 'fetch-runtime.mjs');
    const child = spawn(process.execPath, [script, electronFolder], {
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    let timer: NodeJS.Timeout;
    const wait = (): void => {
      clearTimeout(timer);
      timer = setTimeout(() => child.kill(), patience);
    };
    wait();
    child.stdout.on('data', (chunk: Buffer) => {
      const said = chunk.toString().trim().split('\n').at(-1) as Progress;
      if (said === 'arriving') wait();
      // Unpacking follows, which the network can't hold up.
      else clearTimeout(timer);
    });
    child.on('error', () => resolve(false));
    child.on('exit', (code) => {
      clearTimeout(timer);
      resolve(code === 0);
    });
  });
}

/**
 * Electron's executable; its runtime is fetched on first use. Undefined where it is not to be had.
 * @param patience milliseconds without a byte arriving after which fetching is given up
 */
export async function desktopRuntime(patience = 8_000): Promise<string | undefined> {
  const installed = installedRuntime();
  if (installed !== undefined) return installed;
  if (failedLately(Date.now())) return undefined;
  process.stderr.write('Fetching what the window needs (Electron, about 120 MB, this once).\n');
  if (await fetchRuntime(patience)) {
    rmSync(failureNote, { force: true });
    return installedRuntime();
  }
  noteFailure(Date.now());
  return undefined;
}
