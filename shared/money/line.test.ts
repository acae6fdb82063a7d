import { expect, test } from 'vitest';
import { discountOn, lineAmount } from './line.ts';

test.each([
  [1_500, 8_500, 'half-up', 12_750],
  [333, 1_000, 'half-up', 333],
  [500, 5, 'half-up', 3],
  [500, 5, 'half-even', 2],
  [1, 1, 'half-up', 0],
  [1_000_000_000, 100_000_000, 'half-up', 100_000_000_000_000],
] as const)('%i thousandths at %i, %s: %i', (quantity, unitPrice, rounding, amount) => {
  expect(lineAmount({ quantity, unitPrice }, rounding)).toBe(amount);
});

test('a product beyond 2^53 is refused and not rounded away', () => {
  const line = { quantity: 1_000_000_000, unitPrice: 100_000_000_000 };
  expect(() => lineAmount(line, 'half-up')).toThrow('more than any bill');
});

test('fractions of a thousandth or of a cent are refused', () => {
  expect(() => lineAmount({ quantity: 1.5, unitPrice: 100 }, 'half-up')).toThrow(RangeError);
  expect(() => lineAmount({ quantity: 1_000, unitPrice: 0.1 }, 'half-up')).toThrow(RangeError);
});

test('a discount is whole and not below zero, and never more than what it comes off', () => {
  expect(discountOn(1_000, { by: 'amount', amount: 1_200 }, 'half-up')).toBe(1_000);
  expect(discountOn(0, { by: 'share', ppm: 100_000 }, 'half-up')).toBe(0);
  expect(discountOn(1_000, null, 'half-up')).toBe(0);
  for (const figure of [-1, 0.5, -0.5, Number.NaN]) {
    expect(() => discountOn(1_000, { by: 'amount', amount: figure }, 'half-up')).toThrow(
      RangeError,
    );
    expect(() => discountOn(1_000, { by: 'share', ppm: figure }, 'half-up')).toThrow(RangeError);
  }
  expect(() => discountOn(-1, null, 'half-up')).toThrow(RangeError);
});
