/** How far an order to a supplier has come, by what is in of it. Whole thousandths. */

export const ORDER_STATES = ['awaited', 'part-in', 'complete'] as const;
export type OrderState = (typeof ORDER_STATES)[number];

export const ORDER_STATE_LABELS: Record<OrderState, string> = {
  awaited: 'Awaited',
  'part-in': 'In part',
  complete: 'Complete',
};

/** @param lines what is owed of each, and what came in */
export function orderState(
  lines: readonly { readonly owed: number; readonly received: number }[],
): OrderState {
  if (lines.every(({ owed }) => owed <= 0)) return 'complete';
  return lines.some(({ received }) => received > 0) ? 'part-in' : 'awaited';
}
