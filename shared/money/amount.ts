/** @throws RangeError when `amount` is not a whole number of minor units that a number holds exactly */
export function demandMinor(amount: number): void {
  if (!Number.isSafeInteger(amount)) {
    throw new RangeError('An amount is a whole number of minor units.');
  }
}

/**
 * An amount that was worked out in BigInt, as a number again.
 * @throws RangeError when a number can't hold it exactly (beyond 2^53)
 */
export function toMinor(amount: bigint): number {
  const minor = Number(amount);
  if (!Number.isSafeInteger(minor)) {
    throw new RangeError('That amount is more than any bill here can be.');
  }
  return minor;
}

/**
 * The sum of amounts, in minor units; zero for none.
 * @throws RangeError when an amount is no whole number, or the sum lies beyond 2^53
 */
export function sumMinor(amounts: readonly number[]): number {
  for (const amount of amounts) demandMinor(amount);
  return toMinor(amounts.reduce((sum, amount) => sum + BigInt(amount), 0n));
}
