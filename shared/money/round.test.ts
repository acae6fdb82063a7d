import fc from 'fast-check';
import { expect, test } from 'vitest';
import { divideRounded, ROUNDINGS } from './round.ts';

test.each([
  [5n, 2n, 'half-up', 3n],
  [-5n, 2n, 'half-up', -3n],
  [5n, 2n, 'half-even', 2n],
  [7n, 2n, 'half-even', 4n],
  [-5n, 2n, 'half-even', -2n],
  [4n, 3n, 'half-up', 1n],
  [5n, 3n, 'half-even', 2n],
  [0n, 7n, 'half-up', 0n],
] as const)('%s / %s rounded %s is %s', (numerator, denominator, rounding, expected) => {
  expect(divideRounded(numerator, denominator, rounding)).toBe(expected);
});

test('a denominator of zero or less is refused', () => {
  expect(() => divideRounded(1n, 0n, 'half-up')).toThrow(RangeError);
  expect(() => divideRounded(1n, -2n, 'half-up')).toThrow(RangeError);
});

const fractions = [fc.bigInt(-(10n ** 30n), 10n ** 30n), fc.bigInt(1n, 10n ** 12n)] as const;

test.each(ROUNDINGS)('%s lands on a nearest whole number', (rounding) => {
  fc.assert(
    fc.property(...fractions, (numerator, denominator) => {
      const off = divideRounded(numerator, denominator, rounding) * denominator - numerator;
      expect((off < 0n ? -off : off) * 2n <= denominator).toBe(true);
    }),
  );
});

test.each(ROUNDINGS)('%s treats a credit as the mirror of a charge', (rounding) => {
  fc.assert(
    fc.property(...fractions, (numerator, denominator) => {
      expect(divideRounded(-numerator, denominator, rounding)).toBe(
        -divideRounded(numerator, denominator, rounding),
      );
    }),
  );
});
