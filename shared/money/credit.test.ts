import fc from 'fast-check';
import { expect, test } from 'vitest';
import { billTotals } from './bill.ts';
import { creditTotals } from './credit.ts';
import { type BillTerms, drawUp } from './draw-up.ts';
import type { DiscountRule } from './line.ts';

const SALES = { name: 'Sales tax', ratePpm: 62_500, kinds: ['part', 'supplies'] };
const TERMS: BillTerms = {
  rounding: 'half-up',
  taxBasis: 'invoice',
  taxes: [SALES],
  pricesIncludeTax: false,
  exemptBy: '',
  takenOut: [],
  supplies: null,
};
const line = (kind: string, unitPrice: number, quantity = 1_000) => ({ kind, unitPrice, quantity });

test('a line is credited with its own tax, and with its share of the discount on the whole', () => {
  const bill = drawUp(
    {
      lines: [line('labour', 8_000), line('part', 2_000)],
      discount: { by: 'share', ppm: 100_000 },
    },
    TERMS,
  );
  // Computed by hand: 20.00 less 10 % is 18.00; 6.25 % of that is 1.125, half up 1.13.
  expect(creditTotals(bill, [0, 0], [0, 2_000])).toMatchObject({
    subtotal: 2_000,
    discount: 200,
    taxes: [{ base: 1_800, amount: 113 }],
    total: 1_913,
  });
  // Half of the line, twice, is the line.
  const first = creditTotals(bill, [0, 0], [0, 1_000]);
  const second = creditTotals(bill, [0, 1_000], [0, 1_000]);
  expect(first.total + second.total).toBe(1_913);
});

test('more than was billed is never credited', () => {
  const bill = drawUp({ lines: [line('part', 2_000)], discount: null }, TERMS);
  expect(() => creditTotals(bill, [1_500], [501])).toThrow(RangeError);
  expect(() => creditTotals(bill, [0], [-1])).toThrow(RangeError);
});

test('a bill that does not say which kinds bore a tax is credited by the base that it says', () => {
  const bill = drawUp(
    { lines: [line('labour', 8_000), line('part', 2_000)], discount: null },
    TERMS,
  );
  const silent = {
    ...bill,
    totals: { ...bill.totals, taxes: bill.totals.taxes.map((tax) => ({ ...tax, kinds: [] })) },
  };
  expect(creditTotals(silent, [0, 0], [8_000, 0]).total).toBe(8_000);
  expect(creditTotals(silent, [0, 0], [0, 2_000]).total).toBe(2_125);
});

const kind = fc.constantFrom('labour', 'part', 'outside', 'supplies', 'core-charge', 'core-credit');
const discount: fc.Arbitrary<DiscountRule | null> = fc.oneof(
  fc.constant(null),
  fc.record({ by: fc.constant('share' as const), ppm: fc.integer({ min: 1, max: 1_000_000 }) }),
  fc.record({ by: fc.constant('amount' as const), amount: fc.integer({ min: 1, max: 20_000 }) }),
);
const bill = fc.record({
  lines: fc.array(
    fc.record({
      kind,
      quantity: fc.integer({ min: 1, max: 20_000 }),
      unitPrice: fc.nat(100_000),
      discount,
    }),
    { minLength: 1, maxLength: 8 },
  ),
  discount,
});
const terms = fc
  .record({
    rounding: fc.constantFrom('half-up' as const, 'half-even' as const),
    taxBasis: fc.constantFrom('line' as const, 'invoice' as const),
    taxes: fc.array(
      fc.record({
        name: fc.string(),
        ratePpm: fc.nat(300_000),
        kinds: fc.uniqueArray(kind, { maxLength: 6 }),
      }),
      { maxLength: 3 },
    ),
    pricesIncludeTax: fc.boolean(),
    exempt: fc.boolean(),
  })
  .map(({ exempt, taxes, ...others }) => ({
    ...others,
    taxes: exempt ? [] : taxes,
    takenOut: exempt ? taxes : [],
    exemptBy: '',
    supplies: null,
  }));

test('credited whole, in whatever steps, a bill is credited to the cent, tax by tax', () => {
  const steps = fc.array(fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 8, maxLength: 8 }), {
    maxLength: 5,
  });
  fc.assert(
    fc.property(bill, terms, steps, (asked, on, quarters) => {
      const drawn = drawUp(asked, on);
      const charges = drawn.lines.every(({ amount }) => amount >= 0);
      const before = drawn.lines.map(() => 0);
      const taxed = ({ taxes, takenOut }: typeof drawn.totals) =>
        [...taxes, ...takenOut].flatMap(({ base, amount }) => [base, amount]);
      const sums = { subtotal: 0, discount: 0, total: 0, taxes: taxed(drawn.totals).map(() => 0) };
      const credit = (now: number[]) => {
        const totals = creditTotals(drawn, before, now);
        now.forEach((amount, index) => {
          before[index] = (before[index] ?? 0) + amount;
        });
        sums.subtotal += totals.subtotal;
        sums.discount += totals.discount;
        sums.total += totals.total;
        taxed({ ...drawn.totals, ...totals }).forEach((amount, index) => {
          sums.taxes[index] = (sums.taxes[index] ?? 0) + amount;
        });
        // A credit adds up as a bill does.
        const sumOf = (taxes: typeof totals.taxes) =>
          taxes.reduce((sum, { amount }) => sum + amount, 0);
        const change = on.pricesIncludeTax ? -sumOf(totals.takenOut) : sumOf(totals.taxes);
        expect(totals.total).toBe(totals.subtotal - totals.discount + change);
        if (charges) {
          expect(totals.total).toBeGreaterThanOrEqual(0);
          expect(sums.total).toBeLessThanOrEqual(drawn.totals.total);
        }
      };
      for (const step of quarters)
        credit(
          drawn.lines.map(({ amount }, index) => {
            const left = amount - (before[index] ?? 0);
            return Math.trunc((left * (step[index] ?? 0)) / 4) + 0;
          }),
        );
      credit(drawn.lines.map(({ amount }, index) => amount - (before[index] ?? 0)));
      expect(sums).toEqual({
        subtotal: drawn.totals.subtotal,
        discount: drawn.totals.discount,
        total: drawn.totals.total,
        taxes: taxed(drawn.totals),
      });
    }),
    { numRuns: 500 },
  );
});

test('of taxes within the prices a line is credited what lies in its own', () => {
  // 19 % and 7 % within a part, 19 % alone within labour, to the cent by hand.
  const lines = [
    { kind: 'labour', amount: 11_900 },
    { kind: 'part', amount: 12_600 },
  ];
  const totals = billTotals(
    lines,
    [
      { name: 'A', ratePpm: 190_000, kinds: ['labour', 'part'] },
      { name: 'B', ratePpm: 70_000, kinds: ['part'] },
    ],
    { rounding: 'half-up', basis: 'invoice', pricesIncludeTax: true },
  );
  expect(totals.taxes.map(({ amount }) => amount)).toEqual([3_800, 700]);
  const labour = creditTotals({ lines, totals }, [0, 0], [11_900, 0]);
  expect(labour.taxes.map(({ amount }) => amount)).toEqual([1_900, 0]);
  const rest = creditTotals({ lines, totals }, [11_900, 0], [0, 12_600]);
  expect(rest.taxes.map(({ amount }) => amount)).toEqual([1_900, 700]);
});

test('a part of an exempt bill gives back a part of what was taken out of it', () => {
  const VAT = { name: 'VAT', ratePpm: 200_000, kinds: ['part', 'labour'] };
  const bill = drawUp(
    { lines: [line('labour', 12_000), line('part', 6_000)], discount: null },
    { ...TERMS, taxes: [], takenOut: [VAT], pricesIncludeTax: true, exemptBy: 'EX-1' },
  );
  expect(bill.totals).toMatchObject({
    subtotal: 18_000,
    takenOut: [{ amount: 3_000 }],
    total: 15_000,
  });
  expect(creditTotals(bill, [0, 0], [0, 6_000])).toMatchObject({
    subtotal: 6_000,
    taxes: [],
    takenOut: [{ base: 6_000, amount: 1_000 }],
    total: 5_000,
  });
});
