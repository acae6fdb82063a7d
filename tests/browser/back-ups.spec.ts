import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { looksRight, looksRightAtEitherWidth } from './faultless.ts';
import { expect, openPage, type Page, takenIn, test, unique } from './frame-shop.ts';
import { sessionCookieFrom, startServer } from './server.ts';

/** By the keyboard alone, once a back-up has been checked. */
async function confirm(page: Page, why: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Why' }).press('End');
  await page.keyboard.type(why);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
}

test('a back-up is made, kept elsewhere, brought back from the list, and on a new machine', async ({
  openContext,
  page,
  desk,
  by,
}, testInfo) => {
  await openPage(page, '/office/store');
  await page.getByRole('button', { name: 'Back up now' }).press('Enter');
  await expect(page.getByText('Backed up and verified')).toBeVisible();
  const copy = testInfo.outputPath('tappet-on-a-stick.db');
  const arrived = page.waitForEvent('download');
  await page
    .getByRole('button', { name: /^Save a copy of the back-up of/ })
    .first()
    .press('Enter');
  await (await arrived).saveAs(copy);
  const sha256 = createHash('sha256').update(readFileSync(copy)).digest('hex');
  await expect(page.getByText(sha256)).toBeVisible();
  await looksRightAtEitherWidth(page);

  const name = unique('Lost');
  await takenIn(desk, by, name);
  await page
    .getByRole('link', { name: /^Bring back the back-up of/ })
    .first()
    .press('Enter');
  await expect(page.getByRole('heading', { name: 'What is in it' })).toBeVisible();
  await expect(page.getByText(/^Job J\d{6}$/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Bring this shop back' })).toBeDisabled();
  await looksRightAtEitherWidth(page);
  await confirm(page, 'A try');
  await expect(page.getByText('The back-up was brought back')).toBeVisible();
  await expect(page.getByText('By itself, before another was brought back')).toBeVisible();
  await expect(
    page.getByRole('cell', { name: /Brought the shop back from a back-up/ }).first(),
  ).toBeVisible();
  await expect.poll(() => desk.counter.findCustomers({ text: name })).toEqual([]);

  const server = await startServer('empty');
  try {
    const session = await sessionCookieFrom(server.address);
    const context = await openContext({ baseURL: server.origin });
    await context.addCookies([{ ...session, url: server.origin }]);
    const other = await context.newPage();
    await other.goto('/');
    await other.getByRole('button', { name: 'Bring a shop back from a back-up' }).press('Enter');
    await expect(other.getByRole('heading', { name: 'Bring a shop back' })).toBeVisible();
    const file = other.locator('input[type="file"]');
    await file.setInputFiles({
      name: 'tappet-diary.db',
      mimeType: 'application/octet-stream',
      buffer: Buffer.from('Dear diary'),
    });
    await expect(other.getByRole('alert')).toContainText('not a back-up of Tappet');
    await file.setInputFiles(copy);
    await expect(other.getByRole('radio', { name: 'Ada Ferrow' })).toBeChecked();
    await looksRight(other);
    await confirm(other, 'The laptop died');
    await expect(other.getByRole('navigation', { name: 'Rooms' })).toContainText('Riverbend');
    await expect(other.getByRole('button', { name: 'Ada Ferrow at this station' })).toBeVisible();
  } finally {
    await server.stop();
  }
});
