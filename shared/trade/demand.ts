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

function capital(what: string): string {
  return what.charAt(0).toUpperCase() + what.slice(1);
}
