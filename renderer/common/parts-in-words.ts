import type { BilledPart } from '../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../shared/money/index.ts';

/** How much there is to issue: `2 parts` where all are counted in pieces, else how many different ones. */
export function partsInWords(parts: readonly BilledPart[], locale: string): string {
  const counted = parts.every(({ part }) => part.unit === 'pc');
  const quantity = counted
    ? parts.reduce((sum, { onShelf }) => sum + onShelf, 0)
    : parts.length * 1000;
  return quantity === 1000 ? '1 part' : `${formatQuantity(quantity, locale)} parts`;
}
