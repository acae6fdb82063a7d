import { demandMinor, toMinor } from './amount.ts';
import { type BillLine, type BillTotals, type ChargedTax, discountShares } from './bill.ts';
import { divideRounded } from './round.ts';
import { taxShares } from './tax-shares.ts';

/** A bill as it was issued; its totals hold whatever the rules are today. */
export interface IssuedBill {
  readonly lines: readonly BillLine[];
  readonly totals: Omit<BillTotals, 'subtotal'>;
}

/**
 * What a credit of parts of an issued bill's lines comes to, with their shares of the discount on the whole and
 * of every tax, charged or taken out. Worked out as what is credited with it less what was credited without it: whatever the steps, a
 * bill that is credited whole is credited to the cent, tax by tax.
 * @param before what was credited of each line already, minor units, before discount on the whole and tax
 * @param now what is credited of each line this time; of a line below zero, an amount below zero
 * @throws RangeError when more than a line would be credited
 */
export function creditTotals(
  { lines, totals }: IssuedBill,
  before: readonly number[],
  now: readonly number[],
): BillTotals {
  const after = lines.map((line, index) => {
    const credited = (before[index] ?? 0) + (now[index] ?? 0);
    demandMinor(credited);
    const least = Math.min(0, line.amount);
    if (credited < least || credited > Math.max(0, line.amount))
      throw new RangeError('No more is credited of a line than was billed of it.');
    return credited;
  });
  const discounts = discountShares(lines, {
    rounding: 'half-even',
    discount: { by: 'amount', amount: totals.discount },
  });
  const step = (full: number, index: number): number => {
    const amount = lines[index]?.amount ?? 0;
    return part(full, after[index] ?? 0, amount) - part(full, before[index] ?? 0, amount);
  };
  const sumOf = (shares: readonly number[]): number =>
    shares.reduce((sum, share, index) => sum + step(share, index), 0);
  const net = lines.map((line, index) => line.amount - (discounts[index] ?? 0));
  const known = [...totals.taxes, ...totals.takenOut].map((tax) => ({
    ...tax,
    bearing: kindsOf(tax, lines, net),
  }));
  const within = totals.pricesIncludeTax
    ? known.map(({ amount, ratePpm, bearing }) => ({ amount, ratePpm, kinds: bearing }))
    : [];
  const credited = known.map(({ bearing, ...tax }) => {
    const bases = net.map((amount, index) =>
      bearing.includes(lines[index]?.kind ?? '') ? amount : 0,
    );
    return { ...tax, base: sumOf(bases), amount: sumOf(taxShares(tax, lines, bases, within)) };
  });
  const taxes = credited.slice(0, totals.taxes.length);
  const takenOut = credited.slice(totals.taxes.length);
  const subtotal = now.reduce((sum, amount) => sum + amount, 0);
  const discount = sumOf(discounts);
  const change = totals.pricesIncludeTax
    ? -takenOut.reduce((sum, { amount }) => sum + amount, 0)
    : taxes.reduce((sum, { amount }) => sum + amount, 0);
  return {
    subtotal,
    discount,
    taxes,
    pricesIncludeTax: totals.pricesIncludeTax,
    takenOut,
    total: subtotal - discount + change,
  };
}

/** `of` a whole, that share of a figure: all of it for the whole, nothing for nothing, never back again. */
const part = (figure: number, of: number, whole: number): number =>
  whole === 0
    ? 0
    : toMinor(
        divideRounded(BigInt(figure) * BigInt(Math.abs(of)), BigInt(Math.abs(whole)), 'half-even'),
      );

/**
 * The kinds of line that a tax was charged on. Bills of before this was kept say only its base: they are the
 * kinds whose lines make that up.
 */
function kindsOf(
  { kinds, base }: ChargedTax,
  lines: readonly BillLine[],
  net: readonly number[],
): readonly string[] {
  if (kinds.length > 0) return kinds;
  const present = [...new Set(lines.map(({ kind }) => kind))];
  const sumOf = (chosen: readonly string[]) =>
    lines.reduce(
      (sum, { kind }, index) => (chosen.includes(kind) ? sum + (net[index] ?? 0) : sum),
      0,
    );
  for (let choice = 0; choice < 2 ** present.length; choice += 1) {
    const chosen = present.filter((_, place) => Math.floor(choice / 2 ** place) % 2 === 1);
    if (sumOf(chosen) === base) return chosen;
  }
  return present;
}
