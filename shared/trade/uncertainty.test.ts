import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearance, gaugeUncertainty } from './uncertainty.ts';

const amount = fc.double({ min: 0, max: 10, noNaN: true });

describe('gaugeUncertainty', () => {
  it('adds resolution, largest error and repeatability by their squares, twice', () => {
    expect(gaugeUncertainty({ resolution: 0.01, maxError: 0 })).toBeCloseTo(
      0.01 / Math.sqrt(3),
      15,
    );
    expect(gaugeUncertainty({ resolution: 0, maxError: 0.004 })).toBeCloseTo(
      0.008 / Math.sqrt(3),
      15,
    );
    expect(gaugeUncertainty({ resolution: 0, maxError: 0, repeatability: 0.002 })).toBe(0.004);
    // u² = 0.005²/3 + 0.004²/3 + 0.002² = 1.76667e-5
    expect(
      gaugeUncertainty({ resolution: 0.01, maxError: 0.004, repeatability: 0.002 }),
    ).toBeCloseTo(2 * Math.sqrt(1.76666666666667e-5), 14);
  });

  it('grows with each of its parts', () => {
    fc.assert(
      fc.property(amount, amount, amount, amount, (resolution, maxError, repeatability, more) => {
        const plain = gaugeUncertainty({ resolution, maxError, repeatability });
        for (const worse of [
          { resolution: resolution + more, maxError, repeatability },
          { resolution, maxError: maxError + more, repeatability },
          { resolution, maxError, repeatability: repeatability + more },
        ]) {
          expect(gaugeUncertainty(worse)).toBeGreaterThanOrEqual(plain * (1 - 1e-15));
        }
      }),
    );
  });

  it('refuses negative and missing figures', () => {
    expect(() => gaugeUncertainty({ resolution: -0.01, maxError: 0 })).toThrow(RangeError);
    expect(() => gaugeUncertainty({ resolution: 0, maxError: -0.01 })).toThrow(RangeError);
    expect(() => gaugeUncertainty({ resolution: 0, maxError: Number.NaN })).toThrow(RangeError);
    expect(() => gaugeUncertainty({ resolution: 0, maxError: 0, repeatability: -1 })).toThrow(
      RangeError,
    );
  });
});

describe('clearance', () => {
  it('is a difference without dust, and the uncertainties make a right triangle', () => {
    expect(
      clearance({ value: 68.05, uncertainty: 0.003 }, { value: 68.02, uncertainty: 0.004 }),
    ).toEqual({ value: 0.03, uncertainty: 0.005 });
  });

  it('is negative for an interference', () => {
    expect(
      clearance({ value: 14.99, uncertainty: 0 }, { value: 15.01, uncertainty: 0 }).value,
    ).toBe(-0.02);
  });

  it('refuses negative sizes and uncertainties', () => {
    const good = { value: 1, uncertainty: 0 };
    expect(() => clearance({ value: -1, uncertainty: 0 }, good)).toThrow(RangeError);
    expect(() => clearance(good, { value: 1, uncertainty: -1 })).toThrow(RangeError);
    expect(() => clearance(good, { value: Number.NaN, uncertainty: 0 })).toThrow(RangeError);
    expect(() => clearance({ value: 1, uncertainty: Number.POSITIVE_INFINITY }, good)).toThrow(
      RangeError,
    );
  });
});
