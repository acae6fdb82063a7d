import type { PartId } from '../../../shared/contract/ids.ts';
import type { Part } from '../../../shared/contract/parts/index.ts';

/** A part that labels are wanted for. */
export interface Wanted {
  partId: PartId;
  number: string;
  description: string;
  bin: string;
  onHand: number;
  copies: number;
}

export const MOST_COPIES = 500;

/** The list with more parts after it; one that is on it already stays as it is. */
export function withParts(list: readonly Wanted[], parts: readonly Part[]): Wanted[] {
  const known = new Set<string>(list.map(({ partId }) => partId));
  const more = parts
    .filter(({ id }) => !known.has(id))
    .map(({ id, number, description, bin, onHand }) => ({
      partId: id,
      number,
      description,
      bin,
      onHand,
      copies: 1,
    }));
  return [...list, ...more];
}

/** A label for each whole piece that is on hand; parts of which there are none are left out. */
export const oneForEach = (list: readonly Wanted[]): Wanted[] =>
  list
    .map((wanted) => ({
      ...wanted,
      copies: Math.min(MOST_COPIES, Math.floor(wanted.onHand / 1000)),
    }))
    .filter(({ copies }) => copies > 0);

export const labelsOf = (list: readonly Wanted[]): number =>
  list.reduce((sum, { copies }) => sum + copies, 0);
