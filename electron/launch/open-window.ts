import { spawn } from 'node:child_process';
import { hasDesktop } from '../serve/browser.ts';
import { buildIfChanged } from './build.ts';
import { desktopRuntime } from './desktop-runtime.ts';
import { refusedExitCode } from './exit-codes.ts';
import { programRoot } from './root.ts';

export type WindowOutcome =
  | { opened: true; exitCode: number }
  /** The reason is a plain sentence. */
  | { opened: false; reason: string };

/** A window that dies this soon (milliseconds) with an error never came up. */
const startUp = 10_000;

/** Opens the window and waits until it is closed, or says why there can be none. */
export async function openWindow(options: {
  folder: string;
  demo: boolean;
}): Promise<WindowOutcome> {
  if (!hasDesktop()) {
    return { opened: false, reason: 'There is no desktop here to open a window on.' };
  }
  if (process.platform === 'linux' && process.getuid?.() === 0) {
    return {
      opened: false,
      reason: 'The window keeps to its sandbox, which does not work for root.',
    };
  }
  const runtime = await desktopRuntime();
  if (runtime === undefined) {
    return { opened: false, reason: 'What the window needs (Electron) could not be fetched.' };
  }
  await buildIfChanged('electron');
  return run(runtime, options);
}

function run(
  runtime: string,
  { folder, demo }: { folder: string; demo: boolean },
): Promise<WindowOutcome> {
  const begun = Date.now();
  const child = spawn(runtime, [programRoot, '--data', folder, ...(demo ? ['--demo'] : [])], {
    stdio: 'inherit',
  });
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
    process.on(signal, () => child.kill(signal));
  }
  return new Promise((resolve) => {
    child.on('error', ({ message }) => {
      resolve({ opened: false, reason: `The window could not be opened (${message}).` });
    });
    child.on('exit', (code) => {
      const failed = code !== 0 && code !== refusedExitCode;
      if (failed && Date.now() - begun < startUp) {
        resolve({ opened: false, reason: 'The window could not be opened on this desktop.' });
      } else {
        resolve({ opened: true, exitCode: code ?? 1 });
      }
    });
  });
}
