import { expect, openPage, pressPaced, scan, takenIn, test, unique } from './frame-shop.ts';

test('a scanned tag opens its job with the focus nowhere', async ({ page, desk, by }) => {
  const { code } = await takenIn(desk, by, unique('Scan One'));
  await openPage(page, '/office/about');
  await expect(page.getByRole('heading', { name: 'About' })).toBeVisible();
  await scan(page, code);
  await expect(page).toHaveURL(new RegExp(`/job/${code}$`));
});

test('a field that the reader types into gets back what it held', async ({ page, desk, by }) => {
  const { code } = await takenIn(desk, by, unique('Scan Two'));
  await openPage(page, '/office/staff');
  const field = page.getByRole('textbox', { name: 'Name' });
  await field.fill('Oda Brandt');
  await field.press('Home');
  await scan(page, code, 'Tab');
  await expect(page).toHaveURL(new RegExp(`/job/${code}$`));
  await page.goBack();
  await expect(page.getByRole('textbox', { name: 'Name' })).toHaveValue('Oda Brandt');
});

test('a scan while searching opens the job and closes the search', async ({ page, desk, by }) => {
  const { code } = await takenIn(desk, by, unique('Scan Three'));
  await openPage(page, '/');
  await page.keyboard.press('Control+k');
  await expect(page.getByRole('combobox', { name: /^Search/ })).toBeFocused();
  await scan(page, code);
  await expect(page).toHaveURL(new RegExp(`/job/${code}$`));
  await expect(page.getByRole('dialog')).toBeHidden();
});

test('from one job to the next by scanning, the second takes the first’s place', async ({
  page,
  desk,
  by,
}) => {
  const first = await takenIn(desk, by, unique('Scan Four'));
  const second = await takenIn(desk, by, unique('Scan Five'));
  await openPage(page, `/job/${first.code}`);
  await expect(page.getByRole('region', { name: `Job ${first.code}` })).toBeVisible();
  await scan(page, second.code);
  await expect(page.getByRole('region', { name: `Job ${second.code}` })).toBeVisible();
  await expect(page.getByRole('region', { name: `Job ${first.code}` })).toBeHidden();
});

test('a tag of no job here says so and leaves the page', async ({ page, by }) => {
  expect(by).toBeTruthy();
  await openPage(page, '/customers');
  const field = page.getByRole('textbox', { name: 'Narrow the list' });
  await field.fill('abc');
  await scan(page, 'J987654');
  await expect(page.getByText('No job here has this code')).toBeVisible();
  await expect(page).toHaveURL(/\/customers$/);
  await expect(field).toHaveValue('abc');
});

test('the same letters typed by hand stay in the field', async ({ page, by }) => {
  expect(by).toBeTruthy();
  await openPage(page, '/jobs');
  const field = page.getByRole('textbox', { name: 'Narrow the list' });
  await pressPaced(page, [...'J987654', 'Enter'], 90);
  await expect(page.getByText('No job of this list answers to that')).toBeVisible();
  await expect(field).toHaveValue('J987654');
});
