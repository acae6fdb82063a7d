import { expect } from '@playwright/test';
import { takeInJob, test } from './taxed-shop.ts';

test('from the first line to the change in the hand, by the keyboard', async ({ page, taxed }) => {
  // A whole bill by hand; a busy machine takes its time over the papers.
  const { code, jobId } = await takeInJob(taxed);
  const keys = page.keyboard;
  const press = async (...names: string[]) => {
    for (const name of names) await keys.press(name);
  };
  const focused = page.locator(':focus');
  await page.goto(`/job/${code}/till`);

  // Labour begins with the shop's rate for an hour.
  await expect(focused).toHaveAccessibleName('Line 1, description');
  await keys.type('Strip, measure and build');
  await press('Enter');
  await expect(focused).toHaveAccessibleName('Line 1, quantity');
  await keys.type('4,5');
  await press('Enter', 'Enter');
  await expect(focused).toHaveValue('85.00');
  await expect(page.getByRole('cell', { name: '$382.50' })).toBeVisible();
  await press('Enter');

  // A barcode reader types the number and Enter.
  await expect(focused).toHaveAccessibleName('Line 2, description');
  await keys.type('4006381333931');
  await press('Enter');
  await expect(focused).toHaveAccessibleName('Line 2, quantity');
  await expect(page.getByRole('textbox', { name: 'Line 2, description' })).toHaveValue(
    'Piston +0.50 with rings',
  );
  await expect(page.getByRole('combobox', { name: 'Line 2, kind' })).toHaveValue('part');

  // A closed window loses nothing.
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Line 1, quantity' })).toHaveValue('4,5');
  await expect(page.getByText('Part TL 4412-A')).toBeVisible();
  await page.getByRole('textbox', { name: 'Line 2, unit price' }).focus();
  await press('Enter');

  // By a word of its name.
  await expect(focused).toHaveAccessibleName('Line 3, description');
  await keys.type('gasket set');
  await expect(page.getByRole('option', { name: /Gasket set/ })).toBeVisible();
  await press('ArrowDown', 'Enter');
  await expect(focused).toHaveAccessibleName('Line 3, quantity');
  await press('Enter', 'Enter', 'Enter');

  await press('Shift+Enter');
  await expect(focused).toHaveAccessibleName('Line 4, kind');
  await press('o', 'Enter');
  await keys.type('Bore the cylinder to the second oversize');
  await press('Enter', 'Enter', 'Enter');
  await keys.type('90');
  await press('Enter');

  // Enter on an empty line: the list is done.
  await expect(focused).toHaveAccessibleName('Line 5, description');
  await press('Enter');
  await expect(focused).toHaveAccessibleName('Write the estimate');
  const editor = page.getByRole('region', { name: /^Estimate/ });
  // 54.80 + 34.40 of parts: 6.25 % is 5.575, half up 5.58; 0.75 % is 0.669.
  await expect(editor.getByText('State sales tax 6.25 % on $89.20')).toBeVisible();
  await expect(editor.getByText('$5.58')).toBeVisible();
  await expect(editor.getByText('$0.67')).toBeVisible();
  await expect(editor.getByText('$567.95')).toBeVisible();
  await press('Enter');
  await expect(page.getByText('Revision 1 is written and stays as it is.')).toBeVisible();
  await expect(page.getByText('$567.95 is $417.95 more than the approved $150.00.')).toBeVisible();

  // By telephone, for less than the total.
  const limit = page.getByRole('textbox', { name: 'Up to' });
  await expect(limit).toHaveValue('567.95');
  await limit.fill('500');
  await press('Enter');
  await expect(page.getByText('$567.95 is $67.95 more than the approved $500.00.')).toBeVisible();

  await page.getByRole('textbox', { name: 'Deposit, amount' }).focus();
  await expect(focused).toHaveValue('100.00');
  await page.getByRole('radio', { name: 'Card' }).focus();
  await press(' ');
  await page.getByRole('button', { name: 'Take the deposit: $100.00' }).focus();
  await press('Enter');
  await expect(page.getByRole('status').getByText('Deposit of $100.00, card.')).toBeVisible();

  // The approved amount is a limit that the program keeps.
  await page.getByRole('button', { name: 'Issue the invoice: $567.95' }).focus();
  await press('Enter');
  await expect(focused).toHaveAccessibleName('Issue it');
  await press('Enter');
  const refusal = page.getByRole('alert').filter({ hasText: 'would pass what the customer' });
  await expect(refusal).toHaveAttribute('data-code', 'OVER_APPROVAL');
  await expect(page.getByText('against the approved $500.00: $67.95 too much')).toBeVisible();
  await expect(page.getByText('Ring the customer, read out the estimate')).toBeVisible();
  await expect.poll(async () => (await taxed.desk.till.account({ jobId })).invoice).toBeNull();
  await page.getByRole('button', { name: 'Take another approval' }).focus();
  await press('Enter');
  await expect(focused).toHaveAccessibleName('Up to');
  await expect(focused).toHaveValue('567.95');
  await press('Enter');
  await expect(page.getByText('$567.95 is exactly what is approved.')).toBeVisible();

  await page.getByRole('button', { name: 'Issue the invoice: $567.95' }).focus();
  await press('Enter');
  await expect(focused).toHaveAccessibleName('Issue it');
  await press('Enter');
  await expect(page.getByRole('heading', { name: /^Invoice I-/ })).toBeVisible();

  // The money is wanted next: what is due after the deposit.
  await expect(focused).toHaveAccessibleName('Payment, amount');
  await expect(focused).toHaveValue('467.95');
  await press('Enter');
  await expect(focused).toHaveAccessibleName('Cash given');
  await keys.type('500');
  await expect(page.getByText('Change $32.05')).toBeVisible();
  await press('Enter');
  await expect(page.getByText('Payment of $467.95, cash. Change: $32.05.')).toBeVisible();
  await expect(page.getByText('Paid in full.')).toBeVisible();

  await expect
    .poll(() => taxed.desk.till.account({ jobId }))
    .toMatchObject({
      approvals: [
        { how: 'telephone', amount: 50_000 },
        { how: 'telephone', amount: 56_795 },
      ],
      invoice: { totals: { subtotal: 56_170, total: 56_795 } },
      payments: [
        { kind: 'deposit', method: 'card', amount: 10_000 },
        { kind: 'payment', method: 'cash', amount: 46_795 },
      ],
      paid: 56_795,
      due: 0,
    });
});
