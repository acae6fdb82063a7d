import { afterAll, beforeAll, expect, test } from 'vitest';
import { weeklyUsage } from '../../db/queries/parts/usage.ts';
import { stockMovement } from '../../db/schema/index.ts';
import { openTestShop, type TestShop } from './shop.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop();
});
afterAll(() => shop.close());

test('a kit that is opened is used, and its pieces only when they go to a job', async () => {
  const { desk, by, context } = shop;
  const kit = await desk.parts.add({ by, number: 'KIT 1', description: 'Gasket set', price: 900 });
  const piece = await desk.parts.add({
    by,
    number: 'HG 1',
    description: 'Head gasket',
    price: 300,
  });
  const moved = { reason: '', by, worth: 0 };
  context.store.write((store) => {
    for (const [id, partId, kind, quantity, at] of [
      ['m1', kit.id, 'received', 2_000, '2026-01-05T10:00:00.000Z'],
      ['m2', piece.id, 'received', 1_000, '2026-01-05T10:00:00.000Z'],
      ['m3', kit.id, 'kit-opened', -1_000, '2026-01-13T10:00:00.000Z'],
      ['m4', piece.id, 'kit-opened', 1_000, '2026-01-13T10:00:00.000Z'],
      ['m5', piece.id, 'issued', -1_000, '2026-01-14T10:00:00.000Z'],
    ] as const)
      store
        .insert(stockMovement)
        .values({ id, partId, kind, quantity, at, ...moved })
        .run();
  });
  const usage = weeklyUsage(context.store.read, '2026-01-20T10:00:00.000Z');
  expect(usage.get(kit.id)).toEqual([0, 1_000]);
  expect(usage.get(piece.id)).toEqual([1_000, 0]);
});
