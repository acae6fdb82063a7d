import { demandNotNegative, demandPositive } from './demand.ts';
import { product } from './exact.ts';

export interface RingGapRule {
  /** Diameter of the bore, any unit. */
  readonly bore: number;
  /** Gap per unit of bore: 0.004 for four thousandths of an inch per inch. */
  readonly perBore: number;
}

/**
 * Ring end gap by a rule of thumb, in the unit of the bore: bore × perBore. Rules differ (0.004 per
 * unit of bore in Small Gas Engines, Goodheart-Willcox 2012, ch. 19; 0.0035 elsewhere), so show
 * which one was used, and never use it in place of the engine's own figure.
 *
 * @throws {RangeError} when the bore isn't positive, or perBore is negative or not below 1
 */
export function ringGap({ bore, perBore }: RingGapRule): number {
  demandPositive(bore, 'the bore');
  demandNotNegative(perBore, 'the gap per unit of bore');
  if (perBore >= 1) {
    throw new RangeError(
      `A gap of ${perBore} per unit of bore is no gap: write 0.004 or the like.`,
    );
  }
  return product(bore, perBore);
}
