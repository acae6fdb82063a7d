import { and, eq, inArray, lt, sql } from 'drizzle-orm';
import type { Part } from '../../../shared/contract/parts/index.ts';
import { countsAs, partsUsed } from '../../../shared/work/parts/parts-used.ts';
import { kitPiece, stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { chainOf } from './chain.ts';
import { needsOfJob } from './needs.ts';
import { partById } from './part.ts';

const issuedByPart = (store: ReadStore, jobId: string) =>
  store
    .select({
      partId: stockMovement.partId,
      quantity: sql<number>`-sum(${stockMovement.quantity})`,
    })
    .from(stockMovement)
    .where(and(eq(stockMovement.jobId, jobId), inArray(stockMovement.kind, ['issued', 'returned'])))
    .groupBy(stockMovement.partId)
    .all();

const openedFor = (store: ReadStore, jobId: string) =>
  store
    .select({
      kitId: stockMovement.partId,
      opened: sql<number>`-sum(${stockMovement.quantity})`,
    })
    .from(stockMovement)
    .where(
      and(
        eq(stockMovement.jobId, jobId),
        eq(stockMovement.kind, 'kit-opened'),
        lt(stockMovement.quantity, 0),
      ),
    )
    .groupBy(stockMovement.partId)
    .all();

const piecesIn = (store: ReadStore, kitId: string) =>
  store
    .select({ partId: kitPiece.partId, quantity: kitPiece.quantity })
    .from(kitPiece)
    .where(eq(kitPiece.kitId, kitId))
    .all();

/**
 * What the job was given, by the parts of its lines that it counts for; thousandths, less what came back. A
 * part that came back whole isn't there.
 */
export function usedParts(store: ReadStore, jobId: string): { part: Part; quantity: number }[] {
  const used = usedOf(store, jobId, new Set(needsOfJob(store, jobId).keys()));
  return [...used].flatMap(([partId, quantity]) => {
    const part = partById(store, partId);
    return part === undefined ? [] : [{ part, quantity }];
  });
}

/** The same by id, for the parts that some lines name. */
export const usedOf = (
  store: ReadStore,
  jobId: string,
  named: ReadonlySet<string>,
): Map<string, number> =>
  partsUsed({
    issued: new Map(issuedByPart(store, jobId).map(({ partId, quantity }) => [partId, quantity])),
    opened: openedFor(store, jobId).map((kit) => ({ ...kit, pieces: piecesIn(store, kit.kitId) })),
    named,
    chainOf: (partId) => chainOf(store, partId),
  });

/** The part of the job's lines that a part stands in for; itself when it stands in for none. */
export function standsInFor(store: ReadStore, jobId: string, part: Part): Part {
  const named = new Set(needsOfJob(store, jobId).keys());
  const meant = countsAs(part.id, { named, chainOf: (partId) => chainOf(store, partId) });
  return partById(store, meant) ?? part;
}
