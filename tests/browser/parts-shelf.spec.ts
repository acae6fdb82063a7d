import { expect } from '@playwright/test';
import { noFaultsInEitherTheme } from './faultless.ts';
import { takeInJob, test } from './taxed-shop.ts';
import { toldNow } from './told-time.ts';

test('a part is found by its number however it is typed, and by its barcode', async ({
  page,
  taxed,
}) => {
  await page.goto('/parts');
  const search = page.getByRole('textbox', { name: 'Search parts' });
  await expect(search).toBeFocused();
  await page.keyboard.type('tl-44 12');
  await expect(page.getByRole('link')).toContainText(['TL 4412-A']);
  await expect(page.getByRole('link', { name: 'GK 51' })).toHaveCount(0);
  await page.keyboard.press('ArrowDown');
  await expect(page.locator(':focus')).toHaveText('TL 4412-A');

  await search.fill(taxed.piston.barcode);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Piston +0.50 with rings');
});

test('a part is added by the keyboard; its number can’t be taken twice', async ({ page }) => {
  const number = `NK ${toldNow().getTime()}-b`;
  await page.goto('/parts');
  await page.getByRole('textbox', { name: 'Search parts' }).fill(number);
  await expect(page.getByText('No part goes with')).toBeVisible();
  const addPart = async (typed: string) => {
    await page.getByRole('button', { name: 'Add a part' }).first().focus();
    await page.keyboard.press('Enter');
    await expect(page.locator(':focus')).toHaveAccessibleName('Number');
    await page.keyboard.press('Control+A');
    await page.keyboard.type(typed);
    await page.getByRole('textbox', { name: 'What it is' }).focus();
    await page.keyboard.type('Needle, float');
    await page.keyboard.press('Tab');
    await page.keyboard.type('6.50');
    await page.keyboard.press('Tab');
    await page.keyboard.type('2,60');
    await page.keyboard.press('Enter');
  };
  await addPart(number);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Needle, float');
  await expect(page.getByText('Margin $3.90, 60 % of the price.')).toBeVisible();

  await page.goto('/parts');
  await addPart(number.toLowerCase().replaceAll(' ', '-'));
  await expect(page.getByRole('alert')).toHaveAttribute('data-code', 'PART_NUMBER_TAKEN');
  await page.getByRole('link', { name: 'Open the part with this number' }).click();
  await expect(page.getByText(`Part ${number}`)).toBeVisible();
});

test('movements: received, issued to a job, too many, scrapped with a reason, counted', async ({
  page,
  taxed,
}) => {
  const { desk, by } = taxed;
  const { code } = await takeInJob(taxed, 'Ødegård');
  const part = await desk.parts.add({
    by,
    number: `OIL ${toldNow().getTime()}`,
    description: 'Engine oil',
    unit: 'L',
    price: 890,
    reorderPoint: 2_000,
  });
  await page.goto(`/part/${part.id}`);
  await expect(page.getByText('Nothing has moved yet')).toBeVisible();
  await expect(page.getByText('None left')).toBeVisible();
  const quantity = page.getByRole('textbox', { name: 'Quantity' });
  const write = page.getByRole('button', { name: 'Write the movement' });
  const done = page.getByRole('status');

  await quantity.fill('4.5');
  await expect(page.getByText('On hand 0 L, then 4.5 L.')).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(done).toHaveText('Received: 4.5 L. On hand: 4.5 L.');

  await page.getByText('Issued', { exact: true }).click();
  await quantity.fill('0.6');
  await write.click();
  await expect(page.getByText('Say which job.')).toBeVisible();
  await page.getByRole('combobox', { name: 'To the job' }).click();
  await page.keyboard.type(code);
  await page.getByRole('option', { name: code }).click();
  await write.click();
  await expect(done).toHaveText('Issued to a job: 0.6 L. On hand: 3.9 L.');
  await expect(page.getByRole('link', { name: code })).toBeVisible();

  await page.getByText('Scrapped', { exact: true }).click();
  await quantity.fill('9');
  await expect(page.getByText('that is 5.1 L too few')).toBeVisible();
  await write.click();
  await expect(page.getByText('Say why in a few words.')).toBeVisible();
  await page.getByRole('textbox', { name: 'Reason' }).fill('Can leaked');
  await write.click();
  await expect(page.getByRole('alert')).toHaveAttribute('data-code', 'NOT_ON_THE_SHELF');
  await quantity.fill('2');
  await write.click();
  await expect(done).toHaveText('Scrapped: 2 L. On hand: 1.9 L.');
  await expect(page.getByText('Reorder', { exact: true })).toBeVisible();

  await page.getByText('Counted', { exact: true }).click();
  await page.getByRole('textbox', { name: 'In the bin' }).fill('0');
  await page.getByRole('textbox', { name: 'Reason' }).fill('Yearly count');
  await write.click();
  await expect(done).toHaveText('Counted: 0 L. On hand: 0 L.');
  const { movements } = await desk.parts.part({ id: part.id });
  expect(movements.map(({ kind, quantity: moved }) => [kind, moved])).toEqual([
    ['counted', -1_900],
    ['scrapped', -2_000],
    ['issued', -600],
    ['received', 4_500],
  ]);
});

test('the parts room reads well', async ({ page, taxed }) => {
  const looks = () => noFaultsInEitherTheme(page);
  await page.goto('/parts');
  await expect(page.getByRole('link', { name: 'TL 4412-A' })).toBeVisible();
  await looks();
  await page.getByRole('button', { name: 'Add a part' }).click();
  await page.getByRole('button', { name: 'Add the part' }).click();
  await expect(page.getByText('A part needs a number.')).toBeVisible();
  await looks();
  await page.goto(`/part/${taxed.piston.id}`);
  await page.getByText('Issued', { exact: true }).click();
  await looks();
});
