import {
  type Dinero,
  dinero,
  allocate as dineroAllocate,
  halfAwayFromZero,
  halfEven,
  multiply,
  toSnapshot,
  transformScale,
} from 'dinero.js/bigint';
import * as currencies from 'dinero.js/bigint/currencies';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  allocate,
  billTotals,
  discountOn,
  divideRounded,
  lineAmount,
  marginPpm,
  minorDigits,
  priceAtMarkup,
  ROUNDINGS,
} from '../../shared/money/index.ts';

/**
 * Money against published rules, and against an independent library (dinero.js 2.0.2, which the
 * program itself does not use).
 */

const { USD } = currencies;

const DINERO_ROUNDINGS = { 'half-up': halfAwayFromZero, 'half-even': halfEven };
const usd = (amount: number) => dinero({ amount: BigInt(amount), currency: USD });
const amountOf = (value: Dinero<bigint>) => Number(toSnapshot(value).amount);
const cents = fc.integer({ min: -100_000_000_000, max: 100_000_000_000 });

describe.each(ROUNDINGS)('dinero.js 2.0.2 rounds %s as we do', (rounding) => {
  const toCents = (value: Dinero<bigint>) =>
    amountOf(transformScale(value, 2n, DINERO_ROUNDINGS[rounding]));

  test('a percentage of an amount', () => {
    fc.assert(
      fc.property(cents, fc.nat({ max: 1_000_000 }), (amount, ratePpm) => {
        const tax = multiply(usd(amount), { amount: BigInt(ratePpm), scale: 6n });
        const line = { kind: 'part', amount };
        const rule = { name: 'Tax', ratePpm, kinds: ['part'] };
        const totals = billTotals([line], [rule], { rounding, basis: 'invoice' });
        expect(totals.taxes[0]?.amount).toBe(toCents(tax));
      }),
    );
  });

  test('a discount by share', () => {
    const shares = fc.integer({ min: 1, max: 1_000_000 });
    fc.assert(
      fc.property(fc.nat({ max: 10 ** 11 }), shares, (amount, ppm) => {
        const off = multiply(usd(amount), { amount: BigInt(ppm), scale: 6n });
        expect(discountOn(amount, { by: 'share', ppm }, rounding)).toBe(toCents(off));
      }),
    );
  });

  test('a markup on cost', () => {
    const markups = fc.nat({ max: 10_000_000 });
    fc.assert(
      fc.property(fc.nat({ max: 10 ** 10 }), markups, (cost, ppm) => {
        const price = multiply(usd(cost), { amount: BigInt(1_000_000 + ppm), scale: 6n });
        expect(priceAtMarkup(cost, ppm, rounding)).toBe(toCents(price));
      }),
    );
  });

  test('exact halves, where the two ways part', () => {
    fc.assert(
      fc.property(fc.integer({ min: -10_000, max: 10_000 }), (whole) => {
        const half = dinero({ amount: BigInt(whole * 10 + 5), currency: USD, scale: 3n });
        const ours = divideRounded(BigInt(whole * 10 + 5), 10n, rounding);
        expect(Number(ours)).toBe(toCents(half));
      }),
    );
  });

  test('a quantity times a price', () => {
    const quantities = fc.integer({ min: 1, max: 50_000_000 });
    fc.assert(
      fc.property(quantities, fc.nat({ max: 10_000_000 }), (quantity, unitPrice) => {
        const product = multiply(usd(unitPrice), { amount: BigInt(quantity), scale: 3n });
        expect(lineAmount({ quantity, unitPrice }, rounding)).toBe(toCents(product));
      }),
    );
  });
});

describe('dinero.js 2.0.2 allocates as we do', () => {
  test('equal weights', () => {
    fc.assert(
      fc.property(fc.nat({ max: 10 ** 11 }), fc.integer({ min: 1, max: 40 }), (amount, people) => {
        const weights = Array.from({ length: people }, () => 1);
        const theirs = dineroAllocate(
          usd(amount),
          weights.map((weight) => BigInt(weight)),
        );
        expect(allocate(amount, weights)).toEqual(theirs.map(amountOf));
      }),
    );
  });

  // With unequal weights dinero.js gives the cents left over to the first, we to the largest
  // remainders: no share differs by more than one.
  test('any weights, to the cent that is left over', () => {
    const weighing = fc.array(fc.integer({ min: 1, max: 100_000 }), {
      minLength: 1,
      maxLength: 12,
    });
    fc.assert(
      fc.property(fc.nat({ max: 10 ** 11 }), weighing, (amount, weights) => {
        const theirs = dineroAllocate(
          usd(amount),
          weights.map((weight) => BigInt(weight)),
        ).map(amountOf);
        const ours = allocate(amount, weights);
        expect(ours.reduce((sum, share) => sum + share, 0)).toBe(
          theirs.reduce((sum, share) => sum + share, 0),
        );
        for (const [index, share] of ours.entries()) {
          expect(Math.abs(share - (theirs[index] ?? Number.NaN))).toBeLessThanOrEqual(1);
        }
      }),
    );
  });
});

/**
 * Streamlined Sales and Use Tax Agreement, section 324 (as enacted in R.I. Gen. Laws 44-18.1-25,
 * N.D.C.C. 57-39.4-25 and Mass. G.L. c. 64I §5): tax is carried to the third decimal and goes up to
 * the next cent when the third decimal is greater than four; the seller may choose to round on each
 * item or on the invoice. The rule was read in those texts; the figures below are worked out from it.
 */
describe('Streamlined Sales and Use Tax Agreement, section 324', () => {
  const taxOf = (amounts: number[], ratePpm: number, basis: 'line' | 'invoice') =>
    billTotals(
      amounts.map((amount) => ({ kind: 'part', amount })),
      [{ name: 'Sales tax', ratePpm, kinds: ['part'] }],
      { rounding: 'half-up', basis },
    ).taxes[0]?.amount;

  test('$0.0749 of tax has a third decimal of 4 and is $0.07: it does not become 0.075 first', () => {
    expect(taxOf([107], 70_000, 'invoice')).toBe(7);
  });

  test('three items of $1.07 at 7 %: $0.21 by item, $0.22 by invoice', () => {
    expect(taxOf([107, 107, 107], 70_000, 'line')).toBe(21);
    expect(taxOf([107, 107, 107], 70_000, 'invoice')).toBe(22);
  });

  test('every third decimal from 0 to 9', () => {
    // A base of $1.00 at 5.0 % to 5.9 % gives $0.050 to $0.059.
    const rates = Array.from({ length: 10 }, (_, third) => 50_000 + third * 1_000);
    expect(rates.map((ratePpm) => taxOf([100], ratePpm, 'invoice'))).toEqual([
      5, 5, 5, 5, 5, 6, 6, 6, 6, 6,
    ]);
  });
});

/**
 * Markup and margin: calcreal.com, Markup Calculator (worked example), with the formulas as in the
 * Centennial College guide to markup: a cost of $40 with 50 % markup on cost sells at $60, a margin of
 * 33.33 % of the price.
 */
test('markup on cost, and the margin that it leaves', () => {
  const price = priceAtMarkup(4_000, 500_000, 'half-up');
  expect(price).toBe(6_000);
  expect(marginPpm(price, 4_000, 'half-up')).toBe(333_333);
});

/**
 * HM Revenue & Customs, internal manual VAT Traders' Records, VATREC12010 (gov.uk), read there: tax worked
 * out line by line is rounded to the nearest penny (or half penny, or down to a tenth of one), and never
 * down to the whole penny. That the total of an invoice may be rounded down is a concession, which is not
 * taken here. The rule was read; the figures are worked out from it.
 */
describe('HMRC VATREC12010, tax worked out on each line', () => {
  const vat = (amounts: number[]) =>
    billTotals(
      amounts.map((amount) => ({ kind: 'part', amount })),
      [{ name: 'VAT', ratePpm: 200_000, kinds: ['part'] }],
      { rounding: 'half-up', basis: 'line' },
    ).taxes[0]?.amount;

  test('goes to the nearest penny, up as well as down', () => {
    // 20 % of £1.99, £1.98, £1.97, £1.96: 39.8 p, 39.6 p, 39.4 p, 39.2 p.
    expect([199, 198, 197, 196].map((amount) => vat([amount]))).toEqual([40, 40, 39, 39]);
    expect(vat([199, 198, 197, 196])).toBe(158);
  });
});

/**
 * Tax within a price: the 'VAT fraction', rate / (100 + rate): 1/6 at 20 %, 7/47 at 17.5 %, 1/21 at 5 %. The
 * fractions were read worked out (bookkeepers.org.uk, topic 85461); HMRC Notice 700, The VAT guide, which has
 * them too, is from memory. Who is exempt pays the price without it, price / (1 + rate).
 */
describe('the tax within a price', () => {
  const rules = { rounding: 'half-up', basis: 'invoice', pricesIncludeTax: true } as const;
  const vat = (ratePpm: number) => [{ name: 'VAT', ratePpm, kinds: ['part'] }];

  test.each([
    [200_000, 24_000, 4_000],
    [175_000, 23_500, 3_500],
    [50_000, 21_000, 1_000],
    [200_000, 600, 100],
  ])(
    'at %d millionths %d has %d of tax in it, and is that much less for the exempt',
    (rate, price, tax) => {
      const lines = [{ kind: 'part', amount: price }];
      const usual = billTotals(lines, vat(rate), rules);
      expect([usual.taxes[0]?.amount, usual.total]).toEqual([tax, price]);
      const exempt = billTotals(lines, [], { ...rules, takenOut: vat(rate) });
      expect([exempt.takenOut[0]?.amount, exempt.total]).toEqual([tax, price - tax]);
    },
  );

  test('of any price, the exempt pay five sixths at 20 %, to half a cent', () => {
    fc.assert(
      fc.property(fc.nat({ max: 10 ** 11 }), (price) => {
        const { total } = billTotals([{ kind: 'part', amount: price }], [], {
          ...rules,
          takenOut: vat(200_000),
        });
        expect(Math.abs(6 * total - 5 * price)).toBeLessThanOrEqual(3);
      }),
    );
  });
});

test('currencies have the decimals that dinero.js 2.0.2 has of ISO 4217', () => {
  // Ariary and ouguiya go by fives there; ISO 4217 gives them two decimals (from memory).
  const decimal = Object.values(currencies).filter(({ base }) => base === 10n);
  expect(decimal.length).toBeGreaterThan(150);
  for (const { code, exponent } of decimal)
    expect([code, minorDigits(code)]).toEqual([code, Number(exponent)]);
});
