import { noFaults, noFaultsInEitherTheme } from './faultless.ts';
import { expect, openPage, takenIn, test, unique } from './frame-shop.ts';
import { toldNow } from './told-time.ts';

test('what a job misses is ordered from a supplier, comes short and dearer, and the rest is given up', async ({
  page,
  desk,
  by,
}) => {
  const tag = String(toldNow().getTime()).slice(-9);
  const supplier = `Tolver ${tag}`;
  const gaskets = await desk.parts.add({
    by,
    number: `G${tag}`,
    description: 'Gasket set',
    price: 4_000,
    cost: 2_000,
    supplier,
  });
  const { code, jobId } = await takenIn(desk, by, unique('Order'));
  const { estimates } = await desk.till.writeEstimate({
    by,
    jobId,
    lines: [
      {
        kind: 'part',
        description: 'Gasket set',
        partId: gaskets.id,
        quantity: 2_000,
        unitPrice: 4_000,
      },
    ],
  });
  const [estimate] = estimates;
  if (estimate === undefined) throw new Error('No estimate was written.');
  const approved = { how: 'telephone' as const, approvedBy: 'Oda Brandt', amount: 50_000 };
  await desk.till.approve({ by, jobId, estimateId: estimate.id, ...approved });
  const looks = () => noFaultsInEitherTheme(page);

  await openPage(page, '/parts/to-order');
  const card = page.getByRole('region', { name: supplier });
  await expect(card).toContainText(`${code} misses 2 pc`);
  await expect(card.getByRole('button', { name: 'Draw up the order' })).toBeDisabled();
  await card.getByRole('button', { name: `Add ${supplier}` }).click();
  const dialog = page.getByRole('dialog', { name: 'Add a supplier' });
  await expect(dialog.getByRole('textbox', { name: 'Name' })).toHaveValue(supplier);
  await dialog.getByRole('textbox', { name: 'Carriage', exact: true }).fill('9.50');
  await page.keyboard.press('Enter');
  await expect(dialog).toBeHidden();
  await looks();
  await card.getByRole('button', { name: 'Draw up the order' }).click();

  const ordered = page.getByRole('row').filter({ hasText: gaskets.number });
  await expect(ordered).toContainText(code);
  await expect(page.getByRole('textbox', { name: 'Carriage' })).toHaveValue('9.50');
  await page.reload();
  await expect(ordered.getByRole('textbox', { name: /^Quantity of/ })).toHaveValue('2');
  await looks();
  await page.getByRole('button', { name: 'Place the order' }).click();
  await expect(page.getByText('Awaited', { exact: true })).toBeVisible();

  const arrived = page.getByRole('region', { name: 'What came in' });
  const came = arrived.getByRole('textbox', { name: /^Came of/ });
  const take = arrived.getByRole('button', { name: 'Take it in' });
  await came.fill('3');
  await take.click();
  await expect(page.getByRole('alert')).toHaveAttribute('data-code', 'MORE_THAN_ORDERED');
  await came.fill('1');
  await arrived.getByRole('textbox', { name: /costs$/ }).fill('22.40');
  await expect(arrived).toContainText('1 pc still to come');
  await expect(arrived).toContainText('$2.40 dearer');
  await looks();
  await take.click();
  await expect(page.getByRole('status').filter({ hasText: 'On the shelf' })).toContainText(
    '$20.00 → $22.40',
  );
  await expect(page.getByText('In part', { exact: true })).toBeVisible();
  await expect
    .poll(async () => (await desk.parts.jobParts({ jobId })).parts)
    .toMatchObject([{ promised: 1_000, missing: 1_000, onOrder: 1_000 }]);

  await page.getByRole('link', { name: 'All orders' }).click();
  await page.getByText('Part by part').click();
  const back = page.getByRole('row').filter({ hasText: gaskets.number });
  await expect(back).toContainText('back-order, 1 pc came');
  await back.getByRole('link').first().click();

  await arrived.getByRole('button', { name: 'Wait no longer' }).click();
  await page.getByRole('textbox', { name: 'Why' }).fill('Sold out there');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Complete', { exact: true })).toBeVisible();
  await expect(page.getByText(/1 pc given up, Sold out there/)).toBeVisible();
});

test('an old part is taken in, sent back and credited', async ({ page, desk, by }) => {
  const tag = String(toldNow().getTime()).slice(-9);
  const supplier = `Harle ${tag}`;
  await desk.parts.addSupplier({ by, name: supplier });
  const starter = await desk.parts.add({
    by,
    number: `S${tag}`,
    description: 'Starter motor',
    price: 9_000,
    coreCharge: 2_500,
    supplier,
  });
  await openPage(page, '/parts/cores');
  await page.getByRole('button', { name: 'Take an old part in' }).click();
  await page.getByRole('combobox', { name: 'What it is an old one of' }).fill(starter.number);
  await page.getByRole('option', { name: starter.number }).click();
  await page.getByRole('button', { name: 'Take it in' }).click();
  const row = page.getByRole('row').filter({ hasText: starter.number });
  await row.getByRole('button', { name: /^Send/ }).click();
  await page.getByRole('button', { name: 'It is on its way' }).click();
  await expect(row).toContainText(`${supplier}: 1 pc`);
  await expect(row).toContainText('$25.00 expected');
  await row.getByRole('button', { name: /^Credit/ }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('textbox', { name: 'Credited for all of them' }).fill('24');
  await page.keyboard.press('Enter');
  await expect(row).toContainText('$24.00');
  await expect(row).toContainText('Credited');
  await noFaults(page);
});
