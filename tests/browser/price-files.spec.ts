import type { Page } from '@playwright/test';
import { LINE_PROBLEM_SENTENCES } from '../../shared/work/parts/price-file/words.ts';
import { costOf, madePriceFile, partNumber } from '../desk/made-price-file.ts';
import { noFaults } from './faultless.ts';
import { expect, test } from './frame-shop.ts';
import { textsOf } from './text-of.ts';
import { inTheme } from './themes.ts';

async function looks(page: Page): Promise<void> {
  await noFaults(page);
}

async function chooseFile(page: Page, supplierId: string, buffer: Buffer): Promise<void> {
  await page.goto(`/parts/price-files/new?supplier=${supplierId}`);
  await expect(page.getByRole('button', { name: 'Choose a file…' })).toBeVisible();
  // The system's own dialog can't be worked from here: the field behind the button is given the file.
  const file = { name: 'prices.csv', mimeType: 'text/csv', buffer };
  await page.locator('main input[type=file]').setInputFiles(file);
}

/** The line numbers and reasons on the page that begins with a line, as a person reads them. */
const reasonsOn = async (page: Page, first: string): Promise<string[]> =>
  (await textsOf(page.locator('tbody tr'), new RegExp(`^${first}\\s`))).map((row) => {
    const [line = '', reason = ''] = row.split('\t');
    return `${line.trim()} ${reason.trim().replace(/ First on line [\d,]+\.$/, '')}`;
  });

test('a price file of 100,000 lines is stopped half-way, read, applied and undone', async ({
  page,
  desk,
  by,
}) => {
  const { id: supplierId } = await desk.parts.addSupplier({ by, name: 'Quillon Engine Supply' });
  const known = {
    by,
    number: partNumber(25),
    description: 'Gasket',
    supplier: 'Quillon Engine Supply',
    price: 2_000,
    cost: 444,
  };
  const part = await desk.parts.add(known);
  const costNow = async () => (await desk.parts.part({ id: part.id })).part.cost;
  const offers = () => desk.parts.findOffers({ text: partNumber(25) });
  const made = madePriceFile(100_000);

  await chooseFile(page, supplierId, made.bytes);
  await expect(page.getByRole('combobox', { name: 'Columns divided by' })).toHaveValue('Semicolon');
  await expect(page.getByRole('combobox', { name: 'Letters' })).toHaveValue('UTF-8');
  await expect(page.getByRole('combobox', { name: 'Decimal mark' })).toHaveValue(/^Comma/);
  await expect(page.getByRole('combobox', { name: 'Dealer holds' })).toHaveValue('Cost');
  await looks(page);
  await page.getByRole('button', { name: 'Read the file' }).click();
  await page.waitForFunction(
    () => Number(document.querySelector('[role=progressbar]')?.getAttribute('aria-valuenow')) >= 10,
  );
  await expect(page.getByText(/\d,\d{3} lines read, \d+ %/)).toBeVisible();
  await page.getByRole('button', { name: 'Stop reading' }).click();
  await expect(page.getByText('This file was stopped')).toBeVisible();
  await expect.poll(async () => [await costNow(), await offers()]).toEqual([444, []]);
  await expect
    .poll(() => desk.parts.priceFiles({ limit: 1 }))
    .toMatchObject([{ state: 'stopped', lines: 0 }]);

  await chooseFile(page, supplierId, made.bytes);
  await expect(page.getByText('As in this supplier’s last file.')).toBeVisible();
  await page.getByRole('button', { name: 'Read the file' }).click();
  const apply = page.getByRole('button', { name: 'Apply all 99,000 lines' });
  await expect(apply).toBeVisible({ timeout: 90_000 });

  const listed: string[] = [];
  const expected = made.broken.map(
    ({ line, problem }) => `${line.toLocaleString('en-US')} ${LINE_PROBLEM_SENTENCES[problem]}`,
  );
  for (let at = 0; at < expected.length; at += 250) {
    const [first = ''] = (expected[at] ?? '').split(' ');
    listed.push(...(await reasonsOn(page, first)));
    if (at + 250 < expected.length) await page.getByRole('button', { name: 'next page' }).click();
  }
  expect(listed).toEqual(expected);
  await page.getByRole('button', { name: /^Your parts in it/ }).click();
  await expect(page.getByRole('row', { name: part.number })).toContainText('was $4.44');
  await inTheme(page, 'dark');
  await looks(page);

  await apply.click();
  const undo = page.getByRole('button', { name: 'Undo the whole file' });
  await expect(undo).toBeVisible({ timeout: 90_000 });
  await expect.poll(() => costNow()).toBe(costOf(25));
  await expect
    .poll(() => offers())
    .toMatchObject([{ cost: costOf(25), listPrice: costOf(25) * 2 }]);
  await undo.click();
  await expect(page.getByRole('status').filter({ hasText: 'Undone' })).toBeVisible({
    timeout: 90_000,
  });
  await expect.poll(async () => [await costNow(), await offers()]).toEqual([444, []]);
});
