import { expect, test } from 'vitest';
import { billMargin, lineCost } from './bill-margin.ts';

const TERMS = {
  rounding: 'half-up',
  taxBasis: 'invoice',
  taxes: [{ name: 'VAT', ratePpm: 200_000, kinds: ['part', 'labour', 'core-charge'] }],
  pricesIncludeTax: false,
  takenOut: [],
} as const;
const part = { kind: 'part', quantity: 2_000, unitCost: 3_000, amount: 12_000 };
const labour = { kind: 'labour', quantity: 1_500, unitCost: null, amount: 9_000 };
const core = { kind: 'core-charge', quantity: 1_000, unitCost: null, amount: 2_500 };

test('a cost is quantity times what one costs', () => {
  expect(lineCost({ quantity: 1_500, unitCost: 333 }, 'half-up')).toBe(500);
  expect(lineCost(labour, 'half-up')).toBeNull();
});

test('sales are without tax and cores, and a line without a cost is counted', () => {
  expect(billMargin({ lines: [part, labour, core], discount: null }, TERMS)).toEqual({
    sales: 21_000,
    cost: 6_000,
    margin: 15_000,
    ppm: 714_286,
    unknown: 1,
  });
});

test('a discount on the whole comes off the margin', () => {
  const discount = { by: 'amount', amount: 1_000 } as const;
  expect(billMargin({ lines: [part, core], discount }, TERMS)).toMatchObject({
    sales: 11_000,
    margin: 5_000,
  });
});

test('tax within the prices is not the shop’s', () => {
  const within = { ...TERMS, pricesIncludeTax: true };
  expect(billMargin({ lines: [part], discount: null }, within)).toMatchObject({
    sales: 10_000,
    margin: 4_000,
    ppm: 400_000,
  });
});

test('neither is what was taken out for who is exempt', () => {
  const exempt = { ...TERMS, pricesIncludeTax: true, taxes: [], takenOut: TERMS.taxes };
  expect(billMargin({ lines: [part], discount: null }, exempt)).toMatchObject({
    sales: 10_000,
    margin: 4_000,
  });
});

test('nothing sold has no share', () => {
  expect(billMargin({ lines: [core], discount: null }, TERMS)).toMatchObject({
    margin: 0,
    ppm: null,
  });
});
