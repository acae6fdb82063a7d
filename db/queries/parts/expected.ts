import { asc, eq, inArray, sql } from 'drizzle-orm';
import type { PurchaseOrderLine } from '../../../shared/contract/parts/index.ts';
import { expectedChange, purchaseOrder, purchaseOrderLine, staff } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/**
 * Of an order's line among others: the day that what is to come of it is expected on, as the supplier said
 * last; null when nobody knows.
 */
export const expectedDay = sql<string | null>`iif(
  EXISTS (SELECT 1 FROM ${expectedChange} WHERE ${expectedChange.lineId} = ${purchaseOrderLine.id}),
  (
    SELECT ${expectedChange.expectedOn} FROM ${expectedChange}
    WHERE ${expectedChange.lineId} = ${purchaseOrderLine.id} ORDER BY ${expectedChange.id} DESC LIMIT 1
  ),
  coalesce(${purchaseOrderLine.expectedOn}, ${purchaseOrder.expectedOn})
)`;

type Change = PurchaseOrderLine['expectedChanges'][number];

/** Each time that another day was named for some lines, by line, the first at the head. */
export function expectedChanges(
  store: ReadStore,
  lineIds: readonly string[],
): Map<string, Change[]> {
  const rows = store
    .select({ change: expectedChange, by: staff.name })
    .from(expectedChange)
    .innerJoin(staff, eq(staff.id, expectedChange.by))
    .where(inArray(expectedChange.lineId, [...lineIds]))
    .orderBy(asc(expectedChange.id))
    .all();
  const of = Map.groupBy(rows, ({ change }) => change.lineId);
  return new Map(
    [...of].map(([lineId, changes]) => [
      lineId,
      changes.map(({ change: { expectedOn, former, reason, at }, by }) => ({
        expectedOn,
        former,
        reason,
        by,
        at,
      })),
    ]),
  );
}
