import { toMinor } from './amount.ts';
import { billTotals } from './bill.ts';
import type { BillTerms } from './draw-up.ts';
import type { DiscountRule } from './line.ts';
import { divideRounded, type Rounding } from './round.ts';

/** A line that was worked out, with what one of it costs the shop. */
export interface CostedLine {
  readonly kind: string;
  /** Thousandths. */
  readonly quantity: number;
  /** Minor units; null when nobody knows. */
  readonly unitCost: number | null;
  /** Minor units, after the line's own discount. */
  readonly amount: number;
}

/** What a bill leaves the shop, in minor units. */
export interface BillMargin {
  /** What is charged without tax and without cores, which are security and no sale. */
  sales: number;
  /** Of the lines whose cost is known. */
  cost: number;
  /** Sales less cost; below zero when the shop pays for it. */
  margin: number;
  /** Share of the sales in millionths; null without sales. */
  ppm: number | null;
  /** Lines whose cost nobody knows: the margin is less than it says by theirs. */
  unknown: number;
}

const SECURITY = ['core-charge', 'core-credit'];

/**
 * What a line costs the shop, in minor units, rounded once; null when nobody knows.
 * @throws RangeError when it is more than a number can hold exactly
 */
export const lineCost = (
  { quantity, unitCost }: Pick<CostedLine, 'quantity' | 'unitCost'>,
  rounding: Rounding,
): number | null =>
  unitCost === null
    ? null
    : toMinor(divideRounded(BigInt(quantity) * BigInt(unitCost), 1000n, rounding));

/**
 * The margin of a bill: for the shop's eyes, never on a paper.
 * @throws RangeError for figures that are no whole numbers or beyond 2^53
 */
export function billMargin(
  { lines, discount }: { lines: readonly CostedLine[]; discount: DiscountRule | null },
  terms: Pick<BillTerms, 'rounding' | 'taxBasis' | 'taxes' | 'pricesIncludeTax' | 'takenOut'>,
): BillMargin {
  const { rounding, taxBasis, taxes, pricesIncludeTax, takenOut } = terms;
  const sold = lines.filter(({ kind }) => !SECURITY.includes(kind));
  const totals = billTotals(sold, taxes, {
    rounding,
    basis: taxBasis,
    pricesIncludeTax,
    takenOut,
    discount,
  });
  const sales = totals.total - totals.taxes.reduce((sum, { amount }) => sum + amount, 0);
  const costs = sold.map((line) => lineCost(line, rounding));
  const cost = costs.reduce<number>((sum, one) => sum + (one ?? 0), 0);
  const margin = sales - cost;
  const ppm =
    sales > 0 ? toMinor(divideRounded(BigInt(margin) * 1_000_000n, BigInt(sales), rounding)) : null;
  return { sales, cost, margin, ppm, unknown: costs.filter((one) => one === null).length };
}
