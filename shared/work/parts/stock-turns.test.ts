import fc from 'fast-check';
import { expect, test } from 'vitest';
import { averageWorth, daysOfStock, turnsPerYear } from './stock-turns.ts';

test('each worth counts as long as it lasted', () => {
  const moved = [
    { at: -50, worth: 1_000 },
    { at: 25, worth: 1_000 },
    { at: 75, worth: -2_000 },
    { at: 500, worth: 9_000 },
  ];
  // A quarter of the time 1,000, a half 2,000, a quarter nothing.
  expect(averageWorth(moved, { from: 0, until: 100 })).toBe(1_250);
  expect(() => averageWorth(moved, { from: 100, until: 100 })).toThrow(RangeError);
});

test('the average of parts is the average of the whole, but for a minor unit each', () => {
  const shelf = fc.array(
    fc.record({
      at: fc.integer({ min: -100, max: 1_100 }),
      worth: fc.integer({ min: -500, max: 500 }),
    }),
    { maxLength: 12 },
  );
  const span = { from: 0, until: 1_000 };
  const inOrder = (moved: { at: number; worth: number }[]) => moved.toSorted((a, b) => a.at - b.at);
  fc.assert(
    fc.property(shelf, shelf, (one, other) => {
      const apart = averageWorth(inOrder(one), span) + averageWorth(inOrder(other), span);
      expect(Math.abs(averageWorth(inOrder([...one, ...other]), span) - apart)).toBeLessThanOrEqual(
        1,
      );
    }),
  );
});

test('turns and days of stock', () => {
  // 500 used of 1,000 in half a year: once a year, and the stock lasts a year.
  expect(turnsPerYear(50_000, 100_000, 183)).toBe(1_000);
  expect(turnsPerYear(100_000, 100_000, 365)).toBe(1_000);
  expect(turnsPerYear(1_000, 300, 365)).toBe(3_330);
  expect(daysOfStock(50_000, 100_000, 183)).toBe(366);
  expect(turnsPerYear(100, 0, 365)).toBeNull();
  expect(daysOfStock(0, 100, 365)).toBeNull();
});
