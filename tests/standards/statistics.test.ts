import { describe, expect, it } from 'vitest';
import { fitLine } from '../../shared/trade/index.ts';

/** Digits that agree: −log10 of the relative error. */
const digits = (value: number, certified: number) =>
  value === certified ? 16 : -Math.log10(Math.abs(value / certified - 1));

/**
 * Norris, a calibration of ozone monitors: NIST Statistical Reference Datasets
 * (itl.nist.gov/div898/strd), linear regression, lower difficulty. B0 and B1 read in public copies,
 * recomputed with 40 digits; the residual standard deviation from memory, recomputed.
 */
describe('NIST StRD Norris', () => {
  const xs = [
    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5,
    666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2,
    999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
  ];
  const ys = [
    0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8,
    339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5,
    778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
  ];
  const line = fitLine(xs.map((x, index) => ({ x, y: ys[index] ?? Number.NaN })));

  it('S4: slope, intercept and residual standard deviation hold 13 digits', () => {
    expect(xs).toHaveLength(36);
    expect(digits(line.slope, 1.00211681802045)).toBeGreaterThanOrEqual(13);
    expect(digits(line.intercept, -0.262323073774029)).toBeGreaterThanOrEqual(13);
    expect(digits(line.residualSd, 0.884796396144373)).toBeGreaterThanOrEqual(13);
  });
});

describe('a line through few points (by hand)', () => {
  it('two points leave nothing over; three about y = 1 + 2x scatter by the root of 1.5', () => {
    expect(
      fitLine([
        { x: 1, y: 3 },
        { x: 3, y: 7 },
      ]),
    ).toEqual({ slope: 2, intercept: 1, residualSd: 0 });
    // Residuals −½, 1, −½: their squares are 1.5, over 3 − 2.
    const { slope, intercept, residualSd } = fitLine([
      { x: 0, y: 0.5 },
      { x: 1, y: 4 },
      { x: 2, y: 4.5 },
    ]);
    expect([slope, intercept]).toEqual([2, 1]);
    expect(residualSd).toBeCloseTo(Math.sqrt(1.5), 12);
  });
});
