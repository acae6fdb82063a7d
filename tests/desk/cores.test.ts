import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

let shop: PartsShop;
beforeAll(async () => {
  shop = await openPartsShop();
});
afterAll(() => shop.close());

test('an old part comes in, goes to the supplier, and is credited or refused', async () => {
  const { desk, by, jobFor, shelve } = shop;
  const supplier = await desk.parts.addSupplier({ by, name: 'Ardent Wholesale' });
  const { id: partId } = await desk.parts.add({
    by,
    number: 'STARTER 1',
    description: 'Starter motor, rebuilt',
    price: 9_000,
    coreCharge: 2_500,
    supplier: 'Ardent Wholesale',
  });
  const jobId = await jobFor([[await shelve('OTHER', 1_000), 1_000]]);
  expect(await desk.parts.cores({})).toMatchObject([
    { coreCharge: 2_500, supplierId: supplier.id, here: 0, away: [], events: [] },
  ]);
  await desk.parts.takeInCore({ by, partId, quantity: 3_000, jobId });
  const back = { by, partId, supplierId: supplier.id };
  await expect(
    desk.parts.sendCoreBack({ ...back, quantity: 4_000, expected: 8_000 }),
  ).rejects.toMatchObject({ code: 'MORE_THAN_HERE', data: { here: 3_000 } });
  const sent = await desk.parts.sendCoreBack({ ...back, quantity: 2_000, expected: 5_000 });
  expect(sent).toMatchObject({ here: 1_000, away: [{ quantity: 2_000, expected: 5_000 }] });
  const settle = (outcome: 'credited' | 'refused', quantity: number, amount = 0) =>
    desk.parts.settleCore({ ...back, outcome, quantity, amount });
  await settle('credited', 1_000, 2_400);
  await expect(settle('refused', 2_000)).rejects.toMatchObject({
    code: 'MORE_THAN_AWAY',
    data: { away: 1_000 },
  });
  const after = await settle('refused', 1_000, 999);
  expect(after).toMatchObject({ here: 1_000, away: [], credited: 2_400 });
  expect(after.events.map(({ kind, amount }) => [kind, amount])).toEqual([
    ['refused', 0],
    ['credited', 2_400],
    ['sent-back', 5_000],
    ['taken-in', 0],
  ]);
});
