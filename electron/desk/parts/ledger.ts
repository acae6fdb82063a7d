import type { StockEvent } from '../../../shared/work/parts/stock-ledger.ts';
import type { Writing } from '../writing.ts';
import { type Entered, enter, type StockEntry } from './ledger-entry.ts';
import { markPartsToIssue } from './parts-to-issue.ts';
import { settlePromises } from './promises.ts';

/** Promises are nobody's to enter: they follow from what jobs need and what is there. */
type FollowsFromNeeds = Extract<StockEvent, { kind: 'reserved' | 'released' }>;

/** What a job needs of a part is less by what it gets of it. */
const SERVES_A_JOB: readonly StockEvent['kind'][] = ['issued', 'kit-opened'];

const CHANGES_WHAT_A_JOB_HAS: readonly StockEvent['kind'][] = [...SERVES_A_JOB, 'returned'];

/** Less is there, still enough for every promise, and a job that got some used up just that promise. */
function leavesPromises({ kind, jobId = null }: StockEntry, { effect, after }: Entered): boolean {
  if (effect.quantity > 0 || after.promised > Math.max(0, after.onHand)) return false;
  return jobId === null || !SERVES_A_JOB.includes(kind) || effect.reserved === effect.quantity;
}

/**
 * The one place where the ledger is written: everybody who moves stock or orders it comes through here,
 * within their own transaction. Promises to jobs are settled at once, so that what is promised is there.
 * What comes in on an order line for a job (`received` with its `jobId`) is promised to that job first.
 * @throws NOT_ON_THE_SHELF when more would leave than is there, unless `belowNothing` with a reason
 * @throws BAD_INPUT when a shelf would hold or be worth more than any shelf can
 */
export function enterMovement(
  writing: Writing,
  entry: StockEntry & { kind: Exclude<StockEvent['kind'], FollowsFromNeeds['kind']> },
): Entered {
  const entered = enter(writing, entry);
  const first = entry.kind === 'received' ? (entry.jobId ?? null) : null;
  if (entered.effect.quantity !== 0 && !leavesPromises(entry, entered))
    settlePromises(writing, entry.partId, first);
  if (entry.jobId && CHANGES_WHAT_A_JOB_HAS.includes(entry.kind))
    markPartsToIssue(writing, entry.jobId);
  return entered;
}
