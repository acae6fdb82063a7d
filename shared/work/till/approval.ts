import { discountOn } from '../../money/index.ts';

/** The approved amount is a limit that the program keeps. Money: integer minor units. */

/**
 * What the customer approved: what the latest approval says, else the spending limit agreed at intake, else
 * nothing.
 * @param approvals oldest first
 */
export const approvedAmount = (
  spendingLimit: number | null,
  approvals: readonly { amount: number }[],
): number => approvals.at(-1)?.amount ?? spendingLimit ?? 0;

export interface ToleranceRule {
  /** Millionths of the approved amount. */
  readonly tolerancePpm: number;
  /** Never more than this; null for no cap. */
  readonly toleranceCap: number | null;
}

/**
 * The amount that the bill may come to without asking again: what was approved with the shop's tolerance, or
 * what the owner let it come to since, if that is more.
 * @param job approvals and overrides oldest first, `at` as ISO instants
 */
export function approvedLimit(
  {
    spendingLimit,
    approvals,
    overrides,
  }: {
    spendingLimit: number | null;
    approvals: readonly { amount: number; at: string }[];
    overrides: readonly { amount: number; at: string }[];
  },
  { tolerancePpm, toleranceCap }: ToleranceRule,
): number {
  const approved = approvedAmount(spendingLimit, approvals);
  const share = discountOn(approved, { by: 'share', ppm: tolerancePpm }, 'half-even');
  const limit = approved + Math.min(share, toleranceCap ?? share);
  const lastApproval = approvals.at(-1)?.at ?? '';
  const since = overrides.filter(({ at }) => at >= lastApproval).at(-1);
  return Math.max(limit, since?.amount ?? 0);
}

/** By how much a total passes the limit; 0 when it doesn't. */
export const overApproval = (total: number, limit: number): number => Math.max(0, total - limit);
