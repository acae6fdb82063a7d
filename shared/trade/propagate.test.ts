import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { propagate } from './propagate.ts';
import { clearance } from './uncertainty.ts';

describe('a figure from measured ones', () => {
  test('of a product: relative uncertainties add as squares (GUM 5.1.6, from memory)', () => {
    const area = propagate(
      [
        { value: 20, uncertainty: 0.2 },
        { value: 10, uncertainty: 0.1 },
      ],
      ([a = 0, b = 0]) => a * b,
    );
    expect(area.value).toBe(200);
    expect(area.uncertainty).toBeCloseTo(200 * Math.hypot(0.01, 0.01), 9);
  });

  test('of a square: the relative uncertainty counts twice', () => {
    const disc = propagate([{ value: 68, uncertainty: 0.01 }], ([d = 0]) => d ** 2);
    expect(disc.uncertainty / disc.value).toBeCloseTo((2 * 0.01) / 68, 9);
  });

  test('of a difference is a clearance', () => {
    const size = fc.record({
      value: fc.double({ min: 1, max: 100, noNaN: true }),
      uncertainty: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(size, size, (outer, inner) => {
        const { value, uncertainty } = propagate([outer, inner], ([a = 0, b = 0]) => a - b);
        const known = clearance(outer, inner);
        expect(value).toBeCloseTo(known.value, 9);
        expect(uncertainty).toBeCloseTo(known.uncertainty, 9);
      }),
    );
  });

  test('what is exact adds nothing', () => {
    expect(propagate([{ value: 3, uncertainty: 0 }], ([x = 0]) => 2 * x)).toEqual({
      value: 6,
      uncertainty: 0,
    });
  });

  test('a negative uncertainty is refused', () => {
    expect(() => propagate([{ value: 1, uncertainty: -1 }], ([x = 0]) => x)).toThrow(RangeError);
  });
});
