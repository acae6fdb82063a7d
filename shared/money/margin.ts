import { demandMinor, toMinor } from './amount.ts';
import { divideRounded, type Rounding } from './round.ts';

const WHOLE = 1_000_000n;

/**
 * The price that a markup on cost gives, in minor units.
 * @param cost minor units, zero or more
 * @param markupPpm millionths of the cost, zero or more: 500000 is 50 %
 * @throws RangeError when either is not a whole number of zero or more
 */
export function priceAtMarkup(cost: number, markupPpm: number, rounding: Rounding): number {
  demandMinor(cost);
  if (cost < 0) throw new RangeError('A cost is zero or more.');
  if (!Number.isSafeInteger(markupPpm) || markupPpm < 0) {
    throw new RangeError('A markup is a whole number of millionths, zero or more.');
  }
  return toMinor(divideRounded(BigInt(cost) * (WHOLE + BigInt(markupPpm)), WHOLE, rounding));
}

/**
 * The share of the price that is not cost, in millionths; null when there is no price to take a
 * share of. Less than zero when the part is sold below cost.
 * @param price minor units, zero or more
 * @param cost minor units, zero or more
 * @throws RangeError when either is not a whole number of zero or more
 */
export function marginPpm(price: number, cost: number, rounding: Rounding): number | null {
  demandMinor(price);
  demandMinor(cost);
  if (price < 0 || cost < 0) throw new RangeError('Price and cost are zero or more.');
  if (price === 0) return null;
  const share = (BigInt(price) - BigInt(cost)) * WHOLE;
  return toMinor(divideRounded(share, BigInt(price), rounding));
}

/** The finest that a markup is written, in millionths: a hundredth of a per cent. */
const FINEST = 100n;

/**
 * The share of its cost that a price lies above it, in whole hundredths of a per cent, as millionths; null
 * when there is no cost to take a share of, or the price does not reach it.
 * @param price minor units, zero or more
 * @param cost minor units, zero or more
 * @throws RangeError when either is not a whole number of zero or more
 */
export function markupPpm(price: number, cost: number, rounding: Rounding): number | null {
  demandMinor(price);
  demandMinor(cost);
  if (price < 0 || cost < 0) throw new RangeError('Price and cost are zero or more.');
  if (cost === 0 || price < cost) return null;
  const above = (BigInt(price) - BigInt(cost)) * WHOLE;
  return toMinor(divideRounded(above, BigInt(cost) * FINEST, rounding) * FINEST);
}
