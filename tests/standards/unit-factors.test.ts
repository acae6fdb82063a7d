import fc from 'fast-check';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { convert, dimensionOf, type Unit } from '../../shared/trade/index.ts';

/**
 * Source of the factors: NIST SP 811 (2008), appendix B.8/B.9, seven digits as transcribed in a
 * public package. 'Exact' values follow from the definitions 1 in = 25.4 mm, 1 lb = 0.45359237 kg,
 * gₙ = 9.80665 m/s², 1 US gal = 231 in³.
 */
describe('unit factors (NIST SP 811)', () => {
  it.each<[id: string, from: Unit, to: Unit, factor: number, status: string]>([
    ['U1', 'in', 'mm', 25.4, 'read in the source'],
    ['U4', 'lbf', 'N', 4.4482216152605, 'read and computed'],
    ['U8', 'gal-us', 'L', 3.785411784, 'read and computed'],
    ['U10', 'fl-oz-us', 'ml', 29.5735295625, 'from memory, computed'],
    ['U11', 'in3', 'cm3', 16.387064, 'from memory, computed'],
    ['U12', 'bar', 'kPa', 100, 'from memory'],
    ['U13', 'kgf·m', 'N·m', 9.80665, 'from memory'],
  ])('%s: 1 %s is exactly so many %s', (_id, from, to, factor) => {
    expect(convert(1, from, to)).toBe(factor);
  });

  it.each<[id: string, from: Unit, to: Unit, exact: number, printed: number]>([
    ['U2', 'lbf·ft', 'N·m', 1.3558179483314, 1.355818],
    ['U3', 'psi', 'kPa', 6.894757293168361, 6.894757],
    ['U4', 'lbf', 'N', 4.4482216152605, 4.448222],
    ['U5', 'hp', 'kW', 0.7456998715822702, 0.7456999],
    // The conventional inch of mercury (13 595.1 kg/m³); SP 811 lists two others beside it.
    ['U7', 'inHg', 'kPa', 3.386388640341, 3.386389],
    ['U8', 'gal-us', 'L', 3.785411784, 3.785412],
  ])(
    '%s: 1 %s in %s, exact within 1e-12 and as printed to 7 digits',
    (_id, from, to, exact, printed) => {
      expect(Math.abs(convert(1, from, to) / exact - 1)).toBeLessThan(1e-12);
      expect(Number(convert(1, from, to).toPrecision(7))).toBe(printed);
    },
  );

  it('U9: a US liquid quart, a quarter of a gallon, is 0.9463529 L to 7 digits (read, computed)', () => {
    expect(convert(0.25, 'gal-us', 'L').toPrecision(7)).toBe('0.9463529');
  });

  it('U17: 1 lbf/in is 175.1268 N/m (read, computed)', () => {
    const newtonsPerMetre = (convert(1, 'lbf', 'N') / convert(1, 'in', 'mm')) * 1000;
    expect(newtonsPerMetre.toPrecision(7)).toBe('175.1268');
  });

  it('U6: the horsepower here is the mechanical one, not the electric one of exactly 746 W', () => {
    expect(convert(1, 'hp', 'kW')).not.toBe(0.746);
  });

  it('U15: °C = (°F − 32)/1.8 (from memory), exact where it comes out whole', () => {
    expect(convert(68, '°F', '°C')).toBe(20);
    expect(convert(212, '°F', '°C')).toBe(100);
    expect(convert(-40, '°F', '°C')).toBe(-40);
    expect(convert(20, '°C', '°F')).toBe(68);
    expect(convert(20, '°C', 'K')).toBe(293.15);
  });

  it('U16: an interval of 1 °F is 5/9 K (from memory): the difference of two converted points', () => {
    expect(convert(69, '°F', 'K') - convert(68, '°F', 'K')).toBeCloseTo(1 / 1.8, 12);
  });
});

/** A second opinion on every factor, over random values. */
describe('unit factors (mathjs as reference)', () => {
  // Its psi and hp are rounded in the eleventh digit, its millimetre of mercury in the sixth.
  const SAME: readonly { unit: Unit; name: string; within: number }[] = [
    { unit: 'mm', name: 'mm', within: 1e-12 },
    { unit: 'um', name: 'um', within: 1e-12 },
    { unit: 'in', name: 'inch', within: 1e-12 },
    { unit: 'thou', name: 'mil', within: 1e-12 },
    { unit: 'N·m', name: 'N m', within: 1e-12 },
    { unit: 'lbf·ft', name: 'lbf ft', within: 1e-12 },
    { unit: 'lbf·in', name: 'lbf inch', within: 1e-12 },
    { unit: 'kgf·m', name: 'kgf m', within: 1e-12 },
    { unit: 'kgf·cm', name: 'kgf cm', within: 1e-12 },
    { unit: 'kPa', name: 'kPa', within: 1e-12 },
    { unit: 'psi', name: 'psi', within: 1e-10 },
    { unit: 'bar', name: 'bar', within: 1e-12 },
    { unit: '°C', name: 'degC', within: 1e-12 },
    { unit: '°F', name: 'degF', within: 1e-12 },
    { unit: 'K', name: 'K', within: 1e-12 },
    { unit: 'cm3', name: 'cm^3', within: 1e-12 },
    { unit: 'in3', name: 'cuin', within: 1e-12 },
    { unit: 'L', name: 'litre', within: 1e-12 },
    { unit: 'ml', name: 'ml', within: 1e-12 },
    { unit: 'fl-oz-us', name: 'floz', within: 1e-12 },
    { unit: 'gal-us', name: 'gallon', within: 1e-12 },
    { unit: 'kW', name: 'kW', within: 1e-12 },
    { unit: 'hp', name: 'hp', within: 1e-10 },
    { unit: 'N', name: 'N', within: 1e-12 },
    { unit: 'lbf', name: 'lbf', within: 1e-12 },
    { unit: 'Ω', name: 'ohm', within: 1e-12 },
    { unit: 'kΩ', name: 'kohm', within: 1e-12 },
  ];
  const pairs = SAME.flatMap((source) =>
    SAME.filter((target) => dimensionOf(source.unit) === dimensionOf(target.unit)).map(
      (target) => ({ source, target }),
    ),
  );

  it('agrees over random values in every pair of units', () => {
    expect(pairs.length).toBeGreaterThan(90);
    const value = fc.double({ min: 0.001, max: 1e5, noNaN: true });
    for (const { source, target } of pairs) {
      fc.assert(
        fc.property(value, (number) => {
          const reference = mathUnit(number, source.name).toNumber(target.name);
          // A temperature near the zero of its scale is a difference of two large numbers.
          const scale = dimensionOf(target.unit) === 'temperature' ? 1000 : 0;
          const difference = Math.abs(convert(number, source.unit, target.unit) - reference);
          expect(difference, `${number} ${source.unit} in ${target.unit}`).toBeLessThanOrEqual(
            Math.max(Math.abs(reference), scale) * Math.max(source.within, target.within),
          );
        }),
        { numRuns: 15 },
      );
    }
  });

  it('agrees on the inch of mercury by way of the millimetre of mercury', () => {
    expect(convert(1, 'inHg', 'kPa') / mathUnit(25.4, 'mmHg').toNumber('kPa')).toBeCloseTo(1, 5);
  });
});
