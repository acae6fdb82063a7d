import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeSetTorque, settingsWithin, torqueGiven, type WrenchError } from './set-torque.ts';

const FOUR: WrenchError = { kind: 'share', share: 0.04 };

describe('a torque that is set', () => {
  it('is within at the aim of its band, on a wrench of the common class', () => {
    expect(judgeSetTorque({ setting: 13, low: 12, high: 14, error: FOUR }).verdict).toBe('within');
    expect(judgeSetTorque({ setting: 26, low: 24, high: 28, error: FOUR }).verdict).toBe('within');
  });

  it('is too close where the wrench may leave the band, and outside where the setting does', () => {
    const at = (setting: number) => judgeSetTorque({ setting, low: 12, high: 14, error: FOUR });
    expect(at(12.4).verdict).toBe('too-close');
    expect(at(13.5).verdict).toBe('too-close');
    expect(at(14.1).verdict).toBe('outside');
    expect(at(11.9).verdict).toBe('outside');
    expect(at(13).conformance).toBeGreaterThan(at(13.6).conformance);
  });

  it('says what part of the band is left, and that nothing is', () => {
    const left = settingsWithin({ low: 12, high: 14 }, FOUR);
    expect(left?.low).toBeCloseTo(12.48, 9);
    expect(left?.high).toBeCloseTo(13.44, 9);
    expect(settingsWithin({ low: 24, high: 25 }, FOUR)).toBeNull();
    expect(settingsWithin({ low: 12, high: 14 }, { kind: 'amount', amount: 0.8 })).toEqual({
      low: 12.8,
      high: 13.2,
    });
    expect(settingsWithin({ low: null, high: 14 }, FOUR)).toMatchObject({ low: null });
    expect(settingsWithin({ low: null, high: null }, FOUR)).toBeNull();
  });

  it('of a single figure is as near as the wrench can tell', () => {
    const at = (setting: number) => judgeSetTorque({ setting, low: 26, high: 26, error: FOUR });
    expect(at(26).verdict).toBe('within');
    expect(at(25.5).verdict).toBe('within');
    expect(at(24).verdict).toBe('outside');
  });

  it('is within exactly where the settings that are left say so', () => {
    const share = fc.double({ min: 0, max: 0.2, noNaN: true });
    const size = fc.double({ min: 1, max: 200, noNaN: true });
    const width = fc.double({ min: 0.01, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(
        share,
        size,
        width,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (a, low, w, x) => {
          const high = low * (1 + w);
          const setting = low * 0.9 + x * (high * 1.1 - low * 0.9);
          const error = { kind: 'share', share: a } as const;
          const left = settingsWithin({ low, high }, error);
          const inside =
            left?.low != null &&
            left.high !== null &&
            setting >= left.low * (1 - 1e-9) &&
            setting <= left.high * (1 + 1e-9);
          expect(judgeSetTorque({ setting, low, high, error }).verdict === 'within').toBe(inside);
        },
      ),
    );
  });

  it('on a wrench that is off by nothing is the torque itself', () => {
    expect(torqueGiven(20, { kind: 'share', share: 0 })).toEqual({ least: 20, most: 20 });
    expect(() => torqueGiven(20, { kind: 'share', share: 1 })).toThrow(RangeError);
    expect(() => torqueGiven(20, { kind: 'amount', amount: -1 })).toThrow(RangeError);
    expect(() => judgeSetTorque({ setting: 20, low: null, high: null, error: FOUR })).toThrow(
      RangeError,
    );
  });
});
