import { allocate } from '../allocate.ts';
import { SECURITY } from '../bill.ts';
import { taxShares } from '../tax-shares.ts';

interface IssuedTax {
  readonly name: string;
  readonly ratePpm: number;
  readonly amount: number;
  /** The kinds of line that it was charged on; older bills did not keep them. */
  readonly kinds?: readonly string[];
}

/** A bill as it was issued. Money: integer minor units. */
export interface IssuedBill {
  readonly lines: readonly { readonly kind: string; readonly amount: number }[];
  readonly totals: {
    readonly discount: number;
    readonly pricesIncludeTax: boolean;
    readonly taxes: readonly IssuedTax[];
    /** Taxes within the prices that the customer was exempt from. */
    readonly takenOut: readonly IssuedTax[];
    readonly total: number;
  };
}

/** The kinds of line that a tax is charged on, as far as the shop still knows that tax. */
export type KindsTaxed = (tax: { name: string; ratePpm: number }) => readonly string[] | undefined;

/**
 * What each line of a bill brings the shop: its amount less its share of the discount on the whole, and less
 * the taxes that are within its price or were taken out of it, by the kinds that the bill keeps of each; the shop's rules of today don't
 * change what was posted. A tax whose kinds nobody knows any more is shared out over all lines.
 * Where something was charged, the lines add up to the total less its taxes.
 */
export function netByLine({ lines, totals }: IssuedBill, kindsTaxed: KindsTaxed): number[] {
  const amounts = lines.map(({ amount }) => amount);
  const discounted = less(
    amounts,
    totals.discount,
    lines.map(({ kind, amount }) => (SECURITY.includes(kind) ? 0 : amount)),
  );
  if (!totals.pricesIncludeTax) return discounted;
  const taxes = [...totals.taxes, ...totals.takenOut].map((tax) => ({
    ...tax,
    kinds: tax.kinds?.length ? tax.kinds : kindsTaxed(tax),
  }));
  const within = taxes.flatMap(({ kinds, ...tax }) =>
    kinds === undefined ? [] : [{ ...tax, kinds }],
  );
  return taxes.reduce((net, { kinds, ...tax }) => {
    const bearing = lines.map(({ kind }, index) =>
      kinds === undefined || kinds.includes(kind) ? (discounted[index] ?? 0) : 0,
    );
    if (kinds === undefined || bearing.every((base) => base === 0))
      return less(net, tax.amount, bearing);
    const shares = taxShares(tax, lines, bearing, within);
    return net.map((amount, index) => amount - (shares[index] ?? 0));
  }, discounted);
}

/** Takes an amount off others, shared out by weights, of which those below zero count for nothing. */
function less(amounts: readonly number[], off: number, weights: readonly number[]): number[] {
  if (off === 0 || amounts.length === 0) return [...amounts];
  const positive = weights.map((weight) => Math.max(0, weight));
  const shares = allocate(
    off,
    positive.some((weight) => weight > 0) ? positive : amounts.map(() => 1),
  );
  return amounts.map((amount, index) => amount - (shares[index] ?? 0));
}
