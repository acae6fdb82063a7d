import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fuelMix } from './fuel-mix.ts';
import { resistanceAt20 } from './resistance.ts';
import { ringGap } from './ring-gap.ts';
import { wrenchSetting } from './wrench.ts';

/** The one-line formulas of the bench. Their published values are in tests/standards. */

describe('wrenchSetting', () => {
  const wrench = { torque: 80, wrench: 400, extension: 50 };

  it('is less than the torque straight out, the torque square to it, more folded back', () => {
    expect(wrenchSetting(wrench)).toBeCloseTo(71.111, 3);
    expect(wrenchSetting({ ...wrench, angle: 90 })).toBe(80);
    expect(wrenchSetting({ ...wrench, angle: -90 })).toBe(80);
    expect(wrenchSetting({ ...wrench, angle: 180 })).toBeCloseTo(91.429, 3);
    expect(wrenchSetting({ ...wrench, extension: 0 })).toBe(80);
  });

  it('rises with the angle', () => {
    const angle = fc.double({ min: 0, max: 180, noNaN: true });
    fc.assert(
      fc.property(angle, angle, (a, b) => {
        expect(wrenchSetting({ ...wrench, angle: Math.min(a, b) })).toBeLessThanOrEqual(
          wrenchSetting({ ...wrench, angle: Math.max(a, b) }) + 1e-9,
        );
      }),
    );
  });

  it('refuses what makes no sense', () => {
    expect(() => wrenchSetting({ ...wrench, torque: -1 })).toThrow(RangeError);
    expect(() => wrenchSetting({ ...wrench, wrench: 0 })).toThrow(RangeError);
    expect(() => wrenchSetting({ ...wrench, extension: -50 })).toThrow(RangeError);
    expect(() => wrenchSetting({ ...wrench, angle: 270 })).toThrow(RangeError);
    expect(() => wrenchSetting({ ...wrench, angle: Number.NaN })).toThrow(RangeError);
    expect(() => wrenchSetting({ ...wrench, extension: 400, angle: 180 })).toThrow('no lever');
  });
});

describe('resistanceAt20', () => {
  it('leaves a winding at 20 °C as it is, and lowers a warm one', () => {
    expect(resistanceAt20({ resistance: 0.8, temperature: 20 })).toBe(0.8);
    expect(resistanceAt20({ resistance: 0.8, temperature: 60 })).toBeLessThan(0.8);
    expect(resistanceAt20({ resistance: 0.8, temperature: 0 })).toBeGreaterThan(0.8);
  });

  it('refuses what makes no sense', () => {
    expect(() => resistanceAt20({ resistance: -1, temperature: 20 })).toThrow(RangeError);
    expect(() => resistanceAt20({ resistance: 1, temperature: -60 })).toThrow(RangeError);
    expect(() => resistanceAt20({ resistance: 1, temperature: 201 })).toThrow(RangeError);
    expect(() => resistanceAt20({ resistance: Number.NaN, temperature: 20 })).toThrow(RangeError);
  });
});

describe('fuelMix', () => {
  it('is a share of the fuel', () => {
    expect(fuelMix({ fuel: 5000, ratio: 50 })).toBe(100);
    expect(fuelMix({ fuel: 0, ratio: 50 })).toBe(0);
  });

  it('refuses what makes no sense', () => {
    expect(() => fuelMix({ fuel: -1, ratio: 50 })).toThrow(RangeError);
    expect(() => fuelMix({ fuel: 1, ratio: 0 })).toThrow(RangeError);
    expect(() => fuelMix({ fuel: 1, ratio: 1 })).toThrow('50 for 50:1');
    expect(() => fuelMix({ fuel: 1, ratio: Number.NaN })).toThrow(RangeError);
    expect(() => fuelMix({ fuel: Number.POSITIVE_INFINITY, ratio: 50 })).toThrow(RangeError);
  });
});

describe('ringGap', () => {
  it('is a share of the bore', () => {
    expect(ringGap({ bore: 68, perBore: 0.004 })).toBe(0.272);
  });

  it('refuses what makes no sense', () => {
    expect(() => ringGap({ bore: -68, perBore: 0.004 })).toThrow(RangeError);
    expect(() => ringGap({ bore: 68, perBore: -0.004 })).toThrow(RangeError);
    expect(() => ringGap({ bore: 68, perBore: 1 })).toThrow('no gap');
    expect(() => ringGap({ bore: 68, perBore: 4 })).toThrow('no gap');
    expect(() => ringGap({ bore: Number.NaN, perBore: 0.004 })).toThrow(RangeError);
  });
});
