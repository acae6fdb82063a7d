import { readFile } from 'node:fs/promises';
import { expect, type Page } from '@playwright/test';
import { parse } from 'csv-parse/sync';
import { z } from 'zod';
import { PaperId } from '../../shared/contract/ids.ts';
import { readPaper } from '../unit/paper/reading-back.ts';
import { looksRight } from './faultless.ts';
import { type TaxedShop, test } from './taxed-shop.ts';
import { standsStill } from './themes.ts';

/**
 * A job's money from three options to the accountant: one is taken by telephone for less, a decision of the
 * bench stops it, it is approved again, billed with a deposit, paid in part with change, the rest stands on
 * account, and one line of it is credited later.
 */

const Issued = z.object({ json: z.object({ id: PaperId }) });

async function engineOnTheBench({ desk, by }: TaxedShop) {
  const { id: engineModelId } = await desk.specbook.addModel({
    by,
    make: 'Halvard',
    model: 'H 212',
    cycle: 'four-stroke',
    cylinders: 1,
    bore: 68,
    stroke: 46,
  });
  await desk.parts.add({
    by,
    number: 'HP 212',
    description: 'Piston, standard, H 212',
    price: 6_000,
  });
  await desk.parts.add({
    by,
    number: 'HG 212',
    description: 'Gasket set, complete, H 212',
    price: 2_000,
  });
  const taken = await desk.counter.takeIn({
    by,
    customer: { which: 'new', name: 'Odalys Brandt', phone: '(312) 555-0177' },
    machine: {
      which: 'new',
      kind: 'tiller',
      make: 'Ruddock',
      model: 'RT 7',
      serial: 'RT7-0042',
      engine: { make: 'Halvard', model: 'H 212', engineModelId },
    },
    complaint: 'Knocks.',
    signature: { name: 'Odalys Brandt' },
  });
  const { customer } = await desk.counter.job({ id: taken.jobId });
  await desk.till.setCustomerTerms({
    by,
    customerId: customer.id,
    taxPlace: '',
    exemptCertificate: '',
    exemptUntil: null,
    onAccount: true,
    termsDays: 30,
    creditLimit: null,
  });
  return taken;
}

async function looks(page: Page, name: string) {
  await looksRight(page);
  if (process.env.LOOK === undefined) return;
  for (const colorScheme of ['light', 'dark'] as const)
    for (const [width, height] of [
      [1280, 800],
      [900, 1200],
    ] as const) {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width, height });
      await standsStill(page);
      await page.screenshot({
        path: `${process.env.LOOK}/${name}-${width}-${colorScheme}.png`,
        fullPage: true,
      });
    }
  await page.setViewportSize({ width: 1280, height: 800 });
}

test('from three options by a stop and an approval to a credit, a statement and the books', async ({
  page,
  taxed,
}) => {
  const { desk, by } = taxed;
  const { code, jobId } = await engineOnTheBench(taxed);
  const line = (position: number, what: string) =>
    page.getByRole('textbox', { name: `Line ${position}, ${what}` });
  const fill = async (position: number, description: string, price: string) => {
    await line(position, 'description').fill(description);
    await page.keyboard.press('Escape');
    await line(position, 'unit price').fill(price);
  };

  await test.step('three options side by side', async () => {
    await page.goto(`/job/${code}/till`);
    await fill(1, 'Decarbonize', '90');
    await page.getByRole('button', { name: 'Put another option beside this' }).click();
    await page.getByRole('menuitem', { name: 'Empty' }).click();
    await expect(page.getByRole('tab', { name: /^Rebuild/ })).toHaveAttribute(
      'aria-selected',
      'true',
    );
    await fill(1, 'Strip and build', '85');
    await line(1, 'quantity').fill('2');
    await page.getByRole('button', { name: 'Add a line' }).click();
    await fill(2, 'Recoil rope', '15');
    await page.getByRole('button', { name: 'Put another beside these' }).click();
    await page.getByRole('menuitem', { name: 'Empty' }).click();
    await fill(1, 'Short engine, fitted', '700');
    await expect(page.getByRole('tab')).toHaveText([
      'Repair$90.00',
      'Rebuild$185.00',
      'Replace the engine$700.00',
    ]);
    await looks(page, '1-options');
    await page.getByRole('button', { name: 'Write the estimate' }).click();
    await expect(page.getByText('Revision 1 is written and stays as it is.')).toBeVisible();
  });

  const approval = page.getByRole('form', { name: 'Take an approval' });
  await test.step('one is taken, less a line that is declined', async () => {
    await approval.getByRole('radio', { name: 'Rebuild: $185.00' }).check();
    await approval.getByText('All 2 lines are taken; decline some…').click();
    await approval.getByRole('checkbox', { name: /^Recoil rope/ }).uncheck();
    await expect(approval.getByRole('textbox', { name: 'Up to' })).toHaveValue('170.00');
    await looks(page, '2-approval');
    await approval.getByRole('button', { name: 'Take the approval' }).click();
    await expect(page.getByText(/Declined: Recoil rope \(\$15\.00\)/)).toBeVisible();
  });

  await test.step('a decision adds a piston: the bench waits', async () => {
    await desk.bench.decide({
      by,
      jobId,
      subject: 'piston',
      cylinder: 1,
      choice: 'replace',
      reason: 'Scored.',
    });
    await page.goto(`/job/${code}/bench/build`);
    // 170 of work, 80 of parts, 7 % of tax on those.
    await expect(
      page.getByText('The bill is heading to $255.60, and $170.00 is approved: $85.60 too much'),
    ).toBeVisible();
    await looks(page, '3-bench');
    await page.getByRole('button', { name: 'Let it pass…' }).click();
    await looks(page, '4-override');
    await page.getByRole('button', { name: 'Leave it stopped' }).click();
  });

  await test.step('asked again, it goes on', async () => {
    await page.getByRole('link', { name: 'Ask the customer' }).click();
    await expect(page.locator('#ask')).toBeFocused();
    await page.getByText('What to say', { exact: true }).click();
    await expect(page.getByText('- Piston, standard, H 212: $60.00')).toBeVisible();
    await looks(page, '5-ask');
    await page.getByRole('button', { name: 'Put 2 lines into the estimate' }).click();
    await expect(page.getByRole('tab', { name: /^Rebuild/ })).toContainText('$270.60');
    await page.getByRole('button', { name: 'Write revision 2' }).click();
    await expect(page.getByText('Revision 2 is written and stays as it is.')).toBeVisible();
    await page.getByRole('button', { name: 'Take down their answer' }).click();
    await approval.getByRole('radio', { name: 'Rebuild: $270.60' }).check();
    // What was declined before is declined again.
    await expect(approval.getByRole('textbox', { name: 'Up to' })).toHaveValue('255.60');
    await approval.getByRole('button', { name: 'Take the approval' }).click();
    await expect(page.getByText('$255.60 is exactly what is approved.')).toBeVisible();
    await expect
      .poll(() => desk.till.billAhead({ jobId }))
      .toMatchObject({ total: 25_560, stopped: false });
    await page.goto(`/job/${code}/bench/build`);
    await expect(page.getByRole('region', { name: 'Step at hand' })).toBeVisible();
    await expect(page.getByText(/The bill is heading to/)).toBeHidden();
  });

  const payment = page.getByRole('form', { name: 'Take a payment' });
  await test.step('billed with a deposit, paid in part with change, the rest on account', async () => {
    await page.getByRole('link', { name: 'Till', exact: true }).click();
    await payment.getByRole('textbox', { name: 'Deposit, amount' }).fill('55.60');
    await payment.getByRole('textbox', { name: 'Cash given' }).fill('55.60');
    await payment.getByRole('button', { name: 'Take the deposit: $55.60' }).click();
    await page.getByRole('button', { name: 'Issue the invoice: $255.60' }).click();
    await page.getByRole('button', { name: 'Issue it' }).click();
    await expect(page.getByText(/, to be paid by /)).toBeVisible();
    await payment.getByRole('textbox', { name: 'Payment, amount' }).fill('120');
    await payment.getByRole('textbox', { name: 'Cash given' }).fill('150');
    await payment.getByRole('button', { name: 'Take the payment: $120.00' }).click();
    await expect(page.getByText('Payment of $120.00, cash. Change: $30.00.')).toBeVisible();
    await looks(page, '6-billed');
  });

  await test.step('one line is credited', async () => {
    await page.getByRole('button', { name: 'Write a credit note' }).click();
    const note = page.getByRole('dialog', { name: /^Credit note for invoice/ });
    await note.getByRole('checkbox', { name: 'Gasket set, complete, H 212' }).check();
    await note.getByRole('textbox', { name: 'Reason' }).fill('Not needed after all.');
    await note.getByRole('button', { name: 'Issue the credit note: $21.40' }).click();
    await expect(page.getByText(/^Credit note N-\d{6}: \$21\.40$/)).toBeVisible();
  });

  await test.step('statement and books agree to the cent', async () => {
    await page.goto('/office/books');
    await page.getByRole('link', { name: 'Odalys Brandt' }).click();
    await expect(page.getByRole('row', { name: /Owed by the customer/ })).toContainText('$58.60');
    const issued = page.waitForResponse((response) => response.url().includes('issueStatement'));
    await page.getByRole('button', { name: 'Issue a statement' }).click();
    // Once as what was issued just now, once in the list of those so far.
    await expect(page.getByRole('button', { name: /^Statement S-\d{6}$/ })).toHaveCount(2);
    const { json: card } = Issued.parse(await (await issued).json());
    const { pdf } = await desk.office.paper({ id: card.id });
    const { text } = await readPaper(Uint8Array.from(Buffer.from(pdf, 'base64')));
    expect(text).toMatch(/Balance.*\$58\.60/);

    await page.getByRole('link', { name: 'Reports', exact: true }).click();
    await page.getByRole('link', { name: 'For the accountant' }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as CSV: Journal lines' }).click(),
    ]);
    const rows: Record<string, string>[] = parse(await readFile(await download.path()), {
      columns: true,
    });
    const cents = (figure = '') => Math.round(Number(figure || '0') * 100);
    const own = rows.filter((row) => row.Customer === 'Odalys Brandt');
    const balances = new Map<string, number>();
    for (const row of own) {
      const account = row.Account ?? '';
      const moved = cents(row['Debit, USD']) - cents(row['Credit, USD']);
      balances.set(account, (balances.get(account) ?? 0) + moved);
    }
    expect(Object.fromEntries(balances)).toMatchObject({
      'Customers, owed to us': 5_860,
      'Customers, deposits held': 0,
      Cash: 17_560,
    });
    expect([...balances.values()].reduce((sum, each) => sum + each, 0)).toBe(0);
  });
});
