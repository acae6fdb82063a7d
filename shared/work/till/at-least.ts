/**
 * Sums that leave out what has no price yet. A line without a price is unknown, and not nothing: the sum is the
 * least that it can be, and nobody can say that it stays within an amount.
 */

/** `1 line has no price`. */
export const withoutPrice = (lines: number): string =>
  lines === 1 ? '1 line has no price' : `${lines} lines have no price`;

/** The amount, as the least that it can be where lines of it have no price. */
export const atLeast = (amount: string, unpriced: number): string =>
  unpriced > 0 ? `at least ${amount}` : amount;

/** The amount with what it leaves out, to end a sentence with: `at least $24.33; 1 line has no price`. */
export const sumInWords = (amount: string, unpriced: number): string =>
  unpriced > 0 ? `${atLeast(amount, unpriced)}; ${withoutPrice(unpriced)}` : amount;

/**
 * A sum held against an amount that it may come to. What is over stays over, whatever the rest costs; what is
 * below is unknown as long as a line has no price.
 * @param total minor units, what has no price left out
 */
export const againstAmount = (
  total: number,
  limit: number,
  unpriced: number,
): 'within' | 'over' | 'unknown' => (total > limit ? 'over' : unpriced > 0 ? 'unknown' : 'within');
