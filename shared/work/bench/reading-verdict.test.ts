import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acceptedBand, limitsAt, verdictOn } from './reading-verdict.ts';

const bore = { lowBase: 68, highBase: 68.015, aimBase: null, wearLimitBase: 68.075 };
const crankpin = { lowBase: 29.96, highBase: 29.973, aimBase: null, wearLimitBase: 29.92 };

describe('what a reading is held against', () => {
  test('a bore wears up and a shaft wears down, to their wear limits', () => {
    expect(acceptedBand('bore', limitsAt(bore, 1), 'as-received')).toEqual({
      low: 68,
      high: 68.075,
    });
    expect(acceptedBand('crankpin', limitsAt(crankpin, 1), 'final')).toEqual({
      low: 29.92,
      high: 29.973,
    });
  });

  test('what comes from machining has to meet the limits of a new part', () => {
    expect(acceptedBand('bore', limitsAt(bore, 1), 'after-machining')).toEqual({
      low: 68,
      high: 68.015,
    });
  });

  test('a wear limit alone is a high limit', () => {
    const play = { lowBase: null, highBase: 0.3, aimBase: null, wearLimitBase: 0.5 };
    expect(acceptedBand('crankshaft-end-play', limitsAt(play, 1), 'final')).toEqual({
      low: null,
      high: 0.5,
    });
  });

  test('a torque stage has its share of every limit', () => {
    const torque = { lowBase: 22, highBase: 24, aimBase: 23, wearLimitBase: null };
    expect(limitsAt(torque, 0.5)).toEqual({ low: 11, high: 12, aim: 11.5, wearLimit: null });
  });

  test('without limits there is no verdict', () => {
    expect(limitsAt(null, 1)).toEqual({ low: null, high: null, aim: null, wearLimit: null });
    expect(verdictOn(1, { low: null, high: null }, 0.1)).toEqual({
      verdict: 'no-band',
      conformance: null,
    });
  });

  test('a worn part inside its wear limit is within, beyond it outside', () => {
    const held = acceptedBand('bore', limitsAt(bore, 1), 'as-received');
    expect(verdictOn(68.05, held, 0.006).verdict).toBe('within');
    expect(verdictOn(68.09, held, 0.006).verdict).toBe('outside');
  });
});

test('never within once the band shrunk by the uncertainty is left, never outside inside the widened one', () => {
  const size = fc.double({ min: 0.001, max: 100, noNaN: true });
  const uncertain = fc.double({ min: 0, max: 0.5, noNaN: true });
  fc.assert(
    fc.property(
      size,
      size,
      size,
      uncertain,
      fc.constantFrom('low', 'high', 'both'),
      (value, low, width, uncertainty, sides) => {
        const band = {
          low: sides === 'high' ? null : low,
          high: sides === 'low' ? null : low + width,
        };
        const { verdict } = verdictOn(value, band, uncertainty);
        // Room for the last binary digit only.
        const dust = 1e-9;
        const inset = Math.min(
          band.low === null ? Number.POSITIVE_INFINITY : value - band.low,
          band.high === null ? Number.POSITIVE_INFINITY : band.high - value,
        );
        if (inset < uncertainty - dust) expect(verdict).not.toBe('within');
        if (inset > -uncertainty + dust) expect(verdict).not.toBe('outside');
        if (inset > uncertainty + dust) expect(verdict).toBe('within');
      },
    ),
  );
});
