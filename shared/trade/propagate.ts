import { demandFinite, demandNotNegative } from './demand.ts';
import type { MeasuredSize } from './uncertainty.ts';

/**
 * A figure that is computed from measured ones, with its expanded uncertainty: each size in turn is
 * moved by its uncertainty up and down, and half of what that does to the figure is its share; the
 * shares add as the root of the sum of squares. The sizes are taken to be independent and to have
 * one coverage factor. Source: JCGM 100:2008 (GUM), 5.1.2 and 5.1.3, note 2.
 *
 * @param of the figure from the values, in the order of `sizes`
 * @throws {RangeError} when a value or an uncertainty isn't finite, or an uncertainty is negative
 */
export function propagate(
  sizes: readonly MeasuredSize[],
  of: (values: readonly number[]) => number,
): MeasuredSize {
  for (const { value, uncertainty } of sizes) {
    demandFinite(value, 'a size');
    demandNotNegative(uncertainty, 'an uncertainty');
  }
  const values = sizes.map(({ value }) => value);
  const shares = sizes.map(({ value, uncertainty }, index) =>
    uncertainty === 0
      ? 0
      : (of(values.with(index, value + uncertainty)) -
          of(values.with(index, value - uncertainty))) /
        2,
  );
  return { value: of(values), uncertainty: Math.hypot(...shares) };
}
