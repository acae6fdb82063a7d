import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalBelow, normalBetween } from './normal-distribution.ts';

const deviate = fc.double({ min: -12, max: 12, noNaN: true });

describe('normalBelow', () => {
  // Computed with 40 digits in another language, cut to 15.
  it.each([
    [0, 0.5],
    [1, 0.841344746068543],
    [1.96, 0.97500210485178],
    [-1.6448536269514729, 0.05],
    [-3, 1.34989803163009e-3],
    [3, 0.99865010196837],
    [-5, 2.86651571879194e-7],
    [-8, 6.22096057427178e-16],
  ])('Φ(%d) = %d', (z, expected) => {
    expect(Math.abs(normalBelow(z) / expected - 1)).toBeLessThan(1e-13);
  });

  it('is symmetric, rises, and joins where the method changes', () => {
    fc.assert(
      fc.property(deviate, deviate, (a, b) => {
        expect(normalBelow(a) + normalBelow(-a)).toBeCloseTo(1, 14);
        expect(normalBelow(Math.min(a, b))).toBeLessThanOrEqual(
          normalBelow(Math.max(a, b)) + 1e-15,
        );
      }),
    );
    expect(normalBelow(3 - 1e-12)).toBeCloseTo(normalBelow(3), 13);
    expect(normalBelow(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(normalBelow(Number.POSITIVE_INFINITY)).toBe(1);
  });

  it('keeps its digits between two points far out', () => {
    const far = normalBelow(-8) - normalBelow(-9);
    expect(normalBetween(8, 9)).toBe(far);
    expect(normalBetween(-9, -8)).toBe(far);
    expect(normalBetween(Number.NEGATIVE_INFINITY, 0)).toBe(0.5);
  });

  it('refuses what is not a number, and ends the wrong way round', () => {
    expect(() => normalBelow(Number.NaN)).toThrow(RangeError);
    expect(() => normalBetween(1, 0)).toThrow(RangeError);
  });
});
