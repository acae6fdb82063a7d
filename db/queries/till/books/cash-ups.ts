import { asc, desc, eq, lt } from 'drizzle-orm';
import type { CashUp } from '../../../../shared/contract/till/index.ts';
import type { ByMethod } from '../../../../shared/money/books/index.ts';
import { cashUp, staff } from '../../../schema/index.ts';
import type { ReadStore } from '../../../store.ts';

const whole = (some: Partial<ByMethod>): ByMethod => ({
  cash: 0,
  card: 0,
  transfer: 0,
  cheque: 0,
  ...some,
});

/** How the drawer of a day was counted, oldest first. */
export const cashUpsOf = (store: ReadStore, day: string): CashUp[] =>
  store
    .select({ cashUp, byName: staff.name })
    .from(cashUp)
    .innerJoin(staff, eq(staff.id, cashUp.by))
    .where(eq(cashUp.day, day))
    .orderBy(asc(cashUp.at), asc(cashUp.id))
    .all()
    .map(({ cashUp: { opening, expected, counted, difference, note, at }, byName }) => ({
      opening,
      expected: whole(expected),
      counted: whole(counted),
      difference,
      note,
      by: byName,
      at,
    }));

/** The cash that was counted when the drawer was last counted on a day before this one. */
export function cashLeftBefore(store: ReadStore, day: string): number | null {
  const row = store
    .select({ counted: cashUp.counted })
    .from(cashUp)
    .where(lt(cashUp.day, day))
    .orderBy(desc(cashUp.day), desc(cashUp.at), desc(cashUp.id))
    .limit(1)
    .get();
  return row === undefined ? null : (row.counted.cash ?? 0);
}
