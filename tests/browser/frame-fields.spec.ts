import { readFileSync } from 'node:fs';
import { looksRight } from './faultless.ts';
import { expect, openPage, type Page, takenIn, test, unique } from './frame-shop.ts';
import { recordTypedName } from './typed-signature.ts';

/** How many pixels of the pad carry ink. */
const ink = (page: Page) =>
  page.locator('canvas').evaluate((canvas) => {
    if (!(canvas instanceof HTMLCanvasElement)) return -1;
    const pixels = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data;
    return pixels?.filter((value, index) => index % 4 === 3 && value > 0).length ?? -1;
  });

test('a signature is drawn, kept over a reload, and cleared', async ({ page, by }) => {
  expect(by).toBeTruthy();
  await openPage(page, '/take-in');
  const pad = page.locator('canvas');
  await pad.scrollIntoViewIfNeeded();
  const box = await pad.boundingBox();
  expect(box).not.toBeNull();
  if (box === null) return;
  await page.mouse.move(box.x + 30, box.y + 60);
  await page.mouse.down();
  for (let step = 1; step <= 12; step++)
    await page.mouse.move(box.x + 30 + step * 20, box.y + 60 + 25 * Math.sin(step));
  await page.mouse.up();
  const drawn = await ink(page);
  expect(drawn).toBeGreaterThan(200);
  const name = page.getByRole('textbox', { name: 'Name of who signs' });
  await name.fill('Ødegård');
  await page.reload();
  await expect(name).toHaveValue('Ødegård');
  await expect.poll(() => ink(page)).toBeGreaterThan(200);
  await page.getByRole('button', { name: 'Clear', exact: true }).click();
  await expect(name).toHaveValue('');
  await expect.poll(() => ink(page)).toBe(0);
});

test('a typed signature lapses when another comes to the station', async ({ page, desk, by }) => {
  const other = await desk.office.addStaff({ by, name: unique('Ines'), role: 'counter' });
  await openPage(page, '/take-in');
  await page.getByRole('textbox', { name: 'Name of who signs' }).fill('Ødegård');
  await recordTypedName(page);
  await page.reload();
  await expect(page.getByText('Signed: typed name, entered by')).toBeVisible();
  await page.addInitScript((id) => window.localStorage.setItem('tappet.station', id), other.id);
  await page.reload();
  // The other did not type it, and is not named as who did.
  await expect(page.getByRole('button', { name: other.name })).toBeVisible();
  await expect(page.getByText('Sign in the box with pen or finger')).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Name of who signs' })).toHaveValue('');
  await desk.office.amendStaff({ ...other, by, active: false });
});

test('a date is typed in short, understood in full, and picked from the calendar', async ({
  page,
  desk,
  by,
}) => {
  expect(by).toBeTruthy();
  const { today } = await desk.office.about({});
  await openPage(page, '/take-in');
  const field = page.getByRole('textbox', { name: /^Promised/ });
  await field.fill('+3');
  await expect(page.getByText('(in 3 days)')).toBeVisible();
  await field.fill('never');
  await expect(page.getByText('Type a date: +3')).toBeVisible();
  await field.fill('today');
  await field.blur();
  await expect(field).toHaveValue(today);
  await field.press('Alt+ArrowDown');
  await expect(page.getByRole('dialog', { name: 'Calendar' })).toBeVisible();
  await looksRight(page);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await expect(page.getByText('(tomorrow)')).toBeVisible();
  await expect(field).toBeFocused();

  // The arrows go on into the next month, and back.
  await field.fill('2028-02-29');
  await field.press('Alt+ArrowDown');
  const day = (name: string) => page.getByRole('button', { name, exact: true });
  await expect(day('29 February 2028')).toBeFocused();
  await page.keyboard.press('ArrowRight');
  await expect(day('1 March 2028')).toBeFocused();
  await page.keyboard.press('ArrowLeft');
  await expect(day('29 February 2028')).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expect(day('7 March 2028')).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await expect(day('29 February 2028')).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(field).toHaveValue('2028-03-07');
});

test('an issued paper is saved byte for byte', async ({ page, desk, by }) => {
  const { code, claimTicket } = await takenIn(desk, by, unique('Paper'));
  const { pdf } = await desk.office.paper({ id: claimTicket.id });
  await openPage(page, `/job/${code}`);
  await page.getByRole('button', { name: `${claimTicket.title}: print or save` }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('menuitem', { name: 'Save the PDF' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe(claimTicket.fileName);
  const saved = await download.path();
  expect(readFileSync(saved).toString('base64')).toBe(pdf);
});
