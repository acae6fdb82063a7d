import { againstAmount } from '../../../shared/work/till/at-least.ts';

/** A bill held against what may be spent, in minor units. */
export interface AgainstLimit {
  over: number;
  room: number;
  /** Share of the bar for what lies within the limit, per cent of its width. */
  within: number;
  /** Share of the bar for what passes the limit. */
  beyond: number;
  /** Whether it stays within the limit: unknown as long as a line has no price. */
  stands: ReturnType<typeof againstAmount>;
  /** Where on the bar the limit stands. */
  mark: number;
}

/** How a bill stands against the approved limit; the bar is as long as the larger of the two. */
export function againstLimit(total: number, limit: number, unpriced = 0): AgainstLimit {
  const length = Math.max(total, limit, 1);
  const share = (amount: number) => (100 * amount) / length;
  const over = Math.max(0, total - limit);
  return {
    over,
    room: Math.max(0, limit - total),
    stands: againstAmount(total, limit, unpriced),
    within: share(Math.min(total, limit)),
    beyond: share(over),
    mark: share(limit),
  };
}
