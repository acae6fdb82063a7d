import { describe, expect, it } from 'vitest';
import {
  aim,
  convert,
  judge,
  parseReading,
  suspectSlip,
  tighteningOrder,
  torquePlausibility,
  torqueStages,
} from '../../shared/trade/index.ts';

/** Common practice of the trade, no source. */
describe('common practice, no source', () => {
  it('coil air gap: 0.2 to 0.4 mm, aim 0.3; 0.03 is a slip of ten', () => {
    const airGap = { low: 0.2, high: 0.4 };
    expect(aim(airGap)).toBe(0.3);
    expect(suspectSlip(0.03, airGap)).toEqual({ kind: 'decimal', likely: 0.3 });
    expect(suspectSlip(0.3, airGap)).toBeNull();
    expect(judge({ value: 0.3, ...airGap, uncertainty: 0.02 }).verdict).toBe('within');
  });

  it('R12: gaps of 0.006 to 0.014 in that low-trust pages print are of the same size', () => {
    expect(convert(0.01, 'in', 'mm')).toBe(0.254);
    expect(suspectSlip(convert(0.01, 'in', 'mm'), { low: 0.2, high: 0.4 })).toBeNull();
  });

  it('head bolts M8×1.25 class 8.8: 17 lbf·ft is plausible, 17 lbf·in and 170 lbf·ft are not', () => {
    const bolt = { diameter: 8, pitch: 1.25, propertyClass: '8.8' } as const;
    const verdictOf = (text: string) => {
      const { value, unit } = parseReading(text, 'N·m');
      return torquePlausibility({ ...bolt, torque: convert(value, unit, 'N·m') }).verdict;
    };
    expect(verdictOf('17 lbf·ft')).toBe('plausible');
    expect(verdictOf('17 in-lb')).toBe('low');
    expect(verdictOf('170 ft-lb')).toBe('high');
    expect(verdictOf('23 Nm')).toBe('plausible');
  });

  it('valve lash cold: 0.15 mm intake, 0.20 mm exhaust, each ± 0.02', () => {
    for (const [text, low, high, target] of [
      ['0.15', 0.13, 0.17, 0.15],
      ['0,20', 0.18, 0.22, 0.2],
      ['6 thou', 0.13, 0.17, 0.15],
      ['.008"', 0.18, 0.22, 0.2],
    ] as const) {
      const { value, unit } = parseReading(text, 'mm');
      const lash = convert(value, unit, 'mm');
      expect(aim({ low, high })).toBe(target);
      expect(judge({ value: lash, low, high, uncertainty: 0.01 }).verdict).toBe('within');
    }
  });

  it('a band with one limit has the aim that its source states, and no other', () => {
    expect(aim({ low: 380, aim: 450 })).toBe(450);
    expect(aim({ high: 0.08, aim: 0 })).toBe(0);
    expect(() => aim({ low: 380 })).toThrow(RangeError);
    expect(() => aim({ high: 0.08 })).toThrow(RangeError);
    for (const outside of [0.19, 0.41])
      expect(() => aim({ low: 0.2, high: 0.4, aim: outside })).toThrow(RangeError);
    expect(() => aim({ low: 380, aim: 370 })).toThrow(RangeError);
    expect(aim({ low: 0.2, high: 0.4, aim: 0.4 })).toBe(0.4);
  });

  it('two rows and one row: from the middle outwards', () => {
    // As the bolts lie: 1 2 3 above 4 5 6.
    expect(tighteningOrder(6, 'spiral')).toEqual([2, 5, 6, 3, 1, 4]);
    expect(tighteningOrder(5, 'in-line')).toEqual([3, 4, 2, 5, 1]);
    expect(tighteningOrder(4, 'in-turn')).toEqual([1, 2, 3, 4]);
  });

  it('a head with four bolts: crosswise, in three stages to the stated torque', () => {
    expect(tighteningOrder(4, 'cross')).toEqual([1, 3, 2, 4]);
    expect(torqueStages(24, [0.5, 0.75, 1])).toEqual([12, 18, 24]);
  });
});

/**
 * Legacy cross pattern of ASME PCC-1 (Guidelines for Pressure Boundary Bolted Flange Joint Assembly): from
 * memory, no edition at hand.
 */
describe('bolts in a ring, ASME PCC-1', () => {
  it.each([
    '1 3 2 4',
    '1 5 3 7 2 6 4 8',
    '1 7 4 10 2 8 5 11 3 9 6 12',
    '1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16',
  ])('%s', (order) => {
    const bolts = order.split(' ').map(Number);
    expect(tighteningOrder(bolts.length, 'cross')).toEqual(bolts);
  });

  it('five in a star, as a wheel with five nuts (common practice, no source)', () => {
    expect(tighteningOrder(5, 'star')).toEqual([1, 3, 5, 2, 4]);
  });
});
