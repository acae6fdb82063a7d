import { inArray, sql } from 'drizzle-orm';
import { stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

const MOST_WEEKS = 52;

/**
 * What was used of each part in whole weeks back from an instant, the last one first: as long as the part
 * has moved, a year at most. Issued less returned; a kit that is opened is used, and its pieces only when
 * they are issued. What is scrapped or missed in a count is loss, and not asked for again.
 * @param at UTC, ISO 8601
 */
export function weeklyUsage(store: ReadStore, at: string): Map<string, number[]> {
  const weeksAgo = sql<number>`CAST((julianday(${at}) - julianday(${stockMovement.at})) / 7 AS INTEGER)`;
  const known = store
    .select({
      partId: stockMovement.partId,
      weeks: sql<number>`CAST((julianday(${at}) - julianday(min(${stockMovement.at}))) / 7 AS INTEGER)`,
    })
    .from(stockMovement)
    .groupBy(stockMovement.partId)
    .all();
  const usage = new Map(
    known.map(({ partId, weeks }) => [
      partId,
      Array.from({ length: Math.max(0, Math.min(MOST_WEEKS, weeks)) }, () => 0),
    ]),
  );
  const used = store
    .select({
      partId: stockMovement.partId,
      weeksAgo,
      // Opening a kit takes the kit off the shelf and puts its pieces onto it: those are not used yet.
      used: sql<number>`sum(iif(${stockMovement.kind} = 'kit-opened', max(-${stockMovement.quantity}, 0), -${stockMovement.quantity}))`,
    })
    .from(stockMovement)
    .where(inArray(stockMovement.kind, ['issued', 'returned', 'kit-opened']))
    .groupBy(stockMovement.partId, weeksAgo)
    .all();
  for (const row of used) {
    const weeks = usage.get(row.partId);
    if (weeks !== undefined && row.weeksAgo >= 0 && row.weeksAgo < weeks.length)
      weeks[row.weeksAgo] = row.used;
  }
  return usage;
}
