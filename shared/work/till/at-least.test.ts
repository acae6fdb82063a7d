import fc from 'fast-check';
import { expect, test } from 'vitest';
import { againstAmount, atLeast, sumInWords } from './at-least.ts';

test('a sum with a line without a price is the least that it can be', () => {
  expect(atLeast('$24.33', 0)).toBe('$24.33');
  expect(atLeast('$24.33', 2)).toBe('at least $24.33');
  expect(sumInWords('$24.33', 1)).toBe('at least $24.33; 1 line has no price');
  expect(sumInWords('$24.33', 2)).toBe('at least $24.33; 2 lines have no price');
  expect(sumInWords('$24.33', 0)).toBe('$24.33');
});

test('is never said to be within an amount, whatever the missing prices turn out to be', () => {
  const amount = fc.nat(100_000);
  fc.assert(
    fc.property(amount, amount, fc.array(amount, { maxLength: 4 }), (priced, limit, missing) => {
      const said = againstAmount(priced, limit, missing.length);
      const truth = missing.reduce((sum, price) => sum + price, priced) > limit ? 'over' : 'within';
      // What is said without a doubt is true of the bill with all its prices.
      if (said !== 'unknown') expect(said).toBe(truth);
      expect(said === 'unknown').toBe(missing.length > 0 && priced <= limit);
    }),
  );
});
