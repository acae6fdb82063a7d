import { allocate } from '../../money/index.ts';
import { costAt } from './stock-ledger.ts';

/**
 * What each piece of an opened kit is worth: the kit's worth, shared out by what such pieces cost when they
 * are bought singly, or by their numbers when nobody knows. Nothing is lost or made.
 * @param worth minor units, zero or more
 * @param pieces one at least; quantities in thousandths, above zero
 */
export function kitShares(
  worth: number,
  pieces: readonly { quantity: number; unitCost: number }[],
): number[] {
  const costs = pieces.map(({ quantity, unitCost }) => costAt(unitCost, quantity));
  const known = costs.every((cost) => cost > 0);
  return allocate(worth, known ? costs : pieces.map(({ quantity }) => quantity));
}
