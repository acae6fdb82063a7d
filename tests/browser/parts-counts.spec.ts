import { readFile } from 'node:fs/promises';
import { expect } from '@playwright/test';
import { LabelSettings } from '../../shared/contract/parts/index.ts';
import { readBarcode, readPaper } from '../unit/paper/reading-back.ts';
import { noFaultsInEitherTheme } from './faultless.ts';
import { test } from './taxed-shop.ts';
import { toldNow } from './told-time.ts';

test('a bin is counted blind by the keyboard, and its difference explained', async ({
  page,
  taxed: { desk, by },
}) => {
  const bin = `Q${toldNow().getTime()}`;
  const add = (number: string, more: { bin: string }) =>
    desk.parts.add({ by, number: `${number} ${bin}`, description: 'Gasket', price: 100, ...more });
  const here = await add('CT 1', { bin });
  await desk.parts.move({ by, partId: here.id, kind: 'received', quantity: 7_654_000 });
  const stray = await add('CT 2', { bin: '' });

  await page.goto('/parts/counts');
  await page.getByRole('button', { name: `Count Bin ${bin}` }).press('Enter');
  const scan = page.getByRole('textbox', { name: 'Part number or barcode' });
  await expect(scan).toBeFocused();
  await page.keyboard.type(`ct-1 ${bin}\n`);
  await expect(page.getByRole('textbox', { name: `In the bin: ${here.number}` })).toBeFocused();
  await page.keyboard.type('7652\n');
  await expect(page.getByText('Every part has a figure.')).toBeVisible();
  // What lies here and belongs elsewhere comes onto the sheet by its number.
  await scan.focus();
  await page.keyboard.type(`ct2${bin}\n`);
  await expect(page.getByRole('textbox', { name: `In the bin: ${stray.number}` })).toBeFocused();
  await page.keyboard.type('1\n');
  await expect(page.getByRole('cell', { name: 'Counted', exact: true })).toHaveCount(2);
  await scan.focus();
  await page.keyboard.type('4006381333932\n');
  await expect(page.getByText('Scan it again.')).toBeVisible();
  await expect(page.getByRole('main')).not.toContainText('7,654');
  await noFaultsInEitherTheme(page);

  await page.getByRole('button', { name: 'Close the count' }).press('Enter');
  const missing = page.getByRole('form', { name: `Explain ${here.number}` });
  await expect(page.getByText('2 pc missing: counted 7,652 pc, expected 7,654 pc.')).toBeVisible();
  await missing.getByRole('button').press('Enter');
  await expect(page.getByText('Say it in a few words.')).toBeVisible();
  await noFaultsInEitherTheme(page);
  await missing.getByRole('combobox', { name: 'Where it comes from' }).fill('Used and not issued');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('cell', { name: '−2 pc' })).toBeVisible();
  await expect
    .poll(async () => (await desk.parts.part({ id: here.id })).part.onHand)
    .toBe(7_652_000);
  await expect
    .poll(async () => (await desk.parts.counts({}))[0])
    .toMatchObject({ bin, unexplained: 1 });
});

test('labels begin at the free one and are read back; reports are kept as CSV', async ({
  page,
  taxed: { desk, by },
}) => {
  const number = `LB ${toldNow().getTime()}`;
  const { id } = await desk.parts.add({ by, number, description: 'Piston', price: 100 });
  await desk.parts.move({ by, partId: id, kind: 'received', quantity: 3_000 });
  await desk.parts.setLabelSettings({ by, settings: LabelSettings.parse({}) });
  await page.goto(`/part/${id}`);
  await page.getByRole('region', { name: 'Facts' }).getByRole('link', { name: 'Labels' }).click();
  await expect(page.getByRole('textbox', { name: `Labels of ${number}` })).toHaveValue('1');
  await page.getByRole('button', { name: 'One for each on hand' }).click();
  await page.getByRole('textbox', { name: 'First free label' }).fill('23');
  await expect(page.getByText('3 labels, 2 sheets')).toBeVisible();
  await noFaultsInEitherTheme(page);
  const saved = async (button: string) => {
    const downloading = page.waitForEvent('download');
    await page.getByRole('button', { name: button }).click();
    return new Uint8Array(await readFile(await (await downloading).path()));
  };
  const pdf = await saved('Save as PDF');
  const { pages } = await readPaper(pdf);
  expect(pages).toHaveLength(2);
  const barcodes = await readBarcode(pdf, 180, 2);
  expect(barcodes).toEqual([{ format: 'Code128', text: number }]);

  await page.getByRole('button', { name: 'Sizes and symbol' }).click();
  await page.getByRole('textbox', { name: 'Columns', exact: true }).fill('9');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText('over the edge of the paper').first()).toBeVisible();
  await noFaultsInEitherTheme(page);
  await page.keyboard.press('Escape');

  await page.getByRole('link', { name: 'Reports', exact: true }).click();
  await expect(page.getByRole('cell', { name: number, exact: true })).toBeVisible();
  await noFaultsInEitherTheme(page);
  const shelves = await saved('Save as CSV: Shelves');
  expect(new TextDecoder().decode(shelves)).toContain(`${number},Piston,`);
});
