import { fold } from '../work/fold.ts';
import type { KeptTax } from './taxes-for.ts';

type NamedTax = Pick<KeptTax, 'name' | 'place' | 'from' | 'until'>;

const placesMeet = (a: string, b: string): boolean => a === '' || b === '' || a === b;

/** Dates are ISO calendar dates, which sort as text; null has no end on its side. */
const daysMeet = (a: NamedTax, b: NamedTax): boolean =>
  (a.from ?? '') <= (b.until ?? '~') && (b.from ?? '') <= (a.until ?? '~');

/**
 * The place in the list, from 0, of the first tax that shares its name with one before it while both can
 * fall on the same bill; null when there is none. One name for a tax whose rate changed, or which differs
 * from place to place, is as it should be.
 */
export function sameTaxTwice(taxes: readonly NamedTax[]): number | null {
  const place = taxes.findIndex((tax, index) =>
    taxes
      .slice(0, index)
      .some(
        (other) =>
          fold(other.name) === fold(tax.name) &&
          placesMeet(other.place, tax.place) &&
          daysMeet(other, tax),
      ),
  );
  return place === -1 ? null : place;
}
