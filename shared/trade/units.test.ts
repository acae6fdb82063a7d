import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BASE_UNIT_OF, convert, dimensionOf, isUnit, toBase, UNITS, unitsOf } from './units.ts';

const anyUnit = fc.constantFrom(...UNITS);
const size = fc.double({ min: 1e-6, max: 1e6, noNaN: true });

describe('convert', () => {
  it('is exact where the factor is', () => {
    expect(convert(1, 'in', 'mm')).toBe(25.4);
    expect(convert(0.006, 'in', 'mm')).toBe(0.1524);
    expect(convert(6, 'thou', 'mm')).toBe(0.1524);
    expect(convert(0.1524, 'mm', 'thou')).toBe(6);
    expect(convert(30, 'um', 'mm')).toBe(0.03);
    expect(convert(1, 'lbf·ft', 'lbf·in')).toBe(12);
    expect(convert(1, 'kgf·m', 'kgf·cm')).toBe(100);
    expect(convert(1, 'gal-us', 'fl-oz-us')).toBe(128);
    expect(convert(1, 'gal-us', 'in3')).toBe(231);
    expect(convert(1, 'L', 'ml')).toBe(1000);
    expect(convert(2.5, 'kΩ', 'Ω')).toBe(2500);
    expect(convert(-0.02, 'mm', 'um')).toBe(-20);
  });

  it('comes back within 1e-12', () => {
    fc.assert(
      fc.property(anyUnit, fc.nat(10), size, (from, pick, value) => {
        const units = unitsOf(dimensionOf(from));
        const to = units[pick % units.length] ?? from;
        const back = convert(convert(value, from, to), to, from);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(value)));
      }),
    );
  });

  it('keeps the order of two values', () => {
    fc.assert(
      fc.property(anyUnit, size, size, (from, a, b) => {
        expect(toBase(Math.min(a, b), from)).toBeLessThanOrEqual(toBase(Math.max(a, b), from));
      }),
    );
  });

  it('refuses unlike dimensions, in a sentence that names both', () => {
    fc.assert(
      fc.property(anyUnit, anyUnit, (from, to) => {
        fc.pre(dimensionOf(from) !== dimensionOf(to));
        expect(() => convert(1, from, to)).toThrow(RangeError);
      }),
    );
    expect(() => convert(1, 'mm', 'psi')).toThrow('mm measures length, psi measures pressure');
  });

  it('refuses what is no number, no unit or no temperature', () => {
    expect(() => convert(Number.NaN, 'mm', 'in')).toThrow(RangeError);
    expect(() => convert(Number.POSITIVE_INFINITY, 'mm', 'mm')).toThrow(RangeError);
    expect(() => convert(-273.16, '°C', 'K')).toThrow(RangeError);
    expect(() => convert(-460, '°F', '°C')).toThrow(RangeError);
    expect(convert(-459.67, '°F', 'K')).toBe(0);
    // A unit that isn't one of the list, as it may come from a file.
    expect(() => convert(1, 'cubit' as never, 'mm')).toThrow("'cubit' is not a unit");
    // A name that every object answers to.
    expect(() => convert(1, 'toString' as never, 'mm')).toThrow(RangeError);
  });
});

describe('the list of units', () => {
  it('names each once and begins each dimension with its base unit', () => {
    expect(new Set(UNITS).size).toBe(UNITS.length);
    for (const unit of UNITS) {
      const base = BASE_UNIT_OF[dimensionOf(unit)];
      expect(unitsOf(dimensionOf(unit))[0]).toBe(base);
      expect(toBase(1, base)).toBe(1);
    }
  });

  it('knows its own', () => {
    expect(isUnit('lbf·ft')).toBe(true);
    expect(isUnit('LBF·FT')).toBe(false);
  });
});
