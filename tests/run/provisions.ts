import { spawnSync } from 'node:child_process';
import { playwrightChromium, systemChromium } from '../browser/chromium.ts';
import { runStep } from './step.ts';

function answers(command: string, ...args: string[]): boolean {
  return spawnSync(command, args, { stdio: 'ignore' }).status === 0;
}

function canUseDebianPackages(): boolean {
  return process.getuid?.() === 0 && answers('apt-get', '--version');
}

let listsAreFresh = false;

async function installPackage(name: string): Promise<boolean> {
  if (!canUseDebianPackages()) return false;
  const environment = { DEBIAN_FRONTEND: 'noninteractive' };
  if (!listsAreFresh) {
    const update = { name, command: 'apt-get', args: ['update', '-qq'], environment };
    listsAreFresh = (await runStep(update)).passed;
  }
  const args = ['install', '-y', '-qq', '--no-install-recommends', name];
  return (await runStep({ name, command: 'apt-get', args, environment })).passed;
}

/** Downloaded is not enough: without the system's libraries it does not so much as tell its version. */
function usablePlaywrightChromium(): boolean {
  const path = playwrightChromium();
  return path !== undefined && answers(path, '--version');
}

async function provideChromium(): Promise<string | undefined> {
  if (systemChromium() !== undefined || usablePlaywrightChromium()) return undefined;
  process.stdout.write('No Chromium here: fetching one.\n');
  const args = ['install', 'chromium'];
  await runStep({ name: 'chromium', command: 'playwright', args, limit: 180_000 });
  if (usablePlaywrightChromium()) return undefined;
  for (const name of ['chromium-headless-shell', 'chromium']) {
    if ((await installPackage(name)) && systemChromium() !== undefined) return undefined;
  }
  return 'There is no Chromium, and none could be fetched. Install Chromium or Google Chrome, or name one in TAPPET_CHROMIUM.';
}

async function providePackage(command: string, packageName: string): Promise<string | undefined> {
  if (answers('which', command) || answers(command, '--version')) return undefined;
  process.stdout.write(`${command} is missing: fetching Debian's ${packageName}.\n`);
  if ((await installPackage(packageName)) && answers('which', command)) return undefined;
  return `${command} is missing and could not be fetched. Install ${packageName}.`;
}

/**
 * Sees to what the tests need beside npm's packages.
 * @returns a plain sentence for everything that is missing still
 */
export async function provide(): Promise<string[]> {
  const missing = [
    await provideChromium(),
    await providePackage('pdftotext', 'poppler-utils'),
    await providePackage('qpdf', 'qpdf'),
  ];
  return missing.filter((sentence) => sentence !== undefined);
}
