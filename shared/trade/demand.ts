/**
 * What every function of the trade asks of its numbers. `what` is how a sentence names the figure:
 * 'the bore', 'the temperature'.
 */

/** @throws {RangeError} unless value is a finite number. */
export function demandFinite(value: number, what: string): void {
  if (!Number.isFinite(value)) {
    throw new RangeError(`${capital(what)} must be a number; ${value} is none.`);
  }
}

/** @throws {RangeError} unless value is finite and more than zero. */
export function demandPositive(value: number, what: string): void {
  demandFinite(value, what);
  if (value <= 0) {
    throw new RangeError(`${capital(what)} must be more than zero; it is ${value}.`);
  }
}

/** @throws {RangeError} unless value is finite and zero or more. */
export function demandNotNegative(value: number, what: string): void {
  demandFinite(value, what);
  if (value < 0) {
    throw new RangeError(`${capital(what)} can't be negative; it is ${value}.`);
  }
}

/** @throws {RangeError} unless value is finite and low ≤ value ≤ high. */
export function demandBetween(value: number, low: number, high: number, what: string): void {
  demandFinite(value, what);
  if (value < low || value > high) {
    throw new RangeError(`${capital(what)} must be from ${low} to ${high}; it is ${value}.`);
  }
}

/** @throws {RangeError} unless value is a whole number, low ≤ value ≤ high. */
export function demandWhole(value: number, low: number, high: number, what: string): void {
  if (!Number.isInteger(value) || value < low || value > high) {
    throw new RangeError(
      `${capital(what)} must be a whole number from ${low} to ${high}; it is ${value}.`,
    );
  }
}

/**
 * A result as it is, unless the figures were so large or so small together that it can't be held.
 *
 * @throws {RangeError} unless result is a finite number
 */
export function finite(result: number): number {
  if (!Number.isFinite(result)) {
    throw new RangeError('These figures are too large or too small to be worked out together.');
  }
  return result;
}

function capital(what: string): string {
  return what.charAt(0).toUpperCase() + what.slice(1);
}
