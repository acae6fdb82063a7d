import { allocate } from './allocate.ts';
import { toMinor } from './amount.ts';
import { divideRounded } from './round.ts';

const WHOLE = 1_000_000n;

interface Tax {
  readonly amount: number;
  readonly ratePpm: number;
  readonly kinds: readonly string[];
}

/**
 * What each line bears of a tax, in minor units: together the tax as it was charged. Where lines bear the same
 * taxes, by their size; with credits among them, or where other taxes are within the price of some of them, the
 * sum says little of each: its own rate does, and the cents left over are shared out.
 * @param bases what each line is taxed on, zero for those that don't bear it
 * @param within all taxes that are within the prices; none when taxes are added to them
 */
export function taxShares(
  { amount, ratePpm }: Pick<Tax, 'amount' | 'ratePpm'>,
  lines: readonly { readonly kind: string }[],
  bases: readonly number[],
  within: readonly Tax[],
): number[] {
  const sizes = bases.map(Math.abs);
  if (sizes.every((size) => size === 0)) return bases.map(() => 0);
  const inPrice = lines.map(({ kind }) =>
    within.reduce((sum, tax) => sum + (tax.kinds.includes(kind) ? tax.ratePpm : 0), 0),
  );
  const alike = new Set(inPrice.filter((_, index) => bases[index] !== 0)).size === 1;
  if (alike && bases.every((base) => base >= 0)) return allocate(amount, sizes);
  const own = bases.map((base, index) =>
    toMinor(
      divideRounded(
        BigInt(base) * BigInt(ratePpm),
        WHOLE + BigInt(inPrice[index] ?? 0),
        'half-even',
      ),
    ),
  );
  const rest = allocate(amount - own.reduce((sum, share) => sum + share, 0), sizes);
  return own.map((share, index) => share + (rest[index] ?? 0));
}
