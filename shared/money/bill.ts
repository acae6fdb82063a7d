import { demandMinor, toMinor } from './amount.ts';
import { divideRounded, type Rounding } from './round.ts';

/** Where tax is rounded: on each line, or once on the whole bill. */
export const TAX_BASES = ['line', 'invoice'] as const;
export type TaxBasis = (typeof TAX_BASES)[number];

export interface BillRules {
  readonly rounding: Rounding;
  readonly basis: TaxBasis;
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

export interface BillTotals {
  /** Sum of the lines, minor units. */
  subtotal: number;
  taxes: { name: string; ratePpm: number; base: number; amount: number }[];
  /** The subtotal and every tax. */
  total: number;
}

/** 100 % in millionths. */
const WHOLE = 1_000_000n;

/**
 * What lines come to with their taxes, in minor units. Every tax is worked out on the lines alone,
 * never on another tax; one that meets no line of its kinds stands there with zero.
 * @throws RangeError for an amount that is no whole number, a rate below zero, or a sum beyond 2^53
 */
export function billTotals(
  lines: readonly BillLine[],
  taxes: readonly BillTax[],
  rules: BillRules,
): BillTotals {
  for (const line of lines) demandMinor(line.amount);
  const subtotal = sum(lines.map((line) => BigInt(line.amount)));
  const charged = taxes.map((tax) => charge(tax, lines, rules));
  return {
    subtotal: toMinor(subtotal),
    taxes: charged.map(({ name, ratePpm, base, amount }) => ({
      name,
      ratePpm,
      base: toMinor(base),
      amount: toMinor(amount),
    })),
    total: toMinor(subtotal + sum(charged.map((tax) => tax.amount))),
  };
}

function charge(tax: BillTax, lines: readonly BillLine[], { rounding, basis }: BillRules) {
  if (!Number.isSafeInteger(tax.ratePpm) || tax.ratePpm < 0) {
    throw new RangeError('A tax rate is a whole number of millionths, zero or more.');
  }
  const rate = BigInt(tax.ratePpm);
  const bases = lines
    .filter((line) => tax.kinds.includes(line.kind))
    .map((line) => BigInt(line.amount));
  const base = sum(bases);
  const taxOn = (amount: bigint) => divideRounded(amount * rate, WHOLE, rounding);
  return {
    name: tax.name,
    ratePpm: tax.ratePpm,
    base,
    amount: basis === 'line' ? sum(bases.map(taxOn)) : taxOn(base),
  };
}

const sum = (amounts: readonly bigint[]): bigint =>
  amounts.reduce((total, amount) => total + amount, 0n);

const ROUNDING_WORDS: Record<Rounding, string> = {
  'half-up': 'half up to the cent',
  'half-even': 'to the cent, a half to the even one,',
};
const BASIS_WORDS: Record<TaxBasis, string> = {
  line: 'on each line',
  invoice: 'on the whole bill',
};

/** The rounding rule as it is printed on a bill; 'cent' stands for the smallest unit of any currency. */
export const roundingSentence = ({ rounding, basis }: BillRules): string =>
  `Tax is rounded ${ROUNDING_WORDS[rounding]} ${BASIS_WORDS[basis]}.`;
