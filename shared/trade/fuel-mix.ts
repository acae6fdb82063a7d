import { demandFinite, demandNotNegative } from './demand.ts';
import { quotient } from './exact.ts';

export interface FuelMix {
  /** Volume of fuel, any unit. */
  readonly fuel: number;
  /** Parts of fuel to one of oil: 50 for 50:1. */
  readonly ratio: number;
}

/**
 * Oil to add to a volume of two-stroke fuel, in the unit of the fuel: fuel/ratio. The engine's own
 * manual and the oil's label state the ratio.
 *
 * @throws {RangeError} when the fuel is negative or the ratio isn't above 1
 */
export function fuelMix({ fuel, ratio }: FuelMix): number {
  demandNotNegative(fuel, 'the fuel');
  demandFinite(ratio, 'the ratio');
  if (ratio <= 1) {
    throw new RangeError(`The ratio must be above 1 (50 for 50:1); it is ${ratio}.`);
  }
  return quotient(fuel, ratio);
}
