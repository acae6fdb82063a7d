import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { systemChromium } from '../chromium.ts';
import { type Desk, deskAt } from '../desk-client.ts';
import { sessionCookieFrom, startServer } from '../server.ts';
import { tellTime } from '../told-time.ts';

/** `npm run pictures`: takes the pictures of the README anew, from the invented shop. */

const here = import.meta.dirname;
const root = join(here, '..', '..', '..');

async function openDemo() {
  const server = await startServer('demo');
  const session = await sessionCookieFrom(server.address);
  const browser = await chromium.launch({
    executablePath: systemChromium(),
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
  });
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    colorScheme: 'light',
    locale: 'en-US',
  });
  await tellTime(context);
  await context.addCookies([{ ...session, url: server.origin }]);
  return { server, desk: deskAt(server.origin, session), browser, page: await context.newPage() };
}

async function take(page: Page, address: string, name: string): Promise<void> {
  await page.goto(address);
  await page.locator('main h1').waitFor();
  await page.getByRole('status', { name: 'One moment' }).waitFor({ state: 'detached' });
  await page.waitForTimeout(600);
  await page.screenshot({ path: join(here, `${name}.png`) });
}

/** A job whose bore is still to be measured, and one whose estimate was approved. */
async function jobsToShow(desk: Desk) {
  const jobs = await desk.counter.jobs({ states: ['on-the-bench'] });
  const measured = jobs.find(({ machine }) => machine.endsWith('Twin'));
  const billed = jobs.at(-1);
  if (measured === undefined || billed === undefined) throw new Error('The demo shop lacks a job.');
  return { measured, billed };
}

/** The readings are on the second page. */
function takeWorkOrder(): void {
  const folder = mkdtempSync(join(tmpdir(), 'tappet-pictures-'));
  try {
    execFileSync(process.execPath, ['electron/command/demo.ts', '--out', folder], { cwd: root });
    execFileSync('pdftoppm', [
      ...['-png', '-r', '80', '-f', '1', '-l', '1', '-singlefile'],
      join(folder, 'work-order.pdf'),
      join(here, 'work-order'),
    ]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const { server, desk, browser, page } = await openDemo();
try {
  const owner = (await desk.office.staff({})).find(({ role }) => role === 'owner');
  await page.addInitScript((id) => {
    window.localStorage.setItem('tappet.station', id ?? '');
  }, owner?.id);
  const { measured, billed } = await jobsToShow(desk);
  await take(page, `${server.origin}/`, 'day');
  await take(page, `${server.origin}/take-in`, 'take-in');
  await take(page, `${server.origin}/job/${billed.code}/till`, 'till');
  // Tall enough for the picture of where on the bore.
  await page.setViewportSize({ width: 1280, height: 1080 });
  await take(page, `${server.origin}/job/${measured.code}/bench?at=bore`, 'bench');
} finally {
  await browser.close();
  await server.stop();
}
takeWorkOrder();
