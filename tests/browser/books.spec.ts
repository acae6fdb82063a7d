import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { looksRight } from './faultless.ts';
import { expect, openPage, takenIn, test, unique } from './frame-shop.ts';

test('what is owed, its statement, the drawer and the accountant’s export agree', async ({
  page,
  desk,
  by,
}) => {
  await page.setViewportSize({ width: 900, height: 1200 });
  await page.emulateMedia({ colorScheme: 'dark' });
  const name = unique('Ödön');
  const { jobId } = await takenIn(desk, by, name);
  const lines = [
    { kind: 'labour' as const, description: 'Rebuild', quantity: 1_000, unitPrice: 12_345 },
  ];
  const { estimates } = await desk.till.writeEstimate({ by, jobId, lines });
  const estimateId = estimates[0]?.id;
  if (estimateId === undefined) throw new Error('No estimate was written.');
  await desk.till.approve({
    by,
    jobId,
    estimateId,
    how: 'telephone',
    approvedBy: name,
    amount: 12_345,
  });
  await desk.till.issueInvoice({ by, jobId });
  await desk.till.takePayment({ by, jobId, kind: 'payment', method: 'cash', amount: 2_345 });

  await openPage(page, '/office');
  await page.getByRole('link', { name: 'Books' }).click();
  await expect(page.getByRole('row', { name: new RegExp(name) })).toContainText('$100.00');
  await looksRight(page);

  await page.getByRole('link', { name }).click();
  await expect(page.getByRole('row', { name: /Owed by the customer/ })).toContainText('$100.00');
  await page.getByRole('button', { name: 'Issue a statement' }).click();
  const sofar = page.getByRole('region', { name: 'Statements so far' });
  await expect(sofar.getByRole('button', { name: /^Statement S-\d{6}$/ })).toBeVisible();
  await expect(sofar).toContainText('$100.00');
  await looksRight(page);

  // The drawer, by the keyboard: a dollar is missing, and that wants a word.
  await page
    .getByRole('navigation', { name: 'Books' })
    .getByRole('link', { name: 'Drawer' })
    .click();
  const { taken } = await desk.till.drawer({});
  const opening = page.getByRole('textbox', { name: 'Cash when the day began' });
  await opening.focus();
  await page.keyboard.type('50');
  await page.keyboard.press('Tab');
  await page.keyboard.type(((taken.cash + 4_900) / 100).toFixed(2));
  await expect(page.getByRole('status')).toHaveText('$1.00 missing');
  await page.getByRole('textbox', { name: 'Note' }).fill('A dollar of change too much');
  await looksRight(page);
  await page.getByRole('button', { name: 'Keep this count' }).click();
  await expect(page.getByRole('region', { name: 'Counted' })).toContainText('$1.00 missing');

  await page
    .getByRole('navigation', { name: 'Books' })
    .getByRole('link', { name: 'Reports' })
    .click();
  await page.getByRole('link', { name: 'For the accountant' }).click();
  const accounts = page.getByRole('region', { name: 'Accounts', exact: true });
  await expect(accounts).toBeVisible();
  await looksRight(page);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as CSV: Journal lines' }).click(),
  ]);
  const rows: Record<string, string>[] = parse(readFileSync(await download.path()), {
    columns: true,
  });
  const balance = (account: string) =>
    rows
      .filter((row) => row.Customer === name && row.Account === account)
      .reduce((sum, row) => sum + Number(row['Debit, USD']) - Number(row['Credit, USD']), 0);
  expect(balance('Customers, owed to us')).toBeCloseTo(100, 6);
  expect(balance('Customers, deposits held')).toBeCloseTo(0, 6);
  expect(balance('Cash')).toBeCloseTo(23.45, 6);

  await page.getByRole('combobox', { name: 'Time' }).selectOption('Last year');
  await expect(page.getByText('Nothing in this time.').first()).toBeVisible();
});
