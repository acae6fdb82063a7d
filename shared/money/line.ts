import { demandMinor, toMinor } from './amount.ts';
import { divideRounded, type Rounding } from './round.ts';

/** What a line multiplies. */
export interface PricedQuantity {
  /** Whole thousandths: 1500 is 1.5 hours. */
  readonly quantity: number;
  /** Minor units for a whole one. */
  readonly unitPrice: number;
}

/** Off a line or a bill: a share in millionths, or an amount in minor units. */
export type DiscountRule =
  | { readonly by: 'share'; readonly ppm: number }
  | { readonly by: 'amount'; readonly amount: number };

const WHOLE = 1_000_000n;

/**
 * What a line comes to, in minor units: quantity times unit price, rounded once.
 * @throws RangeError for a quantity or a price that is not a whole number, or a product beyond 2^53
 */
export function lineAmount({ quantity, unitPrice }: PricedQuantity, rounding: Rounding): number {
  if (!Number.isSafeInteger(quantity)) {
    throw new RangeError('A quantity is a whole number of thousandths.');
  }
  demandMinor(unitPrice);
  return toMinor(divideRounded(BigInt(quantity) * BigInt(unitPrice), 1000n, rounding));
}

/**
 * What a discount takes off an amount, in minor units: never more than the amount itself.
 * @param amount minor units, zero or more
 * @throws RangeError when amount or discount is no whole number of zero or more
 */
export function discountOn(
  amount: number,
  discount: DiscountRule | null,
  rounding: Rounding,
): number {
  demandMinor(amount);
  if (amount < 0) throw new RangeError('A discount comes off an amount of zero or more.');
  if (discount === null) return 0;
  const figure = discount.by === 'share' ? discount.ppm : discount.amount;
  if (!Number.isSafeInteger(figure) || figure < 0) {
    throw new RangeError('A discount is a whole number, zero or more.');
  }
  const off =
    discount.by === 'share'
      ? toMinor(divideRounded(BigInt(amount) * BigInt(discount.ppm), WHOLE, rounding))
      : discount.amount;
  return Math.min(amount, off);
}

/** A line before it is worked out. */
export interface UnpricedLine extends PricedQuantity {
  readonly kind: string;
  readonly discount?: DiscountRule | null;
}

/**
 * A line worked out: what its own discount takes off, and its amount after that, which is below zero for a
 * core credit (a core that came back).
 * @throws RangeError as {@link lineAmount} and {@link discountOn}
 */
export function lineFigures(
  line: UnpricedLine,
  rounding: Rounding,
): { discounted: number; amount: number } {
  const gross = lineAmount(line, rounding);
  const discounted = discountOn(gross, line.discount ?? null, rounding);
  const net = gross - discounted;
  return { discounted, amount: line.kind === 'core-credit' && net !== 0 ? -net : net };
}
