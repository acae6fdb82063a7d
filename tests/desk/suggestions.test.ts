import { afterAll, beforeAll, expect, test } from 'vitest';
import type { PartId } from '../../shared/contract/ids.ts';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

/** What should be ordered, and the figures that say so. */

let shop: PartsShop;
beforeAll(async () => {
  shop = await openPartsShop();
  const { desk, by } = shop;
  await desk.parts.addSupplier({
    by,
    name: 'Ardent Wholesale',
    leadDays: 7,
    carriage: 950,
    minimumOrder: 100_000,
  });
});
afterAll(() => shop.close());

type More = Partial<Parameters<PartsShop['desk']['parts']['add']>[0]>;

const add = async (number: string, more: More = {}): Promise<PartId> => {
  const { desk, by } = shop;
  const supplier = 'ardent wholesale';
  const part = { by, number, description: number, price: 2_000, cost: 1_000, supplier, ...more };
  return (await desk.parts.add(part)).id;
};

const receive = (partId: PartId, quantity: number) =>
  shop.desk.parts.move({ by: shop.by, partId, kind: 'received', quantity });

const suggested = async (number: string) => {
  const orders = await shop.desk.parts.suggestions({});
  return orders.flatMap(({ lines }) => lines).find(({ part }) => part.number === number);
};

test('a shelf at its typed reorder point is filled in whole packs; what is on order counts', async () => {
  const { desk, by } = shop;
  const part = await add('S-1', { reorderPoint: 4_000, packSize: 5_000 });
  await receive(part, 4_000);
  expect(await suggested('S-1')).toMatchObject({
    available: 4_000,
    onOrder: 0,
    typedPoint: 4_000,
    point: 4_000,
    usage: null,
    quantity: 5_000,
    amount: 5_000,
    special: false,
  });
  const [supplier] = await desk.parts.suppliers({});
  if (supplier === undefined) throw new Error('A supplier was added.');
  await desk.parts.placeOrder({
    by,
    supplierId: supplier.id,
    belowMinimum: true,
    lines: [{ partId: part, quantity: 5_000, unitCost: 1_000 }],
  });
  expect(await suggested('S-1')).toBeUndefined();
});

test('what jobs miss is suggested with their names, and less what is on order for them', async () => {
  const { desk, by, jobFor } = shop;
  const part = await add('S-2');
  const jobId = await jobFor([[part, 3_000]]);
  const { code } = await desk.counter.job({ id: jobId });
  const [supplier] = await desk.parts.suppliers({});
  if (supplier === undefined) throw new Error('A supplier was added.');
  expect(await suggested('S-2')).toMatchObject({
    special: true,
    missing: 3_000,
    quantity: 3_000,
    jobs: [{ jobId, jobCode: code, missing: 3_000, onOrder: 0 }],
  });
  await desk.parts.placeOrder({
    by,
    supplierId: supplier.id,
    belowMinimum: true,
    lines: [{ partId: part, quantity: 1_000, unitCost: 1_000, jobId }],
  });
  expect(await suggested('S-2')).toMatchObject({
    quantity: 2_000,
    jobs: [{ missing: 3_000, onOrder: 1_000 }],
  });
});

test('what is bought in a part’s place is suggested, and what is left of the old one counts', async () => {
  const { desk, by } = shop;
  const old = await add('S-3', { reorderPoint: 2_000 });
  const current = await add('S-3A');
  await receive(old, 1_000);
  await desk.parts.supersede({ by, partId: old, supersededBy: current });
  expect(await suggested('S-3')).toBeUndefined();
  expect(await suggested('S-3A')).toMatchObject({
    available: 1_000,
    point: 2_000,
    quantity: 2_000,
  });
});

test('the shop’s own usage raises the reorder point, with its figures', async () => {
  const { desk, by, jobFor, setClock } = shop;
  setClock('2026-03-10T15:00:00.000Z');
  const part = await add('S-4', { reorderPoint: 1_000 });
  await receive(part, 20_000);
  const jobId = await jobFor([[part, 20_000]]);
  for (let week = 0; week < 10; week += 1) {
    const day = new Date(Date.parse('2026-03-11T15:00:00.000Z') + week * 7 * 86_400_000);
    setClock(day.toISOString());
    // Two one week, none the next: a mean of one a week with a spread of 1.054.
    const quantity = week % 2 === 0 ? 2_000 : 0;
    if (quantity > 0) await desk.parts.move({ by, partId: part, kind: 'issued', quantity, jobId });
  }
  setClock('2026-05-19T15:30:00.000Z');
  await desk.counter.moveJob({ by, jobId, to: 'stopped', note: 'Enough for the test' });
  await desk.parts.move({
    by,
    partId: part,
    kind: 'counted',
    quantity: 2_000,
    reason: 'Flood in the cellar',
  });
  expect(await suggested('S-4')).toMatchObject({
    available: 2_000,
    typedPoint: 1_000,
    usage: {
      weeks: 10,
      used: 10_000,
      perWeek: 1_000,
      spread: 1_054,
      leadDays: 7,
      duringLead: 1_000,
      // 1.645 × 1.054
      safety: 1_734,
      point: 3_000,
      // √(2 × 52.14 × 5.00 ÷ 2.50) = 14.4
      economicOrder: 14_000,
    },
    point: 3_000,
    quantity: 2_000,
  });
});

test('orders are by supplier, with carriage and what is short of the minimum; unknown ones come last', async () => {
  await add('S-5', { reorderPoint: 1_000, supplier: 'Nobody Known' });
  const orders = await shop.desk.parts.suggestions({});
  expect(orders.map(({ name }) => name)).toEqual(['Ardent Wholesale', 'Nobody Known']);
  const [known, unknown] = orders;
  expect(known).toMatchObject({ carriage: 950, shortOfMinimum: 100_000 - (known?.goods ?? 0) });
  expect(unknown).toMatchObject({ supplier: null, carriage: 0, shortOfMinimum: 0 });
});

test('the number and price of the supplier’s own stand on the suggestion', async () => {
  const { desk, by } = shop;
  const part = await add('S-6', { reorderPoint: 1_000 });
  await desk.parts.addNumber({
    by,
    partId: part,
    kind: 'supplier',
    whose: 'Ardent Wholesale',
    number: 'AW 6600',
  });
  expect(await suggested('S-6')).toMatchObject({ supplierNumber: 'AW 6600', unitCost: 1_000 });
});
