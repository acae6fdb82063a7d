import { PAYMENT_METHODS, type PaymentKind, type PaymentMethod } from '../../work/vocabulary.ts';
import { sumMinor } from '../amount.ts';

/** The drawer at the end of a day. Money: integer minor units. */

export type ByMethod = Record<PaymentMethod, number>;

export interface MoneyMoved {
  readonly kind: PaymentKind;
  readonly method: PaymentMethod;
  readonly amount: number;
}

/**
 * What must be there, by method: what came in less what was given back, and the cash that the day began
 * with. Change is no matter: it never stayed in the drawer.
 */
export function expectedInDrawer(opening: number, moved: readonly MoneyMoved[]): ByMethod {
  const of = (method: PaymentMethod): number =>
    sumMinor([
      method === 'cash' ? opening : 0,
      ...moved
        .filter((each) => each.method === method)
        .map(({ kind, amount }) => (kind === 'refund' ? -amount : amount)),
    ]);
  return { cash: of('cash'), card: of('card'), transfer: of('transfer'), cheque: of('cheque') };
}

/** Counted less expected, by method and in all: below zero when something is missing. */
export function drawerDifference(
  expected: Partial<ByMethod>,
  counted: Partial<ByMethod>,
): { byMethod: ByMethod; total: number } {
  const of = (method: PaymentMethod) => (counted[method] ?? 0) - (expected[method] ?? 0);
  const byMethod = {
    cash: of('cash'),
    card: of('card'),
    transfer: of('transfer'),
    cheque: of('cheque'),
  };
  return { byMethod, total: sumMinor(PAYMENT_METHODS.map(of)) };
}
