import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { difference, fraction, product, quotient, sum, toNumber } from './exact.ts';

const finite = fc.double({ noNaN: true, noDefaultInfinity: true });

describe('decimal arithmetic', () => {
  it('leaves no rounding dust', () => {
    expect(68.05 - 68.02).not.toBe(0.03);
    expect(difference(68.05, 68.02)).toBe(0.03);
    expect(0.1 + 0.2).not.toBe(0.3);
    expect(sum(0.1, 0.2)).toBe(0.3);
    expect(product(1.1, 1.1)).toBe(1.21);
    expect(quotient(0.3, 0.1)).toBe(3);
  });

  it('gives every finite number back', () => {
    fc.assert(fc.property(finite, (value) => toNumber(fraction(value)) === value));
    for (const value of [5e-324, Number.MIN_VALUE, Number.MAX_VALUE, 1e21, -1e-7, 123e-20]) {
      expect(toNumber(fraction(value))).toBe(value);
    }
  });

  it('rounds a third and two thirds as division does', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e6, max: 1e6 }),
        fc.integer({ min: 1, max: 1e6 }),
        (above, below) => quotient(above, below) === (above === 0 ? 0 : above / below),
      ),
    );
  });

  it('divides by a negative number', () => {
    expect(quotient(1, -4)).toBe(-0.25);
  });

  it('refuses what is not a finite number, and division by zero', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, 'a', '', '1,5']) {
      expect(() => fraction(value)).toThrow(RangeError);
    }
    expect(() => quotient(1, 0)).toThrow(RangeError);
    expect(() => product(1e308, 10)).toThrow('too large');
    expect(() => quotient(1e308, 1e-10)).toThrow('too large');
  });
});
