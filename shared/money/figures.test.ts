import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatQuantity, formatRate } from './figures.ts';
import { parseQuantity } from './parse.ts';

test('quantities carry no zeros that say nothing', () => {
  expect([1_500, 2_000, 10_000, 0, -250, 1].map((each) => formatQuantity(each))).toEqual([
    '1.5',
    '2',
    '10',
    '0',
    '-0.25',
    '0.001',
  ]);
  expect(formatQuantity(1_234_500, 'de-DE')).toBe('1.234,5');
  expect(() => formatQuantity(0.5)).toThrow(RangeError);
});

test('rates are percentages', () => {
  expect([62_500, 200_000, 0, 1_000_000, 1].map((each) => formatRate(each))).toEqual([
    '6.25 %',
    '20 %',
    '0 %',
    '100 %',
    '0.0001 %',
  ]);
  expect(formatRate(62_500, 'de-DE')).toBe('6,25 %');
  expect(() => formatRate(Number.NaN)).toThrow(RangeError);
});

test('a quantity as printed can be typed back', () => {
  fc.assert(
    fc.property(fc.nat({ max: 1_000_000_000 }), (thousandths) => {
      expect(parseQuantity(formatQuantity(thousandths))).toBe(thousandths);
    }),
  );
});
