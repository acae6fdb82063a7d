import fc from 'fast-check';
import { expect, test } from 'vitest';
import { settle } from './settle.ts';

test('pays the oldest first, and frees what a bill has too much', () => {
  expect(settle([500, 300], 600)).toEqual([500, 100]);
  expect(settle([-200, 300], 0)).toEqual([-200, 200]);
  expect(settle([300, -200], 50)).toEqual([250, -200]);
  expect(settle([300], 0)).toEqual([0]);
});

test('sets no more against bills than there is, and leaves either nothing open or nothing free', () => {
  const amounts = fc.array(fc.integer({ min: -100_000, max: 100_000 }), { maxLength: 8 });
  fc.assert(
    fc.property(amounts, fc.nat(200_000), (open, free) => {
      const set = settle(open, free);
      const freeAfter = free - set.reduce((sum, amount) => sum + amount, 0);
      const openAfter = open.map((amount, index) => amount - (set[index] ?? 0));
      expect(freeAfter).toBeGreaterThanOrEqual(0);
      for (const amount of openAfter) expect(amount).toBeGreaterThanOrEqual(0);
      expect(freeAfter === 0 || openAfter.every((amount) => amount === 0)).toBe(true);
      // Nothing is lost: what is owed less what is free stays as it was.
      const owed = (list: number[]) => list.reduce((sum, amount) => sum + amount, 0);
      expect(owed(openAfter) - freeAfter).toBe(owed(open) - free);
    }),
  );
});
