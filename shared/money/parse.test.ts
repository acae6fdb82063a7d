import fc from 'fast-check';
import { expect, test } from 'vitest';
import { editableMoney, editableQuantity } from './editable.ts';
import { formatMoney } from './format.ts';
import { parseMoney, parseQuantity } from './parse.ts';

test.each([
  ['12', 'USD', 'en', 1_200],
  ['12,50', 'USD', 'en', 1_250],
  ['12.5', 'USD', 'en', 1_250],
  ['.5', 'USD', 'en', 50],
  ['1,234.50', 'USD', 'en', 123_450],
  ['1,234', 'USD', 'en', 123_400],
  ['1,234,567', 'USD', 'en', 123_456_700],
  ['12,34,567.5', 'INR', 'en-IN', 123_456_750],
  ['1.234,50', 'EUR', 'de-DE', 123_450],
  ['1.234', 'EUR', 'de-DE', 123_400],
  ['1 234,5', 'EUR', 'fr-FR', 123_450],
  ['1\u202f234,50\u00a0€', 'EUR', 'fr-FR', 123_450],
  ["1'234.50", 'CHF', 'de-CH', 123_450],
  ['$5', 'USD', 'en', 500],
  ['5 eur', 'EUR', 'en', 500],
  ['1,500', 'JPY', 'en', 1_500],
  ['1.234', 'KWD', 'en', 1_234],
  ['１２.５', 'USD', 'en', 1_250],
  ['١٢٫٥', 'USD', 'en', 1_250],
  ['\u200F١٬٢٣٤٫٥٠ ج.م.\u200F', 'EGP', 'ar-EG', 123_450],
  ['\u2067 12.50 $ \u2069', 'USD', 'en', 1_250],
])('%s in %s (%s) is %i', (text, currency, locale, minor) => {
  expect(parseMoney(text, currency, locale)).toBe(minor);
});

test.each([
  ['', 'USD', 'en', 'Nothing is typed'],
  ['abc', 'USD', 'en', 'is not an amount'],
  ['.', 'USD', 'en', 'is not an amount'],
  ['1.2.3', 'USD', 'en', 'is not an amount'],
  ['12 50', 'USD', 'en', 'is not an amount'],
  ['1,23,4.5', 'USD', 'en', 'is not an amount'],
  ['1.234', 'USD', 'en', 'two ways'],
  ['1,234', 'EUR', 'de-DE', 'two ways'],
  ['1,234', 'KWD', 'en', 'two ways'],
  ['0.125', 'USD', 'en', 'more than 2 decimals'],
  ['1.5', 'JPY', 'en', 'JPY has none'],
  ['-5', 'USD', 'en', 'below zero'],
  ['5−', 'USD', 'en', 'below zero'],
  ['€5', 'USD', 'en', 'not in USD'],
  ['9'.repeat(20), 'USD', 'en', 'more than any bill'],
  ['9'.repeat(60), 'USD', 'en', 'at most 40 characters'],
])('%s in %s (%s) is refused: %s', (text, currency, locale, words) => {
  const read = () => parseMoney(text, currency, locale);
  expect(read).toThrow(RangeError);
  expect(read).toThrow(words);
});

const money = fc.nat({ max: 100_000_000_000 });
const places = fc.constantFrom(
  ['USD', 'en-US'],
  ['EUR', 'de-DE'],
  ['EUR', 'fr-FR'],
  ['CHF', 'de-CH'],
  ['INR', 'en-IN'],
  ['JPY', 'ja-JP'],
  ['PLN', 'pl-PL'],
  ['GBP', 'en-GB'],
  ['EGP', 'ar-EG'],
  ['JPY', 'ar-EG'],
  ['ILS', 'he-IL'],
) as fc.Arbitrary<[string, string]>;

test('what the program prints can be typed back', () => {
  fc.assert(
    fc.property(money, places, (minor, [currency, locale]) => {
      expect(parseMoney(formatMoney(minor, currency, locale), currency, locale)).toBe(minor);
    }),
  );
});

test('what stands in a field can be read back', () => {
  fc.assert(
    fc.property(money, places, (minor, [currency, locale]) => {
      expect(parseMoney(editableMoney(minor, currency, locale), currency, locale)).toBe(minor);
    }),
  );
  fc.assert(
    fc.property(fc.nat({ max: 1_000_000_000 }), places, (thousandths, [, locale]) => {
      expect(parseQuantity(editableQuantity(thousandths, locale), locale)).toBe(thousandths);
    }),
  );
});

test('whatever is typed, the answer is a whole number of cents or a RangeError', () => {
  const typed = fc.string({ unit: fc.constantFrom(..."0123456789.,' -$€%e") });
  fc.assert(
    fc.property(typed, places, (text, [currency, locale]) => {
      try {
        expect(Number.isSafeInteger(parseMoney(text, currency, locale))).toBe(true);
      } catch (error) {
        expect(error).toBeInstanceOf(RangeError);
      }
    }),
  );
});

test.each([
  ['1.5', 1_500],
  ['1,5', 1_500],
  ['2', 2_000],
  ['2.', 2_000],
  ['.5', 500],
  ['0,125', 125],
  ['1.500', 1_500],
])('a quantity of %s is %i thousandths', (text, thousandths) => {
  expect(parseQuantity(text)).toBe(thousandths);
});

test('a comma before three digits is the decimal mark where people write it so', () => {
  expect(parseQuantity('1,500', 'de-DE')).toBe(1_500);
  expect(() => parseQuantity('1.500', 'de-DE')).toThrow('two ways');
});

test.each([
  ['', 'Nothing is typed'],
  [',', 'not a quantity'],
  ['-1', 'not a quantity'],
  ['1.2345', 'three decimals'],
  ['two', 'not a quantity'],
  ['1,500', 'two ways'],
])('a quantity of %s is refused: %s', (text, words) => {
  const read = () => parseQuantity(text);
  expect(read).toThrow(RangeError);
  expect(read).toThrow(words);
});
