import { expect } from '@playwright/test';
import { looksRightAtEitherWidth } from './faultless.ts';
import { takeInJob, test } from './taxed-shop.ts';

test('the till reads well', async ({ page, taxed }) => {
  const { desk, by } = taxed;
  const { code, jobId } = await takeInJob(taxed);
  const looks = () => looksRightAtEitherWidth(page);

  await page.goto(`/job/${code}/till`);
  await expect(page.getByText('Write an estimate first')).toBeVisible();
  await page.getByRole('textbox', { name: 'Line 1, description' }).fill('piston');
  await expect(page.getByRole('option', { name: /Piston/ }).first()).toBeVisible();
  await page.getByRole('textbox', { name: 'Line 1, quantity' }).fill('x');
  await looks();

  const { estimates } = await desk.till.writeEstimate({
    by,
    jobId,
    lines: [
      { kind: 'labour', description: 'Rebuild', unit: 'h', quantity: 4_000, unitPrice: 8_500 },
    ],
  });
  await page.reload();
  await page.getByRole('button', { name: 'Start from the newer one' }).click();
  await page.getByText('In person', { exact: true }).click();
  await looks();

  const estimateId = estimates[0]?.id;
  expect(estimateId).toBeDefined();
  if (estimateId === undefined) return;
  const approval = { by, jobId, estimateId, how: 'text', approvedBy: 'Ł. Ż.' } as const;
  await desk.till.approve({ ...approval, amount: 34_000 });
  await desk.till.issueInvoice({ by, jobId });
  await page.reload();
  await expect(page.getByRole('region', { name: 'What was billed' })).toBeVisible();
  await looks();
});
