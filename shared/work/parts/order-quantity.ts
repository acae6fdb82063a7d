/** How many to order of a part. Whole thousandths of its unit. */

export interface Position {
  /** On hand and not promised to a job. */
  available: number;
  /** What suppliers owe, of all orders. */
  onOrder: number;
  /** What jobs still need and have no promise of. */
  missing: number;
}

/** What will be on the shelf when all that is ordered has come and all that jobs need has gone. */
export const positionOf = ({ available, onOrder, missing }: Position): number =>
  available + onOrder - missing;

/** So many in whole packs, never fewer. */
export const inPacks = (quantity: number, packSize: number): number =>
  Math.ceil(quantity / packSize) * packSize;

/**
 * What has to be ordered so that jobs get what they need and the shelf stands above its reorder point:
 * whole packs; zero while it does.
 * @param point zero for a part that is not kept on the shelf
 * @param packSize above zero
 */
export function orderQuantity(position: number, point: number, packSize: number): number {
  if (point <= 0) return position < 0 ? inPacks(-position, packSize) : 0;
  if (position > point) return 0;
  // At its reorder point a shelf wants filling already: a pack more than brings it there.
  return (Math.floor((point - position) / packSize) + 1) * packSize;
}

export interface SupplierTerms {
  minimumOrder: number;
  carriage: number;
  freeCarriageFrom: number | null;
}

/** What a supplier charges to send goods of that worth, minor units. */
export const carriageOn = (
  { carriage, freeCarriageFrom }: Pick<SupplierTerms, 'carriage' | 'freeCarriageFrom'>,
  goods: number,
): number => (freeCarriageFrom !== null && goods >= freeCarriageFrom ? 0 : carriage);

/** What goods are short of the supplier's smallest order, minor units; zero when they reach it. */
export const shortOfMinimum = (
  { minimumOrder }: Pick<SupplierTerms, 'minimumOrder'>,
  goods: number,
): number => Math.max(0, minimumOrder - goods);
