import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airPressure } from './atmosphere.ts';
import { crankingPressure } from './cranking.ts';

const altitude = fc.double({ min: -1000, max: 11_000, noNaN: true });

describe('airPressure', () => {
  it('falls with the altitude', () => {
    fc.assert(
      fc.property(altitude, altitude, (a, b) => {
        expect(airPressure(Math.max(a, b))).toBeLessThanOrEqual(airPressure(Math.min(a, b)));
      }),
    );
  });

  it('refuses altitudes beyond its layer', () => {
    expect(airPressure(11_000)).toBeGreaterThan(0);
    expect(() => airPressure(11_001)).toThrow(RangeError);
    expect(() => airPressure(-1001)).toThrow(RangeError);
    expect(() => airPressure(Number.NaN)).toThrow(RangeError);
  });
});

describe('crankingPressure', () => {
  it('is gauge pressure: without loss of heat or gain, ratio − 1 times the air', () => {
    expect(crankingPressure({ compressionRatio: 8, altitude: 0, exponent: 1 })).toBeCloseTo(
      7 * 101.325,
      9,
    );
  });

  it('falls with the altitude in proportion to the air, and rises with ratio and exponent', () => {
    const ratio = fc.double({ min: 2, max: 15, noNaN: true });
    fc.assert(
      fc.property(ratio, altitude, (compressionRatio, metres) => {
        const there = crankingPressure({ compressionRatio, altitude: metres });
        const atSea = crankingPressure({ compressionRatio, altitude: 0 });
        expect(there / atSea).toBeCloseTo(airPressure(metres) / 101.325, 9);
        expect(
          crankingPressure({ compressionRatio: compressionRatio + 1, altitude: metres }),
        ).toBeGreaterThan(there);
        expect(
          crankingPressure({ compressionRatio, altitude: metres, exponent: 1.3 }),
        ).toBeGreaterThan(there);
      }),
    );
  });

  it('refuses what makes no sense', () => {
    for (const compressionRatio of [1, 0, -8, 31, Number.NaN]) {
      expect(() => crankingPressure({ compressionRatio, altitude: 0 })).toThrow(RangeError);
    }
    expect(crankingPressure({ compressionRatio: 30, altitude: 0 })).toBeGreaterThan(5000);
    expect(() => crankingPressure({ compressionRatio: 8, altitude: 12_000 })).toThrow(RangeError);
    expect(() => crankingPressure({ compressionRatio: 8, altitude: 0, exponent: 0.9 })).toThrow(
      RangeError,
    );
    expect(() => crankingPressure({ compressionRatio: 8, altitude: 0, exponent: 2 })).toThrow(
      RangeError,
    );
  });
});
