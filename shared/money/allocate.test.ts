import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allocate } from './allocate.ts';

test.each([
  [100, [1, 1, 1], [34, 33, 33]],
  [1, [1, 1_000], [0, 1]],
  [5, [0, 3, 0, 7], [0, 2, 0, 3]],
  [-100, [1, 1, 1], [-34, -33, -33]],
  [0, [2, 3], [0, 0]],
])('%i by %j is %j', (amount, weights, shares) => {
  expect(allocate(amount, weights)).toEqual(shares);
});

test('nothing to share by, and weights that are none, are refused', () => {
  expect(() => allocate(100, [])).toThrow(RangeError);
  expect(() => allocate(100, [0, 0])).toThrow(RangeError);
  expect(() => allocate(100, [1, -1])).toThrow(RangeError);
  expect(() => allocate(100, [0.5])).toThrow(RangeError);
  expect(() => allocate(0.5, [1])).toThrow(RangeError);
});

const weighted = [
  fc.integer({ min: -(10 ** 12), max: 10 ** 12 }),
  fc
    .array(fc.nat({ max: 10 ** 9 }), { minLength: 1, maxLength: 30 })
    .filter((weights) => weights.some((weight) => weight > 0)),
] as const;

test('no cent is lost or made', () => {
  fc.assert(
    fc.property(...weighted, (amount, weights) => {
      expect(allocate(amount, weights).reduce((sum, share) => sum + share, 0)).toBe(amount);
    }),
  );
});

test('each share is the exact one rounded down or up; a weight of zero gets nothing', () => {
  fc.assert(
    fc.property(...weighted, (amount, weights) => {
      const whole = BigInt(weights.reduce((sum, weight) => sum + weight, 0));
      for (const [index, share] of allocate(amount, weights).entries()) {
        const weight = BigInt(weights[index] ?? 0);
        const off = BigInt(share) * whole - BigInt(amount) * weight;
        expect((off < 0n ? -off : off) < whole).toBe(true);
        if (weight === 0n) expect(share).toBe(0);
      }
    }),
  );
});
