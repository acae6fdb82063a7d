import { demandFinite, demandPositive, demandWhole } from './demand.ts';
import { product } from './exact.ts';

/** A third of 24 is 8, though a third can't be written as a decimal. */
const DIGITS = 12;

/**
 * Torques of the stages of a tightening, in the unit of `final`: each share of it in turn. The last
 * share is 1, so that the group ends at the stated torque.
 *
 * @throws {RangeError} when `final` isn't positive, there is no share, a share isn't above 0 and at
 * most 1, they don't rise, or the last isn't 1
 */
export function torqueStages(final: number, shares: readonly number[]): number[] {
  demandPositive(final, 'the final torque');
  let before = 0;
  for (const share of shares) {
    demandFinite(share, 'a share of the torque');
    if (share <= before || share > 1) {
      throw new RangeError(
        `The shares of the stages must rise from above 0 to 1; ${share} after ${before} does not.`,
      );
    }
    before = share;
  }
  if (before !== 1) {
    throw new RangeError('The last stage must be the whole torque: end the shares with 1.');
  }
  return shares.map((share) =>
    share === 1 ? final : Number(product(final, share).toPrecision(DIGITS)),
  );
}

/**
 * How bolts are numbered and in which order they are tightened:
 * - `cross`: bolts in a ring, numbered around it; always the one opposite next, quarters, eighths
 *   and so on in between. With an odd number it is a star.
 * - `star`: the same order by its other name.
 * - `spiral`: two rows, numbered along the one and then, from the same end, along the other (with an
 *   odd number the first is longer by one); from the middle outwards, round and round.
 * - `in-line`: one row, numbered from one end; from the middle outwards, side by side.
 * - `in-turn`: in the order of the numbers.
 */
export const TIGHTENING_PATTERNS = ['cross', 'star', 'spiral', 'in-line', 'in-turn'] as const;

export type TighteningPattern = (typeof TIGHTENING_PATTERNS)[number];

const MOST_BOLTS = 64;

/**
 * The numbers of the bolts, from 1, in the order in which they are tightened; each comes once. A
 * sequence from the maker goes before any of these. Common practice; `cross` agrees with the legacy
 * pattern of ASME PCC-1 for 4, 8, 12 and 16 bolts (from memory).
 *
 * @throws {RangeError} when the count isn't 1 to 64 or the pattern is unknown
 */
export function tighteningOrder(boltCount: number, pattern: TighteningPattern): number[] {
  demandWhole(boltCount, 1, MOST_BOLTS, 'the number of bolts');
  switch (pattern) {
    case 'cross':
    case 'star':
      return aroundRing(boltCount);
    case 'spiral':
      return alongTwoRows(boltCount);
    case 'in-line':
      return fromMiddle(boltCount);
    case 'in-turn':
      return Array.from({ length: boltCount }, (_, index) => index + 1);
    default:
      throw new RangeError(
        `'${String(pattern)}' is not a pattern that is known here: ${TIGHTENING_PATTERNS.join(', ')}.`,
      );
  }
}

function aroundRing(count: number): number[] {
  if (count % 2 === 1) {
    // One short of half the ring has no divisor in common with it, so every bolt is met once.
    const step = (count - 1) / 2;
    return Array.from({ length: count }, (_, index) => ((index * step) % count) + 1);
  }
  const half = count / 2;
  return aroundRing(half).flatMap((bolt) => [bolt, bolt + half]);
}

function alongTwoRows(count: number): number[] {
  const row = Math.ceil(count / 2);
  return fromMiddle(row)
    .flatMap((place, index) => (index % 2 === 0 ? [place, place + row] : [place + row, place]))
    .filter((bolt) => bolt <= count);
}

function fromMiddle(count: number): number[] {
  const middle = Math.ceil(count / 2);
  return Array.from({ length: count }, (_, index) =>
    index % 2 === 1 ? middle + (index + 1) / 2 : middle - index / 2,
  );
}
