const SQRT_TWO_PI = Math.sqrt(2 * Math.PI);
/** From here on the tail's continued fraction is the more exact of the two. */
const TAIL_FROM = 3;

/**
 * Φ(z), the share of a standard normal distribution below z, to better than 1e-14.
 * ±Infinity is allowed.
 *
 * @throws {RangeError} when z is not a number
 */
export function normalBelow(z: number): number {
  if (Number.isNaN(z)) {
    throw new RangeError('The normal distribution has no value at what is not a number.');
  }
  if (z <= -TAIL_FROM) {
    return upperTail(-z);
  }
  if (z >= TAIL_FROM) {
    return 1 - upperTail(z);
  }
  return 0.5 + fromZero(z);
}

/**
 * The share of a standard normal distribution from `low` to `high`, without the cancellation that
 * Φ(high) − Φ(low) suffers far out on one side.
 *
 * @throws {RangeError} when either is not a number or low is above high
 */
export function normalBetween(low: number, high: number): number {
  if (low > high) {
    throw new RangeError(`The low end, ${low}, is above the high end, ${high}.`);
  }
  // The same in the mirror, to the last digit.
  return low + high > 0
    ? normalBelow(-low) - normalBelow(-high)
    : normalBelow(high) - normalBelow(low);
}

function density(z: number): number {
  return Math.exp(-0.5 * z * z) / SQRT_TWO_PI;
}

/** Φ(z) − ½ = φ(z)·(z + z³/3 + z⁵/15 + …): Marsaglia, J. Stat. Software 11(4), 2004 (from memory). */
function fromZero(z: number): number {
  let term = z;
  let sum = 0;
  for (let odd = 1; sum + term !== sum; odd += 2) {
    sum += term;
    term *= (z * z) / (odd + 2);
  }
  return sum * density(z);
}

/** 1 − Φ(z) = φ(z)/(z + 1/(z + 2/(z + …))): Abramowitz & Stegun 26.2.14 (from memory). */
function upperTail(z: number): number {
  if (z === Number.POSITIVE_INFINITY) {
    return 0;
  }
  let below = z;
  for (let step = 120; step >= 1; step -= 1) {
    below = z + step / below;
  }
  return density(z) / below;
}
