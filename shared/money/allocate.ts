import { demandMinor, toMinor } from './amount.ts';

/**
 * Shares an amount out by weight without losing or making a cent: every share is the exact one
 * rounded down or up, and the cents left over go to the largest remainders, the first of equals.
 * @param amount minor units; below zero shares out a credit, as a mirror of the charge
 * @param weights whole numbers, zero or more, not all zero; a weight of zero gets nothing
 * @throws RangeError when the amount or a weight is no such number, or there is nothing to share by
 */
export function allocate(amount: number, weights: readonly number[]): number[] {
  demandMinor(amount);
  for (const weight of weights) {
    if (!Number.isSafeInteger(weight) || weight < 0) {
      throw new RangeError('A weight is a whole number, zero or more.');
    }
  }
  const whole = weights.reduce((total, weight) => total + BigInt(weight), 0n);
  if (whole === 0n) throw new RangeError('There is nothing to share the amount out by.');
  const size = BigInt(Math.abs(amount));
  const shares = weights.map((weight, index) => ({
    index,
    share: (size * BigInt(weight)) / whole,
    remainder: (size * BigInt(weight)) % whole,
  }));
  const handedOut = shares.reduce((total, { share }) => total + share, 0n);
  const luckyFirst = shares.toSorted(
    (a, b) => Number(b.remainder > a.remainder) - Number(b.remainder < a.remainder),
  );
  const lucky = new Set(luckyFirst.slice(0, Number(size - handedOut)).map(({ index }) => index));
  return shares.map(({ index, share }) => {
    const cents = toMinor(lucky.has(index) ? share + 1n : share);
    return amount < 0 && cents !== 0 ? -cents : cents;
  });
}
