import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { suspectSlip } from './slip.ts';

describe('suspectSlip', () => {
  const airGap = { low: 0.2, high: 0.4 };

  it('names a slip of ten, of a hundred, of inches and of feet', () => {
    expect(suspectSlip(0.03, airGap)).toEqual({ kind: 'decimal', likely: 0.3 });
    expect(suspectSlip(3, airGap)).toEqual({ kind: 'decimal', likely: 0.3 });
    expect(suspectSlip(0.003, airGap)).toEqual({ kind: 'decimal', likely: 0.3 });
    expect(suspectSlip(30, airGap)).toEqual({ kind: 'decimal', likely: 0.3 });
    expect(suspectSlip(0.012, airGap)).toEqual({ kind: 'inch', likely: 0.3048 });
    expect(suspectSlip(7.62, airGap)).toEqual({ kind: 'inch', likely: 0.3 });
    expect(suspectSlip(204, { low: 16, high: 18 })).toEqual({ kind: 'foot-inch', likely: 17 });
    expect(suspectSlip(17, { low: 190, high: 220 })).toEqual({ kind: 'foot-inch', likely: 204 });
  });

  it('gives what was likely meant to the last digit, without rounding dust', () => {
    expect(suspectSlip(7, { low: 0.06, high: 0.08 })?.likely).toBe(0.07);
    expect(suspectSlip(0.07, { low: 6, high: 8 })?.likely).toBe(7);
    expect(suspectSlip(200, { low: 16, high: 18 })?.likely).toBe(200 / 12);
    expect(suspectSlip(55, { low: 2.1, high: 2.2 })?.likely).toBe(55 / 25.4);
  });

  it('takes a limit that is met but for rounding as met', () => {
    expect(suspectSlip(3, { low: 0.1 + 0.2, high: 0.4 })).toEqual({ kind: 'decimal', likely: 0.3 });
    expect(suspectSlip(0.2999, { low: 0.3, high: 0.4 })).toBeNull();
    expect(suspectSlip(2.999, { low: 0.3, high: 0.4 })).toBeNull();
  });

  it('takes the factor nearest to one where several would do', () => {
    expect(suspectSlip(1, { low: 5, high: 200 })).toEqual({ kind: 'decimal', likely: 10 });
    expect(suspectSlip(1, { low: 11, high: 200 })).toEqual({ kind: 'foot-inch', likely: 12 });
    expect(suspectSlip(1, { low: 13, high: 200 })).toEqual({ kind: 'inch', likely: 25.4 });
    expect(suspectSlip(1, { low: 30, high: 200 })).toEqual({ kind: 'decimal', likely: 100 });
  });

  it('says nothing of a value inside, limits included, or that no slip explains', () => {
    for (const value of [0.2, 0.3, 0.4, 0.5, 0.1, 0.6, 1000, 0, -0.3]) {
      expect(suspectSlip(value, airGap)).toBeNull();
    }
    expect(suspectSlip(0.3, { low: 0.1 + 0.2, high: 0.4 })).toBeNull();
  });

  it('compares negative readings by size, and never turns a sign', () => {
    expect(suspectSlip(-0.3, { low: -0.04, high: -0.02 })).toEqual({
      kind: 'decimal',
      likely: -0.03,
    });
    expect(suspectSlip(0.3, { low: -0.05, high: 0.05 })).toEqual({ kind: 'decimal', likely: 0.03 });
    expect(suspectSlip(-0.03, airGap)).toBeNull();
  });

  it('takes a band with one limit to reach a factor of four', () => {
    expect(suspectSlip(3, { high: 0.8 })).toEqual({ kind: 'decimal', likely: 0.3 });
    expect(suspectSlip(0.9, { high: 0.8 })).toBeNull();
    expect(suspectSlip(8, { low: 60 })).toEqual({ kind: 'decimal', likely: 80 });
    expect(suspectSlip(50, { low: 60 })).toBeNull();
    expect(suspectSlip(0.1, { high: 0.8 })).toBeNull();
    expect(suspectSlip(5, {})).toBeNull();
    expect(suspectSlip(5, { high: 0 })).toBeNull();
    expect(suspectSlip(-5, { low: -0.5 })).toBeNull();
  });

  it('offers only values that lie in the band', () => {
    const positive = fc.double({ min: 1e-4, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(
        positive,
        positive,
        fc.double({ min: 1, max: 3, noNaN: true }),
        (value, low, width) => {
          const high = low * width;
          const slip = suspectSlip(value, { low, high });
          if (slip !== null) {
            expect(value < low || value > high).toBe(true);
            expect(slip.likely).toBeGreaterThanOrEqual(low * (1 - 1e-9));
            expect(slip.likely).toBeLessThanOrEqual(high * (1 + 1e-9));
          }
        },
      ),
    );
  });

  it('refuses what makes no sense', () => {
    expect(() => suspectSlip(Number.NaN, airGap)).toThrow(RangeError);
    expect(() => suspectSlip(Number.POSITIVE_INFINITY, airGap)).toThrow(RangeError);
    expect(() => suspectSlip(1, { low: 0.4, high: 0.2 })).toThrow(RangeError);
    expect(() => suspectSlip(1, { low: Number.NaN })).toThrow(RangeError);
  });
});
