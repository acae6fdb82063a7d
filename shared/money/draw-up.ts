import { type BillTax, type BillTotals, billTotals, type TaxBasis } from './bill.ts';
import { type DiscountRule, lineFigures, type UnpricedLine } from './line.ts';
import type { Rounding } from './round.ts';
import { isByRule, type SuppliesRule, suppliesCharge } from './supplies.ts';

/** All that a bill's figures depend on beside its lines, for one customer on one day. */
export interface BillTerms {
  readonly rounding: Rounding;
  readonly taxBasis: TaxBasis;
  /** Those that are charged to this customer on this day. */
  readonly taxes: readonly BillTax[];
  readonly pricesIncludeTax: boolean;
  /** The certificate by which no tax is charged, or empty. */
  readonly exemptBy: string;
  /** What that certificate takes out of prices that include tax. */
  readonly takenOut: readonly BillTax[];
  readonly supplies: SuppliesRule | null;
}

export interface DrawnLine {
  /** Minor units for a whole one: worked out for a line that the shop's rule prices. */
  unitPrice: number;
  discounted: number;
  amount: number;
}

/**
 * Works a bill out: every line, and what they come to. Desk and screen draw up by this one function, so that
 * what was shown is what is written.
 * @throws RangeError for figures that are no whole numbers or beyond 2^53
 */
export function drawUp<Line extends UnpricedLine & { readonly priceFrom?: string }>(
  { lines, discount }: { lines: readonly Line[]; discount: DiscountRule | null },
  terms: BillTerms,
): { lines: (Line & DrawnLine)[]; totals: BillTotals & { exemptBy: string } } {
  const worked = lines.map((line) =>
    isByRule(line) ? null : { ...line, ...lineFigures(line, terms.rounding) },
  );
  const others = worked.filter((line) => line !== null);
  const firstByRule = worked.indexOf(null);
  const drawn = lines.map((line, index) => {
    const done = worked[index];
    if (done !== null && done !== undefined) return done;
    // The rule charges a bill once: two bundles that bring their supplies along don't double them.
    const unitPrice =
      index === firstByRule ? suppliesCharge(others, terms.supplies, terms.rounding) : 0;
    const priced = { ...line, quantity: 1000, unitPrice };
    return { ...priced, ...lineFigures(priced, terms.rounding) };
  });
  const totals = billTotals(drawn, terms.taxes, {
    rounding: terms.rounding,
    basis: terms.taxBasis,
    pricesIncludeTax: terms.pricesIncludeTax,
    takenOut: terms.takenOut,
    discount,
  });
  return { lines: drawn, totals: { ...totals, exemptBy: terms.exemptBy } };
}
