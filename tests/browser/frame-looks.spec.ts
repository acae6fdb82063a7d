import { looksRightAtEitherWidth } from './faultless.ts';
import { expect, openPage, takenIn, test, unique } from './frame-shop.ts';

test('the counter reads well', async ({ page, desk, by }) => {
  const { today } = await desk.office.about({});
  const { code, customerId } = await takenIn(desk, by, unique('Looks'), today);
  const addresses = ['/', '/jobs', '/customers', `/customer/${customerId}`, `/job/${code}`];
  for (const address of addresses) {
    await openPage(page, address);
    await expect(page.getByRole('status', { name: 'One moment' })).toHaveCount(0);
    await looksRightAtEitherWidth(page);
  }
  await page.getByRole('button', { name: 'Move', exact: true }).click();
  const move = page.getByRole('menuitem').first();
  await expect(move).toBeVisible();
  await looksRightAtEitherWidth(page);
  await expect(move).toBeVisible();
});

test('the office and the frame’s sheets read well', async ({ page, by }) => {
  expect(by).toBeTruthy();
  const addresses = ['/job/J999999', '/nowhere', '/office/paper-texts', '/office/staff'];
  for (const address of [...addresses, '/office/store', '/office/about', '/office']) {
    await openPage(page, address);
    await expect(page.getByRole('status', { name: 'One moment' })).toHaveCount(0);
    await looksRightAtEitherWidth(page);
  }
  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: /^Search/ }).fill('o');
  const found = page.getByRole('option').first();
  await expect(found).toBeVisible();
  await looksRightAtEitherWidth(page);
  await expect(found).toBeVisible();
  await page.keyboard.press('Escape');
  await page.keyboard.press('F8');
  const entry = page.getByRole('dialog').getByRole('listitem').first();
  await expect(entry).toBeVisible();
  await looksRightAtEitherWidth(page);
  await expect(entry).toBeVisible();
});
