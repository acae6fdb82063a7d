import fc from 'fast-check';
import { expect, test } from 'vitest';
import { openPartsShop } from './parts-shop.ts';

/** Orders of any size that come in any portions, at any price: the stock knows it all, and nothing twice. */

const PORTION = fc.record({
  quantity: fc.integer({ min: 1, max: 4_000 }),
  unitCost: fc.integer({ min: 0, max: 5_000 }),
  keepMore: fc.boolean(),
});
const ORDER = fc.record({
  quantity: fc.integer({ min: 1, max: 6_000 }),
  portions: fc.array(PORTION, { maxLength: 4 }),
  givenUp: fc.boolean(),
});
const ORDERS = 15;

test('what is on order and on the shelf is what a plain sum of the orders gives', async () => {
  const shop = await openPartsShop();
  const { desk, by, shelve, sums } = shop;
  const partId = await shelve('SEQ 1');
  const { id: supplierId } = await desk.parts.addSupplier({ by, name: 'Ardent Wholesale' });
  const expected = { onHand: 0, onOrder: 0, worth: 0 };
  const numbers: string[] = [];
  for (const { quantity, portions, givenUp } of fc.sample(ORDER, { numRuns: ORDERS, seed: 4711 })) {
    const order = await desk.parts.placeOrder({
      by,
      supplierId,
      lines: [{ partId, quantity, unitCost: 100 }],
    });
    numbers.push(order.number);
    const lineId = order.items[0]?.id ?? '';
    let owed = quantity;
    for (const { keepMore, ...came } of portions) {
      const receive = desk.parts.receive({
        by,
        orderId: order.id,
        lines: [{ lineId, ...came }],
        keepMore,
      });
      if (came.quantity > owed && !keepMore) {
        await expect(receive).rejects.toMatchObject({ code: 'MORE_THAN_ORDERED', data: { owed } });
        continue;
      }
      await receive;
      owed = Math.max(0, owed - came.quantity);
      expected.onHand += came.quantity;
      // Whole cents, halves up.
      expected.worth += Math.floor((came.unitCost * came.quantity) / 1000 + 0.5);
    }
    if (givenUp && owed > 0) {
      await desk.parts.closeShort({ by, orderId: order.id, reason: 'Sold out' });
      owed = 0;
    }
    expected.onOrder += owed;
    expect((await desk.parts.order({ id: order.id })).items[0]?.owed).toBe(owed);
    expect(await sums(partId)).toEqual([expected.onHand, 0, expected.onOrder, expected.worth]);
  }
  // Without gaps, whatever was refused in between.
  expect(numbers).toEqual(numbers.map((_, place) => `P-${String(place + 1).padStart(6, '0')}`));
  const toCome = await desk.parts.toCome({});
  expect(toCome.reduce((sum, { owed }) => sum + owed, 0)).toBe(expected.onOrder);
  shop.close();
}, 60_000);
