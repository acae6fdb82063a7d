import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decimalMarkOf, readAmount } from './decimal-amount.ts';
import type { DecimalMark } from './words.ts';

const form = (mark: DecimalMark, digits = 2) => ({ mark, digits, rounding: 'half-up' as const });
const amount = (cell: string | number, mark: DecimalMark = '.', digits = 2) => {
  const read = readAmount(cell, form(mark, digits));
  return read.ok ? read.amount : read.why;
};

describe('an amount of a price file', () => {
  test.each([
    ['12.5', '.', 1250],
    ['1,234.50', '.', 123_450],
    ['1234', '.', 123_400],
    ['.5', '.', 50],
    ['$ 12.00', '.', 1200],
    ['12.00 USD', '.', 1200],
    ['12,5', ',', 1250],
    ['1.234,50', ',', 123_450],
    ['1 234,50 €', ',', 123_450],
    ['1\u202f234,50', ',', 123_450],
    ["1'234.50", '.', 123_450],
    ['1’234.50', '.', 123_450],
    ['1.234', ',', 123_400],
    ['0.0349', '.', 3],
    ['0.035', '.', 4],
    [12.5, ',', 1250],
    [0.1 + 0.2, '.', 30],
    [1e-7, '.', 0],
    ['', '.', 'empty'],
    [' ', '.', 'empty'],
    ['call', '.', 'unreadable'],
    ['12.50.1', '.', 'unreadable'],
    ['12,50', '.', 'unreadable'],
    ['12.50', ',', 'unreadable'],
    ['1,23,456', '.', 'unreadable'],
    ['#N/A', '.', 'unreadable'],
    [Number.POSITIVE_INFINITY, '.', 'unreadable'],
    ['-4.00', '.', 'below-zero'],
    ['4.00-', '.', 'below-zero'],
    ['$-4.00', '.', 'below-zero'],
    [-4, '.', 'below-zero'],
    ['9999999999.99', '.', 'too-much'],
  ] satisfies [string | number, DecimalMark, number | string][])(
    '%s with %s is %s',
    (cell, mark, expected) => {
      expect(amount(cell, mark)).toBe(expected);
    },
  );

  test('every amount is read back from how either mark writes it', () => {
    fc.assert(
      fc.property(fc.nat({ max: 100_000_000_000 }), fc.constantFrom('.', ','), (minor, mark) => {
        const locale = mark === '.' ? 'en' : 'de';
        const written = new Intl.NumberFormat(locale, { minimumFractionDigits: 2 }).format(
          minor / 100,
        );
        expect(amount(written, mark)).toBe(minor);
      }),
    );
  });

  test('the mark of a file is what most of its amounts leave no doubt of', () => {
    expect(decimalMarkOf(['1,234', '12.5', '3'])).toBe('.');
    expect(decimalMarkOf(['1.234', '12,50 €', 'call'])).toBe(',');
    expect(decimalMarkOf(['1.234,50'])).toBe(',');
    expect(decimalMarkOf(['1.234', '12', ''])).toBeNull();
  });
});
