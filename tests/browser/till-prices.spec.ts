import { expect } from '@playwright/test';
import { noFaults } from './faultless.ts';
import { takeInJob, test } from './taxed-shop.ts';

test('a line takes its rate, cost, discount and core; the shop’s rules do the rest', async ({
  page,
  taxed,
}) => {
  const { desk, by, gaskets } = taxed;
  const clean = async () => {
    await noFaults(page);
  };

  // The owner sets how the shop prices.
  await page.goto('/office/prices');
  await page.getByRole('button', { name: 'Add a kind of work' }).click();
  await page.getByRole('textbox', { name: 'Kind of work 1' }).fill('Machining');
  await page.getByRole('textbox', { name: 'An hour', exact: true }).fill('110');
  await page.getByRole('button', { name: 'Add a bracket' }).click();
  await page.getByRole('textbox', { name: 'Markup on outside work' }).fill('25');
  await page.getByRole('checkbox', { name: /^Supplies are charged/ }).check();
  await page.getByRole('textbox', { name: 'At most', exact: true }).fill('4');
  await clean();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText('Nothing to save.')).toBeVisible();
  await expect
    .poll(() => desk.till.rules({}))
    .toMatchObject({
      labourRates: [{ name: 'Machining', rate: 11_000 }],
      markup: [{ upTo: null, markupPpm: 500_000 }],
      supplies: { ppm: 50_000, kinds: ['labour'], cap: 400 },
    });

  const { id: partId, price, cost } = gaskets;
  await desk.parts.reprice({ by, partId, price, cost, coreCharge: 500 });
  const { code, jobId } = await takeInJob(taxed);
  await page.goto(`/job/${code}/till`);
  const cell = (line: number, name: string) =>
    page.getByRole('textbox', { name: `Line ${line}, ${name}` });
  const details = (line: number) => page.getByRole('button', { name: `Line ${line}, details` });
  const kind = (line: number) => page.getByRole('combobox', { name: `Line ${line}, kind` });
  const add = page.getByRole('button', { name: 'Add a line' });

  await cell(1, 'description').fill('Cut seats');
  await details(1).click();
  await page.getByRole('combobox', { name: 'Kind of work' }).selectOption('Machining');
  await page.getByRole('textbox', { name: 'Note, printed below the line' }).fill('45 degrees');
  await page.keyboard.press('Escape');
  await expect(details(1)).toBeFocused();
  await expect(page.getByText('Machining · 45 degrees')).toBeVisible();

  await add.click();
  await kind(2).selectOption('outside');
  await cell(2, 'description').fill('Bore the cylinder');
  await details(2).click();
  await page.getByRole('textbox', { name: 'One costs the shop' }).fill('60');
  await expect(cell(2, 'unit price')).toHaveValue('75.00');
  await page.getByRole('textbox', { name: 'Discount on the line' }).fill('10 %');
  await details(2).click();

  await add.click();
  await kind(3).selectOption('supplies');
  await expect(cell(3, 'unit price')).toHaveValue('4.00');

  await add.click();
  await cell(4, 'description').fill('GK 51');
  await cell(4, 'description').press('Enter');
  await expect(cell(5, 'description')).toHaveValue('Core charge, Gasket set GK 51');
  await details(5).click();
  await page.getByRole('button', { name: 'It came back: credit $5.00' }).click();
  await expect(cell(6, 'description')).toHaveValue('Core came back, Gasket set GK 51');

  await page.getByRole('textbox', { name: 'Discount on the whole' }).fill('10');
  await expect(page.getByText(/^Leaves the shop/)).toHaveCount(0);
  await page.getByRole('button', { name: 'Show margins' }).click();
  await expect(page.getByText('Leaves the shop $15.40, 44.8 %.')).toBeVisible();
  await clean();

  // Kept for the next time, and taken at once.
  const bundles = page.getByRole('button', { name: 'Bundles' });
  await bundles.click();
  await page.getByRole('menuitem', { name: /^Keep these lines/ }).click();
  await page.getByRole('combobox', { name: 'Name' }).fill('Valve job, single cylinder');
  await page.getByRole('button', { name: 'Keep them' }).click();
  await bundles.click();
  await expect(page.getByRole('menuitem', { name: /6 lines, usually 1 h/ })).toBeVisible();
  await page.keyboard.press('Escape');

  // A discount that can't be read is looked at first.
  const whole = page.getByRole('textbox', { name: 'Discount on the whole' });
  await whole.fill('ten');
  await page.getByRole('button', { name: 'Write the estimate' }).click();
  await expect(whole).toBeFocused();
  await whole.fill('10');
  await page.getByRole('button', { name: 'Write the estimate' }).click();
  await expect(page.getByText('Revision 1 is written')).toBeVisible();
  const [estimate] = (await desk.till.account({ jobId })).estimates;
  expect(
    estimate?.lines.map(({ amount, unitCost, priceFrom }) => [amount, unitCost, priceFrom]),
  ).toEqual([
    [11_000, null, 'labour-rate'],
    [6_750, 6_000, 'cost-and-markup'],
    [400, null, 'supplies-rule'],
    [3_440, 1_900, 'shelf-price'],
    [500, null, 'typed'],
    [-500, null, 'typed'],
  ]);
  expect(estimate?.totals).toMatchObject({ subtotal: 21_590, discount: 1_000 });

  // The customer brings a certificate: no tax from now on.
  const { customerId } = await desk.till.account({ jobId });
  await page.goto(`/customer/${customerId}`);
  await page.getByRole('button', { name: 'Change tax and payment' }).click();
  await page.getByRole('textbox', { name: 'Exemption certificate, number' }).fill('EX-4471');
  await page.getByRole('checkbox', { name: /^Takes the machine and pays later/ }).check();
  await page.getByRole('textbox', { name: 'Days to pay' }).fill('30');
  await clean();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText('on account, within 30 days')).toBeVisible();
  await page.goto(`/job/${code}/till`);
  await expect(page.getByText('No tax: certificate EX-4471')).toBeVisible();
});
