import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TIGHTENING_PATTERNS, tighteningOrder, torqueStages } from './torque-sequence.ts';

describe('torqueStages', () => {
  it('are shares of the final torque, without dust', () => {
    expect(torqueStages(23, [0.3, 0.7, 1])).toEqual([6.9, 16.1, 23]);
    expect(torqueStages(17, [1])).toEqual([17]);
  });

  it('rise to the stated torque itself, thirds as well', () => {
    expect(torqueStages(24, [1 / 3, 2 / 3, 1])).toEqual([8, 16, 24]);
    expect(torqueStages(1 / 3, [1])).toEqual([1 / 3]);
    const shares = fc
      .uniqueArray(fc.integer({ min: 1, max: 99 }), { maxLength: 5 })
      .map((parts) => [...parts.toSorted((a, b) => a - b).map((part) => part / 100), 1]);
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1000, noNaN: true }), shares, (final, rising) => {
        const stages = torqueStages(final, rising);
        expect(stages.at(-1)).toBe(final);
        for (const [index, stage] of stages.entries()) {
          expect(stage).toBeCloseTo(final * (rising[index] ?? 0), 8);
          expect(stage).toBeGreaterThan(stages[index - 1] ?? 0);
        }
      }),
    );
  });

  it('refuses shares that do not rise to the whole', () => {
    for (const shares of [[], [0.5], [0.5, 0.5, 1], [0.7, 0.3, 1], [0, 1], [-0.5, 1], [0.5, 1.1]]) {
      expect(() => torqueStages(23, shares)).toThrow(RangeError);
    }
    expect(() => torqueStages(23, [Number.NaN, 1])).toThrow(RangeError);
    expect(() => torqueStages(0, [1])).toThrow(RangeError);
    expect(() => torqueStages(Number.POSITIVE_INFINITY, [1])).toThrow(RangeError);
  });
});

describe('tighteningOrder', () => {
  it('meets each bolt once', () => {
    for (const pattern of TIGHTENING_PATTERNS) {
      for (let count = 1; count <= 64; count += 1) {
        const order = tighteningOrder(count, pattern);
        const numbers = Array.from({ length: count }, (_, index) => index + 1);
        expect(
          order.toSorted((a, b) => a - b),
          `${pattern} ${count}`,
        ).toEqual(numbers);
      }
    }
  });

  it('crosses a ring', () => {
    expect(tighteningOrder(4, 'cross')).toEqual([1, 3, 2, 4]);
    expect(tighteningOrder(5, 'cross')).toEqual([1, 3, 5, 2, 4]);
    expect(tighteningOrder(6, 'cross')).toEqual([1, 4, 2, 5, 3, 6]);
    expect(tighteningOrder(6, 'star')).toEqual(tighteningOrder(6, 'cross'));
  });

  it('goes straight across an even ring at every second step', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 32 }), (half) => {
        const order = tighteningOrder(2 * half, 'cross');
        for (let index = 0; index < order.length; index += 2) {
          expect(Math.abs((order[index + 1] ?? 0) - (order[index] ?? 0))).toBe(half);
        }
      }),
    );
  });

  it('winds outwards from the middle of two rows', () => {
    // Places as they lie on the head: 1 2 3 4 5 above 6 7 8 9 10.
    expect(tighteningOrder(10, 'spiral')).toEqual([3, 8, 9, 4, 2, 7, 10, 5, 1, 6]);
    expect(tighteningOrder(4, 'spiral')).toEqual([1, 3, 4, 2]);
    expect(tighteningOrder(5, 'spiral')).toEqual([2, 5, 3, 1, 4]);
  });

  it('goes outwards along one row', () => {
    expect(tighteningOrder(4, 'in-line')).toEqual([2, 3, 1, 4]);
    expect(tighteningOrder(5, 'in-line')).toEqual([3, 4, 2, 5, 1]);
    expect(tighteningOrder(3, 'in-turn')).toEqual([1, 2, 3]);
  });

  it('refuses what makes no sense', () => {
    for (const count of [0, -4, 2.5, 65, Number.NaN]) {
      expect(() => tighteningOrder(count, 'cross')).toThrow(RangeError);
    }
    // A pattern that isn't one of the list, as it may come from a file.
    expect(() => tighteningOrder(4, 'zigzag' as never)).toThrow('not a pattern');
  });
});
