import { expect } from '@playwright/test';
import { takeInJob, test } from './taxed-shop.ts';

test('what can’t be read is named at its line, and nothing is written', async ({ page, taxed }) => {
  const { code, jobId } = await takeInJob(taxed);
  await page.goto(`/job/${code}/till`);
  await page.getByRole('textbox', { name: 'Line 1, description' }).fill('Find the spark');
  await page.getByRole('textbox', { name: 'Line 1, quantity' }).fill('1,500');
  await page.getByRole('textbox', { name: 'Line 1, unit price' }).fill('');
  await page.getByRole('button', { name: 'Write the estimate' }).click();
  await expect(page.getByText(/^Line 1: '1,500' can be read in two ways/)).toBeVisible();
  await expect(page.getByText(/^Line 1: Nothing is typed/)).toBeVisible();
  const quantity = page.getByRole('textbox', { name: 'Line 1, quantity' });
  await expect(quantity).toHaveAttribute('aria-invalid', 'true');
  await expect(quantity).toHaveAccessibleDescription(/can be read in two ways/);
  await expect.poll(async () => (await taxed.desk.till.account({ jobId })).estimates).toEqual([]);
});

test('a line is deleted by keys, and the focus stays in the list', async ({ page, taxed }) => {
  const { code } = await takeInJob(taxed);
  await page.goto(`/job/${code}/till`);
  const first = page.getByRole('textbox', { name: 'Line 1, description' });
  await first.fill('Clean the carburettor');
  await page.getByRole('button', { name: 'Add a line' }).click();
  await page.keyboard.type('Set the governor');
  await first.focus();
  await page.keyboard.press('Control+Delete');
  await expect(first).toHaveValue('Set the governor');
  await expect(first).toBeFocused();
  await page.keyboard.press('Control+Delete');
  await expect(first).toHaveValue('');
  await expect(first).toBeFocused();
});

test('a revision stays as it was written; the next one begins from it', async ({ page, taxed }) => {
  const { desk, by } = taxed;
  const { code, jobId } = await takeInJob(taxed);
  const line = { kind: 'labour' as const, unit: 'h', quantity: 1_000, unitPrice: 8_500 };
  await desk.till.writeEstimate({ by, jobId, lines: [{ ...line, description: 'Diagnosis' }] });
  await page.goto(`/job/${code}/till`);
  await expect(page.getByRole('button', { name: 'Write revision 2' })).toBeDisabled();
  await page.getByRole('textbox', { name: 'Line 1, quantity' }).fill('2');
  await expect(page.getByText('Changed since revision 1')).toBeVisible();

  // Another station writes one meanwhile.
  await desk.till.writeEstimate({ by, jobId, lines: [{ ...line, description: 'Rebuild' }] });
  await page.reload();
  await expect(page.getByText('A newer revision was written')).toBeVisible();
  await page.getByRole('button', { name: 'Keep what is typed' }).click();
  await page.getByRole('button', { name: 'Write revision 3' }).click();
  await expect(page.getByText('Revision 3 is written')).toBeVisible();

  const earlier = page.getByRole('region', { name: 'Earlier revisions' });
  await earlier.getByRole('button', { name: /^Revision 2/ }).click();
  await expect(earlier.getByRole('cell', { name: 'Rebuild' })).toBeVisible();
  await expect(earlier.getByRole('textbox')).toHaveCount(0);
  const { estimates } = await desk.till.account({ jobId });
  expect(estimates.map(({ totals }) => totals.total)).toEqual([8_500, 8_500, 17_000]);
});

test('an approval in person is signed', async ({ page, taxed }) => {
  const { desk, by } = taxed;
  const { code, jobId } = await takeInJob(taxed, '山田 花子');
  await desk.till.writeEstimate({
    by,
    jobId,
    lines: [
      { kind: 'labour', description: 'Rebuild', unit: 'h', quantity: 3_000, unitPrice: 8_500 },
    ],
  });
  await page.goto(`/job/${code}/till`);
  await page.getByText('In person', { exact: true }).click();
  await page.getByRole('button', { name: 'Take the approval' }).click();
  await expect(page.getByText('An approval in person is signed.')).toBeVisible();
  await expect.poll(async () => (await desk.till.account({ jobId })).approvals).toEqual([]);
  const name = page.getByRole('textbox', { name: 'Name of who signs' });
  await name.fill('山田 花子');
  await name.press('Enter');
  await page.getByRole('button', { name: 'Take the approval' }).click();
  await expect.poll(async () => (await desk.till.account({ jobId })).approvals).toEqual([]);
  await page.getByRole('button', { name: 'Record typed signature' }).click();
  await page.getByRole('button', { name: 'Take the approval' }).click();
  await expect(page.getByText('$255.00 is exactly what is approved.')).toBeVisible();
  await expect
    .poll(async () => (await desk.till.account({ jobId })).approvals)
    .toMatchObject([
      { how: 'in-person', approvedBy: '山田 花子', amount: 25_500, typedBy: expect.any(String) },
    ]);
  await expect(page.getByText('in person: typed name, entered by')).toBeVisible();
});

test('too little cash becomes a part payment, too much paid is given back', async ({
  page,
  taxed,
}) => {
  const { desk, by } = taxed;
  const { code, jobId } = await takeInJob(taxed);
  await desk.till.writeEstimate({
    by,
    jobId,
    lines: [
      { kind: 'labour', description: 'Diagnosis', unit: 'h', quantity: 1_000, unitPrice: 8_500 },
    ],
  });
  await page.goto(`/job/${code}/till`);
  await page.getByRole('textbox', { name: 'Deposit, amount' }).fill('40');
  await page.getByRole('textbox', { name: 'Cash given' }).fill('30');
  await expect(page.getByText('$10.00 is missing.')).toBeVisible();
  await page.getByRole('button', { name: 'Take $30.00 as part of it' }).click();
  await page.getByRole('button', { name: 'Take the deposit: $30.00' }).click();
  await expect(page.getByText('Deposit of $30.00, cash.')).toBeVisible();
  await page.getByRole('textbox', { name: 'Amount' }).fill('70');
  await page.getByRole('button', { name: 'Take the deposit: $70.00' }).click();
  await expect(page.getByText('Deposit of $70.00, cash.')).toBeVisible();

  await page.getByRole('button', { name: 'Issue the invoice: $85.00' }).click();
  await page.getByRole('button', { name: 'Issue it' }).click();
  await expect(page.getByText('Owed to the customer')).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Refund, amount' })).toHaveValue('15.00');
  await page.getByRole('button', { name: 'Give it back: $15.00' }).click();
  await expect(page.getByText('Paid in full.')).toBeVisible();
  await expect(page.getByText('write a credit note first')).toBeVisible();
  await expect.poll(async () => (await desk.till.account({ jobId })).due).toBe(0);
});
