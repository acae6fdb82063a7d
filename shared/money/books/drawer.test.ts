import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PAYMENT_KINDS, PAYMENT_METHODS } from '../../work/vocabulary.ts';
import { sumMinor } from '../amount.ts';
import { drawerDifference, expectedInDrawer } from './drawer.ts';

test('a day of cash in, a refund in cash and a card', () => {
  const expected = expectedInDrawer(10_000, [
    { kind: 'payment', method: 'cash', amount: 4_250 },
    { kind: 'refund', method: 'cash', amount: 1_000 },
    { kind: 'deposit', method: 'card', amount: 5_000 },
  ]);
  expect(expected).toEqual({ cash: 13_250, card: 5_000, transfer: 0, cheque: 0 });
  expect(drawerDifference(expected, { cash: 13_200, card: 5_000 })).toEqual({
    byMethod: { cash: -50, card: 0, transfer: 0, cheque: 0 },
    total: -50,
  });
});

test('what is expected adds up to opening, in and out, whatever the methods', () => {
  const moved = fc.record({
    kind: fc.constantFrom(...PAYMENT_KINDS),
    method: fc.constantFrom(...PAYMENT_METHODS),
    amount: fc.nat({ max: 10_000_000 }),
  });
  fc.assert(
    fc.property(fc.nat({ max: 100_000 }), fc.array(moved), (opening, all) => {
      const expected = expectedInDrawer(opening, all);
      const signed = all.map(({ kind, amount }) => (kind === 'refund' ? -amount : amount));
      expect(sumMinor(Object.values(expected))).toBe(sumMinor([opening, ...signed]));
    }),
  );
});
