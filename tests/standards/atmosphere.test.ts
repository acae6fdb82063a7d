import { describe, expect, it } from 'vitest';
import { airPressure, convert } from '../../shared/trade/index.ts';

/** US Standard Atmosphere 1976: geopotential altitude of a geometric one. */
const geopotential = (geometric: number) => (6_356_766 * geometric) / (6_356_766 + geometric);

/** Sources: ISO 2533 (geopotential) and US Standard Atmosphere 1976, table I (geometric). */
describe('standard atmosphere', () => {
  it.each([
    ['A1', 0, 101_325, 'read'],
    ['A2', 500, 95_460.8, 'computed'],
    ['A3', 1000, 89_874.6, 'computed'],
    ['A4', 2000, 79_495.2, 'computed'],
    ['A4a', 2500, 74_682.5, 'computed'],
  ])('%s: %d m geopotential is %d Pa', (_id, metres, pascals) => {
    expect(airPressure(metres) * 1000).toBeCloseTo(pascals, 1);
  });

  it.each([
    ['A2', 500, 954.61, 954.6],
    ['A3', 1000, 898.76, 898.8],
    ['A4', 2000, 795.01, 795.0],
    ['A4a', 2500, 746.92, 746.9],
  ])(
    '%s: %d m geometric is %d hPa (4 digits read in a published table)',
    (_id, metres, fiveDigits, fourDigits) => {
      const hectopascals = airPressure(geopotential(metres)) * 10;
      expect(hectopascals).toBeCloseTo(fiveDigits, 2);
      expect(Number(hectopascals.toPrecision(4))).toBe(fourDigits);
    },
  );

  // International standard atmosphere (ICAO 1964) by pressure level, metres, as meteowvl.be prints it (read).
  it.each([
    [1050, -302],
    [1000, 111],
    [950, 540],
    [900, 988],
    [850, 1457],
    [800, 1949],
    [700, 3012],
    [600, 4206],
    [400, 7185],
    [300, 9164],
    [226.32, 11_000],
  ])('%d hPa lies at %d m, to the metre', (hectopascals, metres) => {
    // A metre is 0.012 % of the pressure at most.
    expect(Math.abs((airPressure(metres) * 10) / hectopascals - 1)).toBeLessThan(0.00012);
  });

  it('540.20 hPa at 5 000 m (ICAO Doc 7488, from memory); above 11 000 m the formula is another', () => {
    expect(airPressure(5000)).toBeCloseTo(54.02, 3);
    for (const metres of [11_000.1, 20_000, -6000])
      expect(() => airPressure(metres)).toThrow(RangeError);
  });

  it.each([
    [2000, 13.664],
    [10_000, 10.108],
  ])('A5: %d ft is %d psia within 0.002 (engineersedge.com 15729, read)', (feet, psia) => {
    const pressure = convert(airPressure(feet * 0.3048), 'kPa', 'psi');
    expect(Math.abs(pressure - psia)).toBeLessThanOrEqual(0.002);
  });
});
