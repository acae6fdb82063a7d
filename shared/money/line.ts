import { demandMinor, toMinor } from './amount.ts';
import { divideRounded, type Rounding } from './round.ts';

/** What a line multiplies. */
export interface PricedQuantity {
  /** Whole thousandths: 1500 is 1.5 hours. */
  readonly quantity: number;
  /** Minor units for a whole one. */
  readonly unitPrice: number;
}

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
