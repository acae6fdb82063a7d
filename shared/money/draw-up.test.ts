import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LINE_KINDS } from '../work/vocabulary.ts';
import { type BillTerms, drawUp } from './draw-up.ts';
import { type DiscountRule, lineAmount } from './line.ts';
import { ROUNDINGS } from './round.ts';

/** Random bills, with all that a line and a bill can have: what must hold of every one of them. */

const discount: fc.Arbitrary<DiscountRule | null> = fc.option(
  fc.oneof(
    fc.record({
      by: fc.constant('share' as const),
      ppm: fc.integer({ min: 1, max: 1_000_000 }),
    }),
    fc.record({
      by: fc.constant('amount' as const),
      amount: fc.integer({ min: 1, max: 1_000_000 }),
    }),
  ),
);
const line = fc.record({
  kind: fc.constantFrom(...LINE_KINDS),
  quantity: fc.integer({ min: 1, max: 100_000 }),
  unitPrice: fc.nat({ max: 1_000_000 }),
  discount,
  priceFrom: fc.constantFrom('typed', 'typed', 'typed', 'supplies-rule'),
});
const kinds = fc.uniqueArray(fc.constantFrom<string>(...LINE_KINDS), { minLength: 1 });
const terms: fc.Arbitrary<BillTerms> = fc
  .record({
    rounding: fc.constantFrom(...ROUNDINGS),
    taxBasis: fc.constantFrom('line', 'invoice'),
    taxes: fc.array(
      fc.record({ name: fc.constant('Tax'), ratePpm: fc.nat({ max: 300_000 }), kinds }),
      { maxLength: 4 },
    ),
    pricesIncludeTax: fc.boolean(),
    exemptBy: fc.constant(''),
    exempt: fc.boolean(),
    supplies: fc.option(
      fc.record({
        ppm: fc.integer({ min: 1, max: 200_000 }),
        kinds,
        cap: fc.option(fc.nat({ max: 10_000 })),
      }),
    ),
  })
  .map(({ exempt, taxes, ...others }) => ({
    ...others,
    taxes: exempt ? [] : taxes,
    takenOut: exempt ? taxes : [],
  }));
const bill = fc.record({ lines: fc.array(line, { minLength: 1, maxLength: 15 }), discount });

const sum = (amounts: readonly number[]): number => amounts.reduce((total, one) => total + one, 0);
const always = (check: (drawn: ReturnType<typeof drawUp>, asked: Asked, by: BillTerms) => void) =>
  fc.assert(fc.property(bill, terms, (asked, by) => check(drawUp(asked, by), asked, by)));
type Asked = typeof bill extends fc.Arbitrary<infer Value> ? Value : never;

const ALL: readonly string[] = LINE_KINDS;
const CORES = ['core-charge', 'core-credit'];

describe('on every bill', () => {
  test('lines, discount, taxes and rounding make up the total', () =>
    always(({ lines, totals }) => {
      expect(sum(lines.map(({ amount }) => amount))).toBe(totals.subtotal);
      const amounts = (taxes: typeof totals.taxes) => sum(taxes.map(({ amount }) => amount));
      const added = totals.pricesIncludeTax ? -amounts(totals.takenOut) : amounts(totals.taxes);
      expect(totals.total).toBe(totals.subtotal - totals.discount + added);
    }));

  test('who is exempt pays what everybody pays, less the taxes, on top or within', () =>
    always((_drawn, asked, by) => {
      const taxes = [...by.taxes, ...by.takenOut];
      const usual = drawUp(asked, { ...by, taxes, takenOut: [] }).totals;
      const exempt = drawUp(asked, { ...by, taxes: [], takenOut: taxes }).totals;
      expect(exempt.total).toBe(usual.total - sum(usual.taxes.map(({ amount }) => amount)));
      expect(exempt.taxes).toEqual([]);
      expect(exempt.takenOut).toEqual(by.pricesIncludeTax ? usual.taxes : []);
    }));

  test('a line is its quantity times its price, less its own discount, and below zero for a credit', () =>
    always(({ lines }, _asked, { rounding }) => {
      for (const { kind, amount, discounted, ...priced } of lines) {
        expect(Math.abs(amount) + discounted).toBe(lineAmount(priced, rounding));
        expect(discounted).toBeGreaterThanOrEqual(0);
        expect(kind === 'core-credit' ? -amount : amount).toBeGreaterThanOrEqual(0);
      }
    }));

  test('the discount on the whole loses no cent, and leaves cores alone', () =>
    always(({ lines, totals }, asked, by) => {
      const sold = sum(
        lines.filter(({ kind }) => !CORES.includes(kind)).map(({ amount }) => amount),
      );
      expect(totals.discount).toBeLessThanOrEqual(sold);
      if (asked.discount?.by === 'amount')
        expect(totals.discount).toBe(Math.min(sold, asked.discount.amount));
      // A tax on everything has all that is left as its base: no cent of the shares went astray.
      const taxed = drawUp(asked, {
        ...by,
        taxes: [{ name: 'On all', ratePpm: 100_000, kinds: ALL }],
      }).totals;
      expect(taxed.taxes[0]?.base).toBe(taxed.subtotal - taxed.discount);
      const onCores = drawUp(asked, {
        ...by,
        taxes: [{ name: 'On cores', ratePpm: 100_000, kinds: CORES }],
      });
      expect(onCores.totals.taxes[0]?.base).toBe(
        sum(onCores.lines.filter(({ kind }) => CORES.includes(kind)).map(({ amount }) => amount)),
      );
    }));

  test('a tax on top is its rate of its base, to half a cent for each rounding', () =>
    always(({ lines, totals }, _asked, by) => {
      if (by.pricesIncludeTax) return;
      for (const [index, { ratePpm, base, amount }] of totals.taxes.entries()) {
        const taxed = lines.filter(({ kind }) => by.taxes[index]?.kinds.includes(kind)).length;
        const roundings = by.taxBasis === 'line' ? taxed : 1;
        // In millionths of a cent, where all of it is whole.
        const off = BigInt(amount) * 1_000_000n - BigInt(base) * BigInt(ratePpm);
        expect(off < 0n ? -off : off).toBeLessThanOrEqual(BigInt(roundings) * 500_000n);
      }
    }));

  test('a tax within prices, put on top of what is left without it, gives the price again', () =>
    always((_drawn, asked, by) => {
      const within = { ...by, taxBasis: 'invoice' as const, pricesIncludeTax: true };
      const { totals } = drawUp(asked, {
        ...within,
        taxes: [{ name: 'VAT', ratePpm: 200_000, kinds: ALL }],
        takenOut: [],
      });
      const tax = totals.taxes[0]?.amount ?? 0;
      // 20 % of the net: five times the tax is the net, to the half cent that the tax was rounded by.
      expect(Math.abs(totals.total - 6 * tax)).toBeLessThanOrEqual(3);
    }));

  test('several taxes within prices share what one of their summed rate takes', () =>
    always((_drawn, asked, by) => {
      const within = { ...by, taxBasis: 'invoice' as const, pricesIncludeTax: true };
      const taxOf = (rates: readonly number[]) =>
        sum(
          drawUp(asked, {
            ...within,
            taxes: rates.map((ratePpm) => ({ name: 'Tax', ratePpm, kinds: ALL })),
            takenOut: [],
          }).totals.taxes.map(({ amount }) => amount),
        );
      expect(taxOf([62_500, 7_500, 10_000])).toBe(taxOf([80_000]));
    }));

  test('supplies by the shop’s rule never pass its cap, on however many lines', () =>
    always(({ lines }, _asked, { supplies }) => {
      const byRule = lines.filter((line) => 'priceFrom' in line && line.priceFrom !== 'typed');
      if (supplies !== null && supplies.cap !== null)
        expect(sum(byRule.map(({ unitPrice }) => unitPrice))).toBeLessThanOrEqual(supplies.cap);
      for (const { priceFrom, unitPrice } of lines as ((typeof lines)[number] & {
        priceFrom: string;
      })[]) {
        if (priceFrom !== 'supplies-rule') continue;
        if (supplies === null) expect(unitPrice).toBe(0);
        else if (supplies.cap !== null) expect(unitPrice).toBeLessThanOrEqual(supplies.cap);
      }
    }));
});
