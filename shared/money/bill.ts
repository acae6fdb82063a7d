import { allocate } from './allocate.ts';
import { demandMinor, toMinor } from './amount.ts';
import { type DiscountRule, discountOn } from './line.ts';
import { divideRounded, type Rounding } from './round.ts';

/** Where tax is rounded: on each line, or once on the whole bill. */
export const TAX_BASES = ['line', 'invoice'] as const;
export type TaxBasis = (typeof TAX_BASES)[number];

export interface BillRules {
  readonly rounding: Rounding;
  readonly basis: TaxBasis;
  /** The taxes are within the prices, and not added to them. */
  readonly pricesIncludeTax?: boolean;
  /** Taxes that are within the prices, and that this customer is exempt from. */
  readonly takenOut?: readonly BillTax[];
  /** Off the whole bill, shared out over its lines so that each tax is charged on what is left. */
  readonly discount?: DiscountRule | null;
}

export interface BillLine {
  readonly kind: string;
  /** Minor units; less than zero for a credit. */
  readonly amount: number;
}

export interface BillTax {
  readonly name: string;
  /** Millionths: 62500 is 6.25 %. */
  readonly ratePpm: number;
  /** The kinds of line that it is charged on. */
  readonly kinds: readonly string[];
}

export interface ChargedTax {
  name: string;
  ratePpm: number;
  /** The kinds of line that it was charged on. */
  kinds: string[];
  base: number;
  amount: number;
}

export interface BillTotals {
  /** Sum of the lines, minor units. */
  subtotal: number;
  /** What the discount on the whole bill takes off, zero or more. */
  discount: number;
  /** `base` is what the tax is charged on: with the tax when prices include it. */
  taxes: ChargedTax[];
  pricesIncludeTax: boolean;
  /** Taxes that were within the prices and are taken out of them: the customer is exempt. */
  takenOut: ChargedTax[];
  /** The subtotal less the discount and what is taken out, and every tax that is not within the prices. */
  total: number;
}

/** 100 % in millionths. */
const WHOLE = 1_000_000n;

/** A core is security for an old part, and not a sale: no discount touches it. */
export const SECURITY: readonly string[] = ['core-charge', 'core-credit'];

/**
 * What lines come to with their taxes, in minor units. Every tax is worked out on the lines alone,
 * never on another tax; one that meets no line of its kinds stands there with zero. Who is exempt from taxes
 * that are within the prices pays what is left of the prices without them: price / (1 + rate).
 * @throws RangeError for an amount that is no whole number, a rate below zero, or a sum beyond 2^53
 */
export function billTotals(
  lines: readonly BillLine[],
  taxes: readonly BillTax[],
  rules: BillRules,
): BillTotals {
  for (const line of lines) demandMinor(line.amount);
  const takenOut = rules.pricesIncludeTax ? (rules.takenOut ?? []) : [];
  const all = [...taxes, ...takenOut];
  for (const { ratePpm } of all) {
    if (!Number.isSafeInteger(ratePpm) || ratePpm < 0) {
      throw new RangeError('A tax rate is a whole number of millionths, zero or more.');
    }
  }
  const subtotal = toMinor(sum(lines.map((line) => BigInt(line.amount))));
  const shares = discountShares(lines, rules);
  const discount = toMinor(sum(shares.map(BigInt)));
  const net = lines.map((line, index) => ({
    kind: line.kind,
    amount: BigInt(line.amount) - BigInt(shares[index] ?? 0),
  }));
  const pricesIncludeTax = rules.pricesIncludeTax ?? false;
  const amounts = pricesIncludeTax ? within(net, all, rules) : onTop(net, taxes, rules);
  const charged = all.map(({ name, ratePpm, kinds }, index) => ({
    name,
    ratePpm,
    kinds: [...kinds],
    base: toMinor(sum(net.filter(({ kind }) => kinds.includes(kind)).map(({ amount }) => amount))),
    amount: toMinor(amounts[index] ?? 0n),
  }));
  const change = pricesIncludeTax ? -sum(amounts.slice(taxes.length)) : sum(amounts);
  return {
    subtotal,
    discount,
    taxes: charged.slice(0, taxes.length),
    pricesIncludeTax,
    takenOut: charged.slice(taxes.length),
    total: toMinor(BigInt(subtotal) - BigInt(discount) + change),
  };
}

interface NetLine {
  kind: string;
  amount: bigint;
}

/** What each line bears of the discount on the whole, minor units. */
export function discountShares(
  lines: readonly BillLine[],
  rules: Pick<BillRules, 'discount' | 'rounding'>,
): number[] {
  const weights = lines.map(({ kind, amount }) =>
    SECURITY.includes(kind) ? 0 : Math.max(0, amount),
  );
  const base = toMinor(sum(weights.map(BigInt)));
  const off = discountOn(base, rules.discount ?? null, rules.rounding);
  return off === 0 ? lines.map(() => 0) : allocate(off, weights);
}

function onTop(lines: readonly NetLine[], taxes: readonly BillTax[], rules: BillRules): bigint[] {
  return taxes.map(({ kinds, ratePpm }) => {
    const bases = lines.filter(({ kind }) => kinds.includes(kind)).map(({ amount }) => amount);
    const taxOn = (base: bigint) => divideRounded(base * BigInt(ratePpm), WHOLE, rules.rounding);
    return rules.basis === 'line' ? sum(bases.map(taxOn)) : taxOn(sum(bases));
  });
}

/**
 * Taxes that are within the prices. Lines that bear the same taxes are taken together (or each by itself,
 * when the line is the basis); what is in their price is rounded once and shared out by rate, so that net
 * and taxes always make up the price.
 */
function within(lines: readonly NetLine[], taxes: readonly BillTax[], rules: BillRules): bigint[] {
  const borne = (kind: string) =>
    taxes.flatMap((tax, index) => (tax.kinds.includes(kind) && tax.ratePpm > 0 ? [index] : []));
  const groups =
    rules.basis === 'line'
      ? lines.map((line) => ({ taxes: borne(line.kind), amount: line.amount }))
      : [...Map.groupBy(lines, ({ kind }) => borne(kind).join())].map(([, group]) => ({
          taxes: borne(group[0]?.kind ?? ''),
          amount: sum(group.map(({ amount }) => amount)),
        }));
  const totals = taxes.map(() => 0n);
  for (const { taxes: bearing, amount } of groups) {
    if (bearing.length === 0) continue;
    const rates = bearing.map((index) => taxes[index]?.ratePpm ?? 0);
    const rate = sum(rates.map(BigInt));
    const inside = toMinor(divideRounded(amount * rate, WHOLE + rate, rules.rounding));
    allocate(inside, rates).forEach((share, place) => {
      const index = bearing[place];
      if (index !== undefined) totals[index] = (totals[index] ?? 0n) + BigInt(share);
    });
  }
  return totals;
}

const sum = (amounts: readonly bigint[]): bigint =>
  amounts.reduce((total, amount) => total + amount, 0n);

const ROUNDING_WORDS: Record<Rounding, string> = {
  'half-up': 'a half up',
  'half-even': 'a half to the even digit',
};
const BASIS_WORDS: Record<TaxBasis, string> = {
  line: 'on each line',
  invoice: 'on the whole bill',
};

/** The rounding rule as it is printed on a bill, in words that hold for currencies without cents too. */
export const roundingSentence = ({ rounding, basis }: BillRules): string =>
  `Tax is rounded to the last digit shown, ${ROUNDING_WORDS[rounding]}, ${BASIS_WORDS[basis]}.`;
