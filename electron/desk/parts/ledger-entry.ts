import { ORPCError } from '@orpc/contract';
import { unitCostOf } from '../../../db/queries/parts/part.ts';
import { issuedTo, owedOn, promisedTo, shelfOf } from '../../../db/queries/parts/shelf.ts';
import { stockMovement } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import { NOT_ON_THE_SHELF } from '../../../shared/contract/parts/index.ts';
import {
  afterEffect,
  type EventFacts,
  effectOf,
  type MovementEffect,
  NO_FACTS,
  type Shelf,
  type StockEvent,
} from '../../../shared/work/parts/stock-ledger.ts';
import { badInput, found } from '../refuse.ts';
import type { Writing } from '../writing.ts';

/** A movement as its writer knows it; what it adds to the shelf follows from the rules of the ledger. */
export type StockEntry = StockEvent & {
  partId: string;
  jobId?: string | null;
  orderLineId?: string | null;
  countId?: string | null;
  reason?: string;
  /** Lets the shelf go below nothing: somebody holds the part in their hand and says why the books are wrong. */
  belowNothing?: boolean;
};

/** Beyond this a shelf is a slip of the finger, and sums would no longer be exact. */
const MOST_ON_A_SHELF = 1_000_000_000_000;
const MOST_WORTH = 1_000_000_000_000_000;

export interface Entered {
  id: string;
  effect: MovementEffect;
  before: Shelf;
  after: Shelf;
}

/** What the effect of a movement depends on beside the shelf; only what its kind asks for is looked up. */
function factsFor(store: ReadStore, { kind, partId, jobId, orderLineId }: StockEntry): EventFacts {
  const facts = { ...NO_FACTS };
  if (kind === 'counted' || kind === 'adjusted')
    facts.unitCost = found(unitCostOf(store, partId), 'part');
  if (kind === 'received' && orderLineId) facts.owedOnLine = owedOn(store, orderLineId);
  if (!jobId) return facts;
  if (kind === 'returned') facts.issuedToJob = issuedTo(store, partId, jobId);
  if (kind === 'issued' || kind === 'kit-opened')
    facts.promisedToJob = promisedTo(store, partId, jobId);
  return facts;
}

/**
 * Writes one movement and nothing that follows from it.
 * @throws NOT_ON_THE_SHELF when more would leave than is there, unless `belowNothing` with a reason
 * @throws BAD_INPUT when a shelf would hold or be worth more than any shelf can
 */
export function enter(writing: Writing, entry: StockEntry): Entered {
  const { store, staff, at, newId } = writing;
  const { partId, kind, jobId = null, orderLineId = null, countId = null, reason = '' } = entry;
  const before = shelfOf(store, partId);
  const effect = effectOf(entry, before, factsFor(store, entry));
  const after = afterEffect(before, effect);
  const explained = entry.belowNothing === true && reason !== '';
  if (effect.quantity < 0 && after.onHand < 0 && !explained)
    throw new ORPCError('NOT_ON_THE_SHELF', {
      ...NOT_ON_THE_SHELF,
      data: { onHand: before.onHand },
    });
  if (Math.max(after.onHand, after.onOrder) > MOST_ON_A_SHELF || after.worth > MOST_WORTH)
    throw badInput([
      { path: 'quantity', message: 'That is more than any shelf here can hold. Check the figure.' },
    ]);
  const id = newId();
  store
    .insert(stockMovement)
    .values({
      id,
      partId,
      kind,
      ...effect,
      jobId,
      orderLineId,
      countId,
      reason,
      by: staff.id,
      at,
    })
    .run();
  return { id, effect, before, after };
}
