import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitLine } from './wear-trend.ts';

describe('fitLine', () => {
  it('finds the line that the points lie on', () => {
    const coefficient = fc.integer({ min: -1000, max: 1000 });
    fc.assert(
      fc.property(
        coefficient,
        coefficient,
        fc.uniqueArray(fc.integer({ min: -500, max: 500 }), { minLength: 3, maxLength: 20 }),
        (slope, intercept, xs) => {
          const line = fitLine(xs.map((x) => ({ x, y: slope * x + intercept })));
          expect(line.slope).toBeCloseTo(slope, 8);
          expect(line.intercept).toBeCloseTo(intercept, 6);
          expect(line.residualSd).toBeCloseTo(0, 6);
        },
      ),
    );
  });

  it('keeps its digits on large numbers with small differences', () => {
    const at = 1e8;
    const line = fitLine([0, 1, 2, 3].map((x) => ({ x: at + x, y: at + 2 * x })));
    expect(line.slope).toBe(2);
  });

  it('shows no scatter for two points', () => {
    const line = fitLine([
      { x: 0, y: 68 },
      { x: 100, y: 68.02 },
    ]);
    expect(line.slope).toBeCloseTo(0.0002, 12);
    expect(line.residualSd).toBe(0);
  });

  it('divides the scatter by n − 2', () => {
    const { residualSd } = fitLine([
      { x: 0, y: 1 },
      { x: 1, y: -1 },
      { x: 2, y: -1 },
      { x: 3, y: 1 },
    ]);
    expect(residualSd).toBeCloseTo(Math.sqrt(4 / 2), 14);
  });

  it('refuses fewer than two times, and what is no number', () => {
    expect(() => fitLine([])).toThrow(RangeError);
    expect(() => fitLine([{ x: 1, y: 1 }])).toThrow('two different times');
    expect(() => fitLine([1, 2].map((y) => ({ x: 1, y })))).toThrow(RangeError);
    expect(() => fitLine([1, Number.NaN].map((y, x) => ({ x, y })))).toThrow(RangeError);
    expect(() => fitLine([1, Number.POSITIVE_INFINITY].map((x) => ({ x, y: 1 })))).toThrow(
      RangeError,
    );
  });
});
