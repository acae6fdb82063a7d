import { priceAtMarkup } from './margin.ts';
import type { Rounding } from './round.ts';

/** Costs up to and with `upTo` minor units (null: all above) are marked up by millionths of the cost. */
export interface CostBracket {
  readonly upTo: number | null;
  readonly markupPpm: number;
}

/** What a part's price can be made of, in minor units. */
export interface PricedPart {
  readonly priceRule: 'fixed' | 'markup' | 'list';
  readonly price: number;
  /** Zero when nobody knows it. */
  readonly cost: number;
  readonly listPrice: number | null;
}

/** The markup on a cost: of the first bracket that reaches it; null when none does. */
export const markupFor = (cost: number, brackets: readonly CostBracket[]): number | null =>
  brackets.find(({ upTo }) => upTo === null || cost <= upTo)?.markupPpm ?? null;

/**
 * What a part sells for, in minor units, and where that came from. A rule that has nothing to go by (no
 * cost, no bracket, no list price) leaves the fixed price, and says so.
 * @throws RangeError when cost or markup is no whole number of zero or more
 */
export function partPrice(
  part: PricedPart,
  brackets: readonly CostBracket[],
  rounding: Rounding,
): { price: number; from: 'shelf-price' | 'list-price' | 'cost-and-markup' } {
  if (part.priceRule === 'list' && part.listPrice !== null)
    return { price: part.listPrice, from: 'list-price' };
  const markup =
    part.priceRule === 'markup' && part.cost > 0 ? markupFor(part.cost, brackets) : null;
  return markup === null
    ? { price: part.price, from: 'shelf-price' }
    : { price: priceAtMarkup(part.cost, markup, rounding), from: 'cost-and-markup' };
}
