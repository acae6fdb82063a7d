import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  carriageOn,
  inPacks,
  orderQuantity,
  positionOf,
  shortOfMinimum,
} from './order-quantity.ts';

test('a shelf at its reorder point is filled above it, in whole packs', () => {
  const cases: [position: number, point: number, pack: number, quantity: number][] = [
    [4_000, 4_000, 1_000, 1_000],
    [4_001, 4_000, 1_000, 0],
    [1_000, 4_000, 1_000, 4_000],
    [1_000, 4_000, 10_000, 10_000],
    [-6_000, 4_000, 10_000, 20_000],
    [0, 0, 1_000, 0],
    [-2_000, 0, 1_000, 2_000],
    [-2_000, 0, 5_000, 5_000],
  ];
  for (const [position, point, pack, quantity] of cases)
    expect([position, point, pack, orderQuantity(position, point, pack)]).toEqual([
      position,
      point,
      pack,
      quantity,
    ]);
});

test('what is ordered is whole packs, fills the shelf, and is not a pack too many', () => {
  const quantity = fc.integer({ min: -1_000_000, max: 1_000_000 });
  const some = fc.integer({ min: 0, max: 1_000_000 });
  fc.assert(
    fc.property(quantity, some, fc.integer({ min: 1, max: 50_000 }), (position, point, pack) => {
      const ordered = orderQuantity(position, point, pack);
      const enough = (after: number) => (point > 0 ? after > point : after >= 0);
      expect(ordered % pack).toBe(0);
      expect(enough(position + ordered)).toBe(true);
      if (ordered > 0) expect(enough(position + ordered - pack)).toBe(false);
    }),
  );
});

test('what is promised and missing counts against what is there and ordered', () => {
  expect(positionOf({ available: 3_000, onOrder: 2_000, missing: 6_000 })).toBe(-1_000);
  expect(inPacks(10_001, 5_000)).toBe(15_000);
});

test('carriage is free from its limit on, and a minimum is reached or missed by so much', () => {
  const terms = { carriage: 950, freeCarriageFrom: 20_000, minimumOrder: 5_000 };
  expect([19_999, 20_000].map((goods) => carriageOn(terms, goods))).toEqual([950, 0]);
  expect(carriageOn({ carriage: 950, freeCarriageFrom: null }, 90_000_000)).toBe(950);
  expect([0, 4_999, 5_000].map((goods) => shortOfMinimum(terms, goods))).toEqual([5_000, 1, 0]);
});
