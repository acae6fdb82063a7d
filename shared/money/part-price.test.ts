import { describe, expect, test } from 'vitest';
import { markupFor, type PricedPart, partPrice } from './part-price.ts';

const BRACKETS = [
  { upTo: 500, markupPpm: 1_000_000 },
  { upTo: 5_000, markupPpm: 500_000 },
  { upTo: null, markupPpm: 250_000 },
];
const part = (change: Partial<PricedPart>): PricedPart => ({
  priceRule: 'fixed',
  price: 1_999,
  cost: 1_000,
  listPrice: null,
  ...change,
});
const priced = (change: Partial<PricedPart>, brackets = BRACKETS) =>
  partPrice(part(change), brackets, 'half-up');

test('a bracket holds up to and with its limit', () => {
  expect([1, 500, 501, 5_000, 5_001].map((cost) => markupFor(cost, BRACKETS))).toEqual([
    1_000_000, 1_000_000, 500_000, 500_000, 250_000,
  ]);
  expect(markupFor(100, [])).toBeNull();
});

describe('a part sells', () => {
  test('at its fixed price', () => {
    expect(priced({})).toEqual({ price: 1_999, from: 'shelf-price' });
  });

  test('at its cost and the markup of its bracket', () => {
    expect(priced({ priceRule: 'markup' })).toEqual({ price: 1_500, from: 'cost-and-markup' });
    expect(priced({ priceRule: 'markup', cost: 333 })).toMatchObject({ price: 666 });
    expect(priced({ priceRule: 'markup', cost: 5_001 })).toMatchObject({ price: 6_251 });
  });

  test('at the supplier’s list price', () => {
    expect(priced({ priceRule: 'list', listPrice: 2_450 })).toEqual({
      price: 2_450,
      from: 'list-price',
    });
  });

  test('at the fixed price, and says so, when its rule has nothing to go by', () => {
    const fixed = { price: 1_999, from: 'shelf-price' };
    expect(priced({ priceRule: 'list' })).toEqual(fixed);
    expect(priced({ priceRule: 'markup', cost: 0 })).toEqual(fixed);
    expect(priced({ priceRule: 'markup' }, [])).toEqual(fixed);
  });
});
