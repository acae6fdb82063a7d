import { expect, type Page } from '@playwright/test';
import type { StaffId } from '../../shared/contract/ids.ts';
import { type Desk, deskAt, ownerOf } from './desk-client.ts';
import { test as base } from './fixtures.ts';
import { toldNow } from './told-time.ts';

/** Tests of one worker share a shop: names are made once. */
let made = 0;
export const unique = (name: string): string =>
  `${name} ${toldNow().getTime().toString(36)}${++made}`;

/** A page past the key with its owner at the station, and the desk behind it. */
export const test = base.extend<{ desk: Desk; by: StaffId }>({
  desk: async ({ server, session }, use) => {
    await use(deskAt(server.origin, session));
  },
  by: async ({ desk, page }, use) => {
    const owner = await ownerOf(desk);
    await page.addInitScript((id) => window.localStorage.setItem('tappet.station', id), owner.id);
    await use(owner.id);
  },
});

/** A machine taken in for a customer of that name. */
export function takenIn(desk: Desk, by: StaffId, name: string, promisedFor: string | null = null) {
  return desk.counter.takeIn({
    by,
    customer: { which: 'new', name },
    machine: {
      which: 'new',
      kind: 'tiller',
      make: 'Fennick',
      model: 'Row 5',
      serial: unique('FR'),
      engine: { make: 'Quill', model: 'Q160' },
    },
    complaint: 'Runs for a minute, then stops',
    promisedFor,
    signature: { name },
  });
}

/** Opens a page and waits until it listens to the keyboard. */
export async function openPage(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await expect(page.locator('main h1').first()).toBeVisible();
}

/**
 * Keys at a steady pace by the browser's own clock, however busy this machine is: a barcode reader is told
 * from a hand by nothing else.
 * @param pace milliseconds from key to key
 */
export async function pressPaced(page: Page, keys: readonly string[], pace: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  // The browser stamps events by its own clock, whatever time is told.
  const start = (await page.evaluate(() => performance.timeOrigin + performance.now())) / 1000;
  for (const [index, key] of keys.entries()) {
    const timestamp = start + (index * pace) / 1000;
    const { text, code } = WIRED[key] ?? { text: key, code: '' };
    const facts = { key, code, timestamp, windowsVirtualKeyCode: key === 'Tab' ? 9 : 0 };
    await session.send('Input.dispatchKeyEvent', { ...facts, type: 'keyDown', text });
    await session.send('Input.dispatchKeyEvent', { ...facts, type: 'keyUp' });
  }
  await session.detach();
}

const WIRED: Record<string, { text: string; code: string }> = {
  Enter: { text: '\r', code: 'Enter' },
  Tab: { text: '', code: 'Tab' },
};

/** What a barcode reader sends: a code in one burst, then its end key. */
export const scan = (page: Page, code: string, endKey = 'Enter'): Promise<void> =>
  pressPaced(page, [...code, endKey], 8);

export { expect, type Page };
