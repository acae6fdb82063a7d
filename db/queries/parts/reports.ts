import { and, asc, eq, inArray, lt, max, or, sql } from 'drizzle-orm';
import { part, stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import type { Span } from '../till/books/span.ts';
import { within } from '../till/books/span.ts';
import { shelfSums } from './shelf.ts';

/** What the reports of the stores read from the ledger. Quantities are thousandths, worth minor units. */

export interface UsedPart {
  partId: string;
  number: string;
  description: string;
  unit: string;
  at: string;
  /** Used; below zero for what came back. */
  quantity: number;
  /** What it had cost. */
  cost: number;
  /** A kit that was opened: what was in it is used when its pieces are. */
  opened: boolean;
}

/** Issued less returned, and kits that were opened, as they happened. */
const isUse = or(
  inArray(stockMovement.kind, ['issued', 'returned']),
  and(eq(stockMovement.kind, 'kit-opened'), lt(stockMovement.quantity, 0)),
);

export const usedParts = (store: ReadStore, span: Span): UsedPart[] =>
  store
    .select({
      partId: part.id,
      number: part.number,
      description: part.description,
      unit: part.unit,
      at: stockMovement.at,
      quantity: sql<number>`-${stockMovement.quantity}`,
      cost: sql<number>`-${stockMovement.worth}`,
      kind: stockMovement.kind,
    })
    .from(stockMovement)
    .innerJoin(part, eq(part.id, stockMovement.partId))
    .where(and(isUse, within(stockMovement.at, span)))
    .orderBy(asc(part.number), asc(stockMovement.at))
    .all()
    .map(({ kind, ...used }) => ({ ...used, opened: kind === 'kit-opened' }));

/** When a part was used last before an instant, by part. */
export const lastUses = (store: ReadStore, before: string): Map<string, string> =>
  new Map(
    store
      .select({ partId: stockMovement.partId, at: max(stockMovement.at) })
      .from(stockMovement)
      .where(and(isUse, lt(stockMovement.quantity, 0), lt(stockMovement.at, before)))
      .groupBy(stockMovement.partId)
      .all()
      .flatMap(({ partId, at }) => (at === null ? [] : [[partId, at] as const])),
  );

/** When a part came onto the shelf first, by part. */
export const firstArrivals = (store: ReadStore): Map<string, string> =>
  new Map(
    store
      .select({ partId: stockMovement.partId, at: sql<string>`min(${stockMovement.at})` })
      .from(stockMovement)
      .where(sql`${stockMovement.quantity} > 0`)
      .groupBy(stockMovement.partId)
      .all()
      .map(({ partId, at }) => [partId, at]),
  );

export interface WorthOfPart {
  partId: string;
  number: string;
  description: string;
  at: string;
  worth: number;
}

/** All that changed what a shelf is worth before an instant, by number and time. */
export const worthMoved = (store: ReadStore, before: string): WorthOfPart[] =>
  store
    .select({
      partId: part.id,
      number: part.number,
      description: part.description,
      at: stockMovement.at,
      worth: stockMovement.worth,
    })
    .from(stockMovement)
    .innerJoin(part, eq(part.id, stockMovement.partId))
    .where(and(lt(stockMovement.at, before), sql`${stockMovement.worth} <> 0`))
    .orderBy(asc(part.number), asc(stockMovement.at), asc(stockMovement.id))
    .all();

/** Parts that are bought again, of which no more is free and on order than their reorder point. */
export const lowShelves = (store: ReadStore) =>
  store
    .select({
      number: part.number,
      description: part.description,
      unit: part.unit,
      bin: part.bin,
      supplier: part.supplier,
      reorderPoint: part.reorderPoint,
      ...shelfSums,
    })
    .from(part)
    .leftJoin(stockMovement, eq(stockMovement.partId, part.id))
    .where(sql`${part.reorderPoint} > 0 AND ${part.supersededBy} IS NULL`)
    .groupBy(part.id)
    .having(sql`${shelfSums.onHand} - ${shelfSums.promised} <= ${part.reorderPoint}`)
    .orderBy(asc(part.number))
    .all();
