import type { PartId, StaffId } from '../../shared/contract/ids.ts';
import type { Desk } from './desk-client.ts';
import { noFaultsInEitherTheme } from './faultless.ts';
import { expect, openPage, scan, takenIn, test, unique } from './frame-shop.ts';
import { toldNow } from './told-time.ts';

/** An order of one part for the shelf, to a supplier of its own. */
async function orderOf(desk: Desk, by: StaffId, line: { partId: PartId; quantity: number }) {
  const { id: supplierId } = await desk.parts.addSupplier({ by, name: unique('Supplier') });
  return desk.parts.placeOrder({
    by,
    supplierId,
    lines: [{ ...line, unitCost: 2_000 }],
    expectedOn: '2031-12-03',
  });
}

test('a job waits for a gasket set, is issued a piston under its former number, and gives a set back', async ({
  page,
  desk,
  by,
}) => {
  const tag = String(toldNow().getTime()).slice(-9);
  const shelve = (number: string, description: string, barcode = '') =>
    desk.parts.add({ by, number, description, price: 4_000, cost: 2_000, barcode });
  const former = await shelve(`F${tag}`, 'Piston +0.50, first series');
  const piston = await shelve(`P${tag}`, 'Piston +0.50');
  const gaskets = await shelve(`G${tag}`, 'Gasket set', `40${tag}`);
  await desk.parts.move({ by, partId: former.id, kind: 'received', quantity: 1_000 });
  await desk.parts.supersede({ by, partId: former.id, supersededBy: piston.id });
  const { code, jobId } = await takenIn(desk, by, unique('Parts'));
  const { estimates } = await desk.till.writeEstimate({
    by,
    jobId,
    lines: [piston, gaskets].map(({ id, description, price }) => ({
      kind: 'part' as const,
      description,
      partId: id,
      quantity: 1_000,
      unitPrice: price,
    })),
  });
  const [estimate] = estimates;
  if (estimate === undefined) throw new Error('No estimate was written.');
  const approved = { how: 'telephone' as const, approvedBy: 'Oda Brandt', amount: 50_000 };
  await desk.till.approve({ by, jobId, estimateId: estimate.id, ...approved });

  await openPage(page, `/job/${code}/parts`);
  const field = page.getByRole('textbox', { name: 'Part number or barcode' });
  await expect(field).toBeFocused();
  const row = (number: string) => page.getByRole('row').filter({ hasText: number });
  await expect(row(piston.number)).toContainText(`Former number ${former.number}`);
  await expect(row(gaskets.number)).toContainText('To be ordered');

  const order = await orderOf(desk, by, { partId: gaskets.id, quantity: 3_000 });
  await page.reload();
  await expect(row(gaskets.number)).toContainText('expected Wed, Dec 3, 2031');
  await page.getByRole('button', { name: 'Let the job wait for them' }).click();
  await expect(page.getByText('Waits for parts', { exact: true })).toBeVisible();
  await expect(page.getByText(/Gasket set \(G\d+\), expected Dec 3, 2031/)).toBeVisible();
  await noFaultsInEitherTheme(page);

  await field.focus();
  await scan(page, code);
  await expect(page.getByText(`${code} is the tag of a job, not a part.`)).toBeVisible();
  await expect(page).toHaveURL(new RegExp(`/job/${code}/parts$`));

  // Three were ordered, two come in.
  await desk.parts.receive({
    by,
    orderId: order.id,
    lines: order.items.map(({ id: lineId }) => ({ lineId, quantity: 2_000, unitCost: 2_000 })),
  });
  await openPage(page, '/parts/jobs');
  await expect(row(code)).toContainText('All there: on with it');
  await page.getByRole('link', { name: code }).click();
  await page.getByRole('button', { name: 'On with it: Go-ahead given' }).click();
  await expect(page.getByText('Go-ahead given', { exact: true })).toBeVisible();

  const done = page.getByRole('region', { name: 'Issue to this job' }).getByRole('status');
  await field.focus();
  await scan(page, former.number.toLowerCase());
  await expect(done).toContainText(`Piston +0.50, first series (${former.number}) issued`);
  await expect(field).toBeFocused();
  // Two of a kind, as fast as the reader sends them.
  await scan(page, gaskets.barcode);
  await scan(page, gaskets.barcode);
  await expect(done).toContainText(`Gasket set (${gaskets.number}) issued`);
  await expect(row(gaskets.number).getByRole('cell').nth(4)).toHaveText('2');

  await page.getByRole('button', { name: `Take ${gaskets.number} back` }).click();
  const dialog = page.getByRole('dialog', { name: 'Take an unused part back' });
  await dialog.getByRole('textbox', { name: 'Quantity' }).fill('1');
  await page.keyboard.press('Enter');
  await expect(dialog).toBeHidden();
  await expect(row(gaskets.number)).toContainText('1 came back');
  await expect
    .poll(async () => (await desk.parts.part({ id: gaskets.id })).part)
    .toMatchObject({ onHand: 1_000, promised: 0, onOrder: 1_000, worth: 2_000 });

  // The shelf is empty now: what is in the hand all the same is issued with a reason, and listed.
  await field.fill(piston.number);
  await page.keyboard.press('Enter');
  await page
    .getByRole('textbox', { name: 'Why it goes to this job' })
    .fill('It lay in the wrong bin');
  await page.getByRole('checkbox', { name: /I have it in my hand/ }).check();
  await page.getByRole('button', { name: 'Issue it with this reason' }).click();
  await expect(done).toContainText(`Piston +0.50 (${piston.number}) issued`);
  await openPage(page, '/parts/put-right');
  await expect(row(piston.number)).toContainText('It lay in the wrong bin');
  await page.getByRole('button', { name: `Put ${piston.number} right` }).click();
  await page.getByRole('textbox', { name: 'Why' }).fill('Found when tidying up');
  await page.keyboard.press('Enter');
  await expect(row(piston.number)).toHaveCount(0);
});
