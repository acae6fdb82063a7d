/**
 * How the half of a minor unit is settled. `half-up` goes away from zero, so that a credit undoes a
 * charge to the cent; `half-even` goes to the even neighbour.
 */
export const ROUNDINGS = ['half-up', 'half-even'] as const;
export type Rounding = (typeof ROUNDINGS)[number];

/**
 * The whole number nearest to a fraction.
 * @param denominator more than zero
 * @throws RangeError when the denominator is zero or less
 */
export function divideRounded(numerator: bigint, denominator: bigint, rounding: Rounding): bigint {
  if (denominator <= 0n) throw new RangeError('Divide by a whole number above zero.');
  const size = numerator < 0n ? -numerator : numerator;
  const whole = size / denominator;
  const twice = 2n * (size % denominator);
  const up = twice > denominator || (twice === denominator && halfGoesUp(whole, rounding));
  const rounded = up ? whole + 1n : whole;
  return numerator < 0n ? -rounded : rounded;
}

const halfGoesUp = (whole: bigint, rounding: Rounding): boolean =>
  rounding === 'half-up' || whole % 2n === 1n;
