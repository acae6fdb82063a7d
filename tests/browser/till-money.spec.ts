import { expect } from '@playwright/test';
import { noFaults } from './faultless.ts';
import { takeInJob, test } from './taxed-shop.ts';

test('a bill is issued as typed, paid in cash with change, and one line of it credited and given back', async ({
  page,
  taxed,
}) => {
  const { desk, by, gaskets } = taxed;
  const { code, jobId } = await takeInJob(taxed);
  const labour = { kind: 'labour' as const, description: 'Rebuild', unit: 'h', quantity: 1_000 };
  const { estimates } = await desk.till.writeEstimate({
    by,
    jobId,
    lines: [
      { ...labour, unitPrice: 8_500 },
      {
        kind: 'part',
        description: 'Gasket set',
        partId: gaskets.id,
        quantity: 1_000,
        unitPrice: 3_440,
      },
    ],
  });
  const estimateId = estimates[0]?.id;
  if (estimateId === undefined) throw new Error('No estimate was written.');
  await desk.till.approve({
    by,
    jobId,
    estimateId,
    how: 'telephone',
    approvedBy: 'Ł. Ż.',
    amount: 13_000,
  });
  await desk.till.takePayment({
    by,
    jobId,
    kind: 'deposit',
    method: 'card',
    amount: 5_000,
    reference: 'slip 88',
  });
  const looks = async () => {
    await noFaults(page);
  };

  await page.goto(`/job/${code}/till`);
  await page.getByRole('textbox', { name: 'Line 1, unit price' }).fill('90');
  await expect(page.getByRole('table', { name: 'Otherwise than approved' })).toContainText(
    /\$85\.00.*\$90\.00/,
  );
  await page.getByRole('button', { name: 'Issue the invoice: $126.81' }).click();
  await page.getByRole('button', { name: 'Issue it' }).click();
  await expect(page.getByRole('textbox', { name: 'Payment, amount' })).toHaveValue('76.81');

  await page.getByRole('textbox', { name: 'Cash given' }).fill('80');
  await page.getByRole('button', { name: 'Take the payment: $76.81' }).click();
  await expect(page.getByText('Payment of $76.81, cash. Change: $3.19.')).toBeVisible();
  await expect(page.getByRole('button', { name: /^Receipt R-\d{6}$/ })).toHaveCount(2);
  await expect(page.getByText('Cash, $80.00 given, $3.19 change')).toBeVisible();

  await page.getByRole('button', { name: 'Write a credit note' }).click();
  const dialog = page.getByRole('dialog', { name: /^Credit note for invoice/ });
  await dialog.getByRole('checkbox', { name: 'Gasket set' }).check();
  await expect(dialog.getByText('$36.81 with tax.')).toBeVisible();
  await looks();
  await dialog.getByRole('button', { name: 'Issue the credit note: $36.81' }).click();
  await dialog.getByRole('textbox', { name: 'Reason' }).fill('The old gaskets were whole.');
  await dialog.getByRole('button', { name: 'Issue the credit note: $36.81' }).click();
  await expect(page.getByText(/^Credit note N-\d{6}: \$36\.81$/)).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Refund, amount' })).toHaveValue('36.81');
  await page.getByRole('button', { name: 'Give it back: $36.81' }).click();
  await expect(page.getByText('Paid in full.')).toBeVisible();
  await looks();
});
