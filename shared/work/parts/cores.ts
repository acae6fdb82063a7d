/**
 * Old parts against core charges: taken in from customers, sent back to the supplier, credited or refused
 * there. Quantities are whole thousandths, amounts minor units.
 */

export const CORE_MOVEMENTS = ['taken-in', 'sent-back', 'credited', 'refused'] as const;
export type CoreMovementKind = (typeof CORE_MOVEMENTS)[number];

export const CORE_MOVEMENT_LABELS: Record<CoreMovementKind, string> = {
  'taken-in': 'Taken in',
  'sent-back': 'Sent back',
  credited: 'Credited',
  refused: 'Refused',
};

/** What a core charge is called on a bill. */
export const coreChargeWords = (part: { description: string; number: string }): string =>
  `Core charge, ${part.description} ${part.number}`;

export interface CoreMovement {
  kind: CoreMovementKind;
  quantity: number;
  amount: number;
}

export interface CoreStanding {
  /** In the shop. */
  here: number;
  /** With the supplier, neither credited nor refused. */
  away: number;
  /** What is expected for those that are away. */
  expected: number;
  credited: number;
}

/**
 * Where the cores of one part are. What a refused or credited one was expected to bring goes off the sum
 * with it, in the share of those that were away.
 */
export function coreStanding(movements: readonly CoreMovement[]): CoreStanding {
  const standing = { here: 0, away: 0, expected: 0, credited: 0 };
  for (const { kind, quantity, amount } of movements) {
    if (kind === 'taken-in') standing.here += quantity;
    else if (kind === 'sent-back') {
      standing.here -= quantity;
      standing.away += quantity;
      standing.expected += amount;
    } else {
      const settled =
        quantity >= standing.away
          ? standing.expected
          : Math.round((standing.expected * quantity) / standing.away);
      standing.away -= quantity;
      standing.expected -= settled;
      if (kind === 'credited') standing.credited += amount;
    }
  }
  return standing;
}
