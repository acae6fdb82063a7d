import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EXPANSION_COEFFICIENTS, toReference } from './temperature.ts';

describe('toReference', () => {
  it('leaves a length at 20 °C, or without expansion, as it is', () => {
    expect(toReference(68.03, 20, 11.5e-6)).toBe(68.03);
    expect(toReference(68.03, 35, 0)).toBe(68.03);
  });

  it('shortens what is warm and lengthens what is cold', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: -40, max: 120, noNaN: true }),
        fc.constantFrom(...EXPANSION_COEFFICIENTS),
        (length, temperature, { alpha }) => {
          const at20 = toReference(length, temperature, alpha);
          expect(at20 * (1 + alpha * (temperature - 20))).toBeCloseTo(length, 9);
          expect(temperature > 20 ? at20 <= length : at20 >= length).toBe(true);
        },
      ),
    );
  });

  it('takes a difference of coefficients, also below zero', () => {
    // A steel gauge in a bore of grey cast iron, both at 35 °C: 68·(10.8 − 11.5)·10⁻⁶·15 = −0.000714.
    expect(toReference(68, 35, 10.8e-6 - 11.5e-6)).toBeCloseTo(68.000714, 6);
  });

  it('refuses a coefficient in millionths, and what makes no sense', () => {
    expect(() => toReference(68, 30, 11.5)).toThrow('coefficient of expansion');
    expect(() => toReference(68, 30, -11.5)).toThrow(RangeError);
    expect(() => toReference(0, 30, 1e-6)).toThrow(RangeError);
    expect(() => toReference(-68, 30, 1e-6)).toThrow(RangeError);
    expect(() => toReference(68, -300, 1e-6)).toThrow(RangeError);
    expect(() => toReference(68, Number.NaN, 1e-6)).toThrow(RangeError);
  });
});
