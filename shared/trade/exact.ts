import { finite } from './demand.ts';

/**
 * Decimal arithmetic without rounding dust. What a person typed is a decimal number; in binary
 * floating point 68.05 − 68.02 comes out as 0.030000000000001137, and a limit may then be missed
 * by nothing. Here a number is taken for the decimal it prints as, is worked on as a fraction of
 * whole numbers, and comes back as the nearest double.
 */
export interface Fraction {
  readonly numerator: bigint;
  /** Always more than zero. */
  readonly denominator: bigint;
}

const DECIMAL = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/;
/** More than the 17 digits that settle a double. */
const DIGITS = 30;

/** The fraction that a finite number, or a decimal written out, stands for. */
export function fraction(value: number | string): Fraction {
  const match = DECIMAL.exec(String(value));
  if (match === null) {
    throw new RangeError(`'${value}' is not a finite number.`);
  }
  const [, sign = '', whole = '', decimals = '', exponent = '0'] = match;
  const digits = BigInt(sign + whole + decimals);
  const power = Number(exponent) - decimals.length;
  return power >= 0
    ? { numerator: digits * 10n ** BigInt(power), denominator: 1n }
    : { numerator: digits, denominator: 10n ** BigInt(-power) };
}

export function plus(a: Fraction, b: Fraction): Fraction {
  return {
    numerator: a.numerator * b.denominator + b.numerator * a.denominator,
    denominator: a.denominator * b.denominator,
  };
}

export function minus(a: Fraction, b: Fraction): Fraction {
  return plus(a, { numerator: -b.numerator, denominator: b.denominator });
}

export function times(a: Fraction, b: Fraction): Fraction {
  return {
    numerator: a.numerator * b.numerator,
    denominator: a.denominator * b.denominator,
  };
}

/** @throws {RangeError} when b is zero. */
export function over(a: Fraction, b: Fraction): Fraction {
  if (b.numerator === 0n) {
    throw new RangeError('Nothing can be divided by zero.');
  }
  const sign = b.numerator < 0n ? -1n : 1n;
  return times(a, { numerator: sign * b.denominator, denominator: sign * b.numerator });
}

/**
 * The double nearest to the fraction.
 *
 * @throws {RangeError} when it is larger than any double
 */
export function toNumber({ numerator, denominator }: Fraction): number {
  if (numerator === 0n) {
    return 0;
  }
  const sign = numerator < 0n ? '-' : '';
  const size = numerator < 0n ? -numerator : numerator;
  const power = DIGITS - (String(size).length - String(denominator).length);
  const above = power > 0 ? size * 10n ** BigInt(power) : size;
  const below = power < 0 ? denominator * 10n ** BigInt(-power) : denominator;
  // A last digit of one for whatever is left over keeps a value just above a tie above it.
  const rest = above % below === 0n ? '0' : '1';
  return finite(Number(`${sign}${above / below}${rest}e${-power - 1}`));
}

/** a − b as decimals: difference(68.05, 68.02) is 0.03. */
export function difference(a: number, b: number): number {
  return toNumber(minus(fraction(a), fraction(b)));
}

/** a + b as decimals. */
export function sum(a: number, b: number): number {
  return toNumber(plus(fraction(a), fraction(b)));
}

/** a × b as decimals. */
export function product(a: number, b: number): number {
  return toNumber(times(fraction(a), fraction(b)));
}

/** a ÷ b of the decimals, rounded once. @throws {RangeError} when b is zero. */
export function quotient(a: number, b: number): number {
  return toNumber(over(fraction(a), fraction(b)));
}
