import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { along, scaleFor } from './plot-scale.ts';

describe('the scale of a plot', () => {
  it('holds every value and has a few round ticks within', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -100_000, max: 100_000 }), { minLength: 1, maxLength: 12 }),
        (whole) => {
          const values = whole.map((each) => each / 1000);
          const scale = scaleFor(values, 5, 0.01);
          for (const value of values) {
            expect(value).toBeGreaterThan(scale.from);
            expect(value).toBeLessThan(scale.to);
            const at = along(scale, value, 0, 100);
            expect(at).toBeGreaterThanOrEqual(0);
            expect(at).toBeLessThanOrEqual(100);
          }
          expect(scale.ticks.length).toBeGreaterThanOrEqual(2);
          expect(scale.ticks.length).toBeLessThanOrEqual(8);
        },
      ),
    );
  });

  it('counts in ones, twos and fives', () => {
    expect(scaleFor([0, 10], 5, 1).ticks).toEqual([0, 5, 10]);
    expect(scaleFor([120, 520], 5, 1).ticks).toEqual([100, 200, 300, 400, 500]);
  });
});
