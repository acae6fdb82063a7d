import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { systemChromium } from '../chromium.ts';
import { type Desk, deskAt } from '../desk-client.ts';
import { sessionCookieFrom, startServer } from '../server.ts';

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
  const { hostname } = new URL(server.origin);
  await context.addCookies([{ ...session, domain: hostname, path: '/' }]);
  return { server, desk: deskAt(server.origin, session), browser, page: await context.newPage() };
}

async function take(page: Page, address: string, name: string): Promise<void> {
  await page.goto(address);
  await page.locator('main h1').waitFor();
  await page.getByRole('status', { name: 'One moment' }).waitFor({ state: 'detached' });
  await page.waitForTimeout(600);
  await page.screenshot({ path: join(here, `${name}.png`) });
}

/** A job in the middle of being built, and one whose bill is open. */
async function jobsToShow(desk: Desk) {
  const bench = (await desk.counter.jobs({ states: ['on-the-bench'] })).at(-1);
  const [decide] = await desk.counter.jobs({ states: ['customer-to-decide'], limit: 1 });
  if (bench === undefined || decide === undefined) throw new Error('The demo shop lacks a job.');
  return { bench, decide };
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
  const [owner] = await desk.office.staff({});
  await page.addInitScript((id) => {
    window.localStorage.setItem('tappet.station', id ?? '');
  }, owner?.id);
  const { bench, decide } = await jobsToShow(desk);
  await take(page, `${server.origin}/`, 'day');
  await take(page, `${server.origin}/take-in`, 'take-in');
  await take(page, `${server.origin}/job/${bench.code}/bench`, 'bench');
  await take(page, `${server.origin}/job/${decide.code}/till`, 'till');
} finally {
  await browser.close();
  await server.stop();
}
takeWorkOrder();
