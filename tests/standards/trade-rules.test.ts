import { describe, expect, it } from 'vitest';
import {
  convert,
  fuelMix,
  judge,
  parseReading,
  ringGap,
  torquePlausibility,
} from '../../shared/trade/index.ts';

/** A reading as typed, in another unit. */
const typedIn = (text: string, to: 'mm' | 'N·m') => {
  const { value, unit } = parseReading(text, to);
  return convert(value, unit, to);
};
const verdictOf = (value: number, band: { low?: number; high?: number }) =>
  judge({ value, ...band, uncertainty: 0 }).verdict;

describe('published trade rules', () => {
  it('R1: ring end gap 0.004 per unit of bore: 2.5 in, 0.010 in (Small Gas Engines, Goodheart-Willcox 2012, p. 360, read)', () => {
    expect(ringGap({ bore: 2.5, perBore: 0.004 })).toBe(0.01);
  });

  it('R2a: another source has 0.0035: 4 in, 0.014 in (enginebuildermag.com, read)', () => {
    expect(ringGap({ bore: 4, perBore: 0.0035 })).toBe(0.014);
  });

  it('R4: differential test at 80 psi: below 60/80 is rejected (FAA AC 43.13-1B §8-14, read)', () => {
    expect(verdictOf(62, { low: 60 })).toBe('within');
    expect(verdictOf(60, { low: 60 })).toBe('within');
    expect(verdictOf(59.9, { low: 60 })).toBe('outside');
  });

  it('R5: lowest cylinder at least 75 % of the highest (TM 5-4210-230-14&P-1; rule read, case computed)', () => {
    expect(verdictOf((112 / 150) * 100, { low: 75 })).toBe('outside');
    expect(verdictOf((113 / 150) * 100, { low: 75 })).toBe('within');
  });

  it('R6: a spread of at most 10 psi (TM 5-1185 §137; rule read, case computed)', () => {
    expect(verdictOf(100 - 91, { high: 10 })).toBe('within');
    expect(verdictOf(100 - 89, { high: 10 })).toBe('outside');
  });

  it.each([
    ['3/64 in', '1.19'],
    ['1/16 in', '1.59'],
    ['5/64 in', '1.98'],
    ['1/32 in', '0.79'],
    ['1/64 in', '0.40'],
  ])('R7: valve seat and margin, %s is %s mm (TM 5-4240-501-14&P p. 614, read)', (text, mm) => {
    expect(typedIn(text, 'mm').toFixed(2)).toBe(mm);
  });

  it('R8: plug gap 0.020 in is 0.51 mm, torque 27 lbf·ft is 36.6 N·m (TM 5-4320-259-12, read)', () => {
    expect(typedIn('.020"', 'mm').toFixed(2)).toBe('0.51');
    expect(typedIn('27 ft-lb', 'N·m').toFixed(1)).toBe('36.6');
  });

  it('R9: 0.028 to 0.030 in is 0.71 to 0.76 mm, 275 to 300 lbf·in is 31.1 to 33.9 N·m (TM 5-4310-360-14, read)', () => {
    expect(typedIn('0.028 in', 'mm')).toBe(0.7112); // the manual prints 0.07112 cm
    expect(typedIn('0.030 in', 'mm').toFixed(2)).toBe('0.76');
    expect(typedIn('275 in-lb', 'N·m').toFixed(1)).toBe('31.1');
    expect(typedIn('300 in-lb', 'N·m').toFixed(1)).toBe('33.9');
  });

  it.each([
    [128, 50, 2.56],
    [128, 40, 3.2],
    [128, 32, 4],
    [12 * 128, 50, 30.72],
    [1000, 50, 20],
    [1000, 40, 25],
    [1000, 32, 31.25],
  ])(
    'R10: %d of fuel at %d:1 takes %d of oil (anycalculator.com, read, computed)',
    (fuel, ratio, oil) => {
      expect(fuelMix({ fuel, ratio })).toBe(oil);
    },
  );

  it('R10: a US gallon is 128 fl oz', () => {
    expect(fuelMix({ fuel: convert(1, 'gal-us', 'fl-oz-us'), ratio: 50 }).toFixed(1)).toBe('2.6');
  });

  it('R11: out-of-round over 0.005 in asks for a rebore (oldengine.org, read, low trust)', () => {
    expect(verdictOf(0.005, { high: 0.005 })).toBe('within');
    expect(verdictOf(0.0051, { high: 0.005 })).toBe('outside');
  });

  it('R13: two feeler leaves add: 0.010 + 0.006 in is 0.016 in (TM 1-1500-204-23-9 §3-17; rule read, case computed)', () => {
    expect(typedIn('10 thou', 'mm') + typedIn('6 thou', 'mm')).toBeCloseTo(
      typedIn('0.016 in', 'mm'),
      12,
    );
  });

  it('bolts of these manuals: 27 lbf·ft is no torque for an M6 of class 8.8 (judgement, computed)', () => {
    const bolt = { diameter: 6, pitch: 1, propertyClass: '8.8' } as const;
    expect(torquePlausibility({ ...bolt, torque: typedIn('27 lbf·ft', 'N·m') }).verdict).toBe(
      'high',
    );
  });
});
