import { describe, expect, it } from 'vitest';
import { boreReport, convert } from '../../shared/trade/index.ts';

/**
 * How a bore is measured and what is made of it: three depths, two directions; out-of-round is the largest
 * difference between the directions at one depth, taper the largest difference along one direction. So a
 * marine diesel's service manual ('Cylinder bore measurement', on manualarchiveguide.com, read), and
 * freeasestudyguides.com for taper (read). The readings are invented, the results worked out by hand.
 */
describe('a worn bore, 68 mm', () => {
  const rows = [
    ['top', 68.07, 68.112],
    ['middle', 68.055, 68.061],
    ['bottom', 68.031, 68.029],
  ] as const;
  const readings = rows.flatMap(([level, along, across]) => [
    { level, axis: 'along', value: along },
    { level, axis: 'across', value: across },
  ]);
  const nominal = { nominal: 68, wearLimit: 0.1, oversizes: [0.5, 0.25, 1], allowance: 0.05 };

  it('is out of round at the top by 0.042, tapers across the crankshaft by 0.083, is worn by 0.112', () => {
    expect(boreReport(readings, nominal)).toEqual({
      min: 68.029,
      max: 68.112,
      taper: 0.083,
      outOfRound: 0.042,
      wear: 0.112,
      nextOversize: 0.25,
    });
  });

  it('cleans up at the smallest oversize that leaves the stock asked for (common practice, no source)', () => {
    const oversizeFor = (allowance: number) =>
      boreReport(readings, { ...nominal, allowance }).nextOversize;
    // 68.112 + 0.138 is 68.25 to the micrometre.
    expect([0.138, 0.1381, 0.388, 0.389, 0.889].map(oversizeFor)).toEqual([
      0.25,
      0.5,
      0.5,
      1,
      null,
    ]);
  });

  it('is the same bore in inches: oversizes of 0.010 and 0.020 in', () => {
    const inches = readings.map((reading) => ({
      ...reading,
      value: convert(reading.value, 'mm', 'in'),
    }));
    const report = boreReport(inches, {
      nominal: convert(68, 'mm', 'in'),
      oversizes: [0.02, 0.01],
      allowance: 0.002,
    });
    expect(convert(report.taper, 'in', 'mm')).toBeCloseTo(0.083, 10);
    expect(convert(report.outOfRound, 'in', 'mm')).toBeCloseTo(0.042, 10);
    // 0.0044 in of wear and 0.002 of stock are less than 0.010.
    expect(report.nextOversize).toBe(0.01);
  });
});
