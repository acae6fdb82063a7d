/** Cash on the counter, in minor units. */
export type CashCount =
  | { kind: 'change'; change: number }
  /** Less was given than is to be taken. */
  | { kind: 'short'; short: number };

/** What goes back to the customer, or what is missing. */
export const countCash = (toTake: number, given: number): CashCount =>
  given < toTake
    ? { kind: 'short', short: toTake - given }
    : { kind: 'change', change: given - toTake };
