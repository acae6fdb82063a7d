import { afterAll, beforeAll, expect, test } from 'vitest';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

/** Settings that change what a bill comes to, through the desk: basis and rounding of tax, zero decimals. */

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop();
});
afterAll(() => shop.close());

const line = (unitPrice: number) => ({
  kind: 'part' as const,
  description: 'Gasket',
  quantity: 1_000,
  unitPrice,
});

test('tax by line and by bill differ by a cent where they should', async () => {
  const { desk, by } = shop;
  const facts = await desk.office.shop({});
  const taxes = [{ name: 'State', ratePpm: 70_000, kinds: ['part' as const] }];
  // Streamlined Sales and Use Tax Agreement, section 324: the seller may round by item or by invoice.
  // Three items of 1.07 at 7 %: 0.21 by item, 0.22 by invoice (computed).
  const lines = [line(107), line(107), line(107)];
  await desk.office.setShop({ by, ...facts, taxes, taxBasis: 'line' });
  expect((await desk.till.price({ lines })).totals.total).toBe(342);
  await desk.office.setShop({ by, ...facts, taxes, taxBasis: 'invoice' });
  expect((await desk.till.price({ lines })).totals.total).toBe(343);
});

test('a bill keeps the rates of its day', async () => {
  const { desk, by } = shop;
  const { jobId } = await desk.counter.takeIn(plainIntake(by));
  const before = await desk.till.writeEstimate({ by, jobId, lines: [line(1_000)] });
  const facts = await desk.office.shop({});
  await desk.office.setShop({ by, ...facts, taxes: [] });
  const after = await desk.till.account({ jobId });
  expect(after.estimates[0]?.totals).toEqual(before.estimates[0]?.totals);
});

test('the currency stays once amounts are written in it', async () => {
  const { desk, by } = shop;
  const facts = await desk.office.shop({});
  const written = shop.contents();
  await expect(desk.office.setShop({ by, ...facts, currency: 'JPY' })).rejects.toMatchObject({
    code: 'CURRENCY_IN_USE',
    defined: true,
  });
  expect(shop.contents()).toBe(written);
  expect(await desk.office.setShop({ by, ...facts })).toMatchObject({ currency: 'USD' });
});
