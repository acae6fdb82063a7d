import fc from 'fast-check';
import { expect, test } from 'vitest';
import { billTotals, roundingSentence, TAX_BASES } from './bill.ts';
import { ROUNDINGS } from './round.ts';

const STATE = { name: 'State sales tax', ratePpm: 62_500, kinds: ['part', 'supplies'] };
const COUNTY = { name: 'County', ratePpm: 7_500, kinds: ['part'] };

/** Without a discount, and with the taxes on top. */
const PLAIN = { discount: 0, pricesIncludeTax: false, takenOut: [] };

test('each tax meets only its own kinds of line', () => {
  const lines = [
    { kind: 'labour', amount: 12_000 },
    { kind: 'part', amount: 4_999 },
    { kind: 'supplies', amount: 500 },
  ];
  expect(billTotals(lines, [STATE, COUNTY], { rounding: 'half-up', basis: 'invoice' })).toEqual({
    ...PLAIN,
    subtotal: 17_499,
    taxes: [
      { ...STATE, base: 5_499, amount: 344 },
      { ...COUNTY, base: 4_999, amount: 37 },
    ],
    total: 17_880,
  });
});

test('a bill without lines, and a tax without lines of its kind, come to nothing', () => {
  const rules = { rounding: 'half-even', basis: 'line' } as const;
  expect(billTotals([], [], rules)).toEqual({ ...PLAIN, subtotal: 0, taxes: [], total: 0 });
  expect(billTotals([{ kind: 'labour', amount: 100 }], [COUNTY], rules).taxes).toEqual([
    { ...COUNTY, base: 0, amount: 0 },
  ]);
});

test('nonsense is refused', () => {
  const rules = { rounding: 'half-up', basis: 'invoice' } as const;
  expect(() => billTotals([{ kind: 'part', amount: 0.5 }], [], rules)).toThrow(RangeError);
  expect(() => billTotals([{ kind: 'part', amount: Number.NaN }], [], rules)).toThrow(RangeError);
  expect(() => billTotals([], [{ ...STATE, ratePpm: -1 }], rules)).toThrow(RangeError);
  const most = { kind: 'part', amount: Number.MAX_SAFE_INTEGER };
  expect(() => billTotals([most, most], [], rules)).toThrow(RangeError);
});

test('the rounding rule reads as a sentence', () => {
  expect(roundingSentence({ rounding: 'half-up', basis: 'invoice' })).toBe(
    'Tax is rounded to the last digit shown, a half up, on the whole bill.',
  );
  expect(roundingSentence({ rounding: 'half-even', basis: 'line' })).toBe(
    'Tax is rounded to the last digit shown, a half to the even digit, on each line.',
  );
});

const kinds = ['labour', 'part', 'outside', 'supplies', 'fee'];
const bills = fc.record({
  lines: fc.array(
    fc.record({
      kind: fc.constantFrom(...kinds),
      amount: fc.integer({ min: -(10 ** 9), max: 10 ** 11 }),
    }),
    { maxLength: 40 },
  ),
  taxes: fc.array(
    fc.record({
      name: fc.string(),
      ratePpm: fc.integer({ min: 0, max: 1_000_000 }),
      kinds: fc.subarray(kinds),
    }),
    { maxLength: 6 },
  ),
  rules: fc.record({
    rounding: fc.constantFrom(...ROUNDINGS),
    basis: fc.constantFrom(...TAX_BASES),
  }),
});

test('lines and taxes always add up to the total', () => {
  fc.assert(
    fc.property(bills, ({ lines, taxes, rules }) => {
      const totals = billTotals(lines, taxes, rules);
      const lineSum = lines.reduce((sum, line) => sum + line.amount, 0);
      const taxSum = totals.taxes.reduce((sum, tax) => sum + tax.amount, 0);
      expect(totals.subtotal).toBe(lineSum);
      expect(totals.total).toBe(lineSum + taxSum);
    }),
  );
});

test('tax is off its exact figure by half a cent on the bill, or on each line, at most', () => {
  fc.assert(
    fc.property(bills, ({ lines, taxes, rules }) => {
      for (const [index, tax] of billTotals(lines, taxes, rules).taxes.entries()) {
        const taxed = lines.filter((line) => taxes[index]?.kinds.includes(line.kind));
        const roundings = rules.basis === 'line' ? BigInt(taxed.length) : 1n;
        const off = BigInt(tax.amount) * 1_000_000n - BigInt(tax.base) * BigInt(tax.ratePpm);
        expect((off < 0n ? -off : off) <= roundings * 500_000n).toBe(true);
      }
    }),
  );
});

test('a bill of credits is the mirror of the bill', () => {
  fc.assert(
    fc.property(bills, ({ lines, taxes, rules }) => {
      const credits = lines.map((line) => ({ ...line, amount: -line.amount }));
      const charged = billTotals(lines, taxes, rules);
      expect(billTotals(credits, taxes, rules).total + charged.total).toBe(0);
    }),
  );
});
