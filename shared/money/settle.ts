/**
 * Sets money against bills, the oldest first: what a bill has too much (it was credited, or came to less than
 * nothing) is free again, and free money pays what is open. After it either nothing is open or nothing is free.
 * All in minor units.
 * @param open what is still to be paid of each bill, oldest first; below zero when it has too much
 * @param free what was paid and is set against no bill
 * @returns what is set against each bill; below zero when it gives money back
 */
export function settle(open: readonly number[], free: number): number[] {
  let left = open.reduce((sum, amount) => sum - Math.min(0, amount), free);
  return open.map((amount) => {
    if (amount < 0) return amount;
    const set = Math.min(amount, Math.max(0, left));
    left -= set;
    return set;
  });
}
