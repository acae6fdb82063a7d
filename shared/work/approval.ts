/** The approved amount is a limit that the program keeps. Money: integer minor units. */

/**
 * The amount that the bill may come to without asking again: what the latest approval says, else the
 * spending limit agreed at intake, else nothing.
 * @param approvals oldest first
 */
export const approvedLimit = (
  spendingLimit: number | null,
  approvals: readonly { amount: number }[],
): number => approvals.at(-1)?.amount ?? spendingLimit ?? 0;

/** By how much a total passes the limit; 0 when it doesn't. */
export const overApproval = (total: number, limit: number): number => Math.max(0, total - limit);
