import type { Route } from '@playwright/test';
import { expect, openPage, takenIn, test, unique } from './frame-shop.ts';

test('settings are kept as a draft, saved, and refused with the field named', async ({
  page,
  desk,
  by,
}) => {
  expect(by).toBeTruthy();
  const phone = unique('555');
  await openPage(page, '/office');
  await page.getByRole('textbox', { name: 'Telephone' }).fill(phone);
  await expect(page.getByText('Changed and not saved yet')).toBeVisible();
  await openPage(page, '/');
  await openPage(page, '/office');
  await expect(page.getByRole('textbox', { name: 'Telephone' })).toHaveValue(phone);

  await page.getByRole('textbox', { name: 'Language tag' }).fill('not a tag!');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('alert')).toContainText('not a language tag');
  await page.getByRole('textbox', { name: 'Language tag' }).fill('en-US');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Nothing to save.')).toBeVisible();
  await expect.poll(async () => (await desk.office.shop({})).phone).toBe(phone);
});

test('a tax rate that can’t be read is not saved as nothing', async ({ page, desk, by }) => {
  expect(by).toBeTruthy();
  const before = await desk.office.shop({});
  await openPage(page, '/office');
  await page.getByRole('button', { name: 'Add a tax' }).click();
  await page
    .getByRole('textbox', { name: /^Tax \d/ })
    .last()
    .fill('County');
  await page.getByRole('textbox', { name: 'Rate, %' }).last().fill('six');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Type a rate from 0 to 100.')).toBeVisible();
  await expect.poll(async () => (await desk.office.shop({})).taxes).toEqual(before.taxes);
  await page.getByRole('button', { name: 'Undo the changes' }).click();
  await expect(page.getByText('Nothing to save.')).toBeVisible();
});

test('a back-up says where it is, and the journal is verified', async ({ page, desk, by }) => {
  await takenIn(desk, by, unique('Journal'));
  await openPage(page, '/office/store');
  await page.getByRole('button', { name: 'Back up now' }).click();
  await expect(page.getByText('Backed up and verified')).toBeVisible();
  await expect(page.getByText(/^[0-9a-f]{64}$/)).toBeVisible();
  await page.getByRole('button', { name: 'Verify' }).click();
  await expect(page.getByText(/entries are as they were written/)).toBeVisible();
  await expect(page.getByRole('cell', { name: /Took a machine in/ }).first()).toBeVisible();
});

test('a name that is taken is refused in a sentence', async ({ page, desk, by }) => {
  const name = unique('Sam');
  await desk.office.addStaff({ by, name, role: 'bench' });
  await openPage(page, '/office/staff');
  await page.getByRole('textbox', { name: 'Name' }).fill(name);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert')).toContainText('Add an initial');
});

test('a customer is added once though the answer was lost at first, and mended', async ({
  page,
  desk,
  by,
}) => {
  expect(by).toBeTruthy();
  const name = unique('Ødegård');
  const losingTheAnswer = async (route: Route) => {
    await route.fetch();
    await route.abort();
  };
  await page.route('**/rpc/counter/addCustomer', losingTheAnswer, { times: 1 });
  await openPage(page, '/customers');
  await page.getByRole('button', { name: 'Add a customer' }).first().click();
  await expect(page.getByRole('textbox', { name: 'Name' })).toBeFocused();
  await page.keyboard.type(name);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog').getByRole('alert')).toContainText('does not answer');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible();
  await expect.poll(() => desk.counter.findCustomers({ text: name })).toHaveLength(1);
  await page.getByRole('button', { name: 'Edit' }).click();
  await page.getByRole('textbox', { name: 'E-mail' }).fill('not an address');
  await page.keyboard.press('Enter');
  await expect(page.getByText('That is not an e-mail address')).toBeVisible();
  await page.getByRole('textbox', { name: 'E-mail' }).fill('post@example.org');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('link', { name: 'post@example.org' })).toBeVisible();
});

test('when nobody answers at the desk the frame says so, and comes back by itself', async ({
  page,
  by,
}) => {
  expect(by).toBeTruthy();
  await openPage(page, '/customers');
  await expect(page.getByRole('status')).toBeVisible();
  await page.route('**/rpc/**', (route) => route.abort());
  await page.getByRole('link', { name: 'Jobs' }).click();
  await expect(page.getByRole('alert')).toContainText('does not answer');
  await page.unroute('**/rpc/**');
  await expect(page.getByRole('alert')).toBeHidden();
  await expect(page.getByRole('navigation', { name: 'Which jobs' })).toBeVisible();
});
