import { eq } from 'drizzle-orm';
import { counterNumber } from './schema/index.ts';
import type { WriteStore } from './store.ts';

export type NumberKind =
  | 'customer'
  | 'job'
  | 'estimate'
  | 'invoice'
  | 'work-order'
  | 'clearance-sheet'
  | 'credit-note'
  | 'receipt'
  | 'statement'
  | 'purchase-order';

/**
 * The next number of a kind. It is taken inside the transaction that uses it: when that fails, the number
 * was never taken, so that there are no gaps.
 */
export function nextNumber(store: WriteStore, kind: NumberKind): number {
  const next =
    store.select().from(counterNumber).where(eq(counterNumber.kind, kind)).get()?.next ?? 1;
  store
    .insert(counterNumber)
    .values({ kind, next: next + 1 })
    .onConflictDoUpdate({ target: counterNumber.kind, set: { next: next + 1 } })
    .run();
  return next;
}
