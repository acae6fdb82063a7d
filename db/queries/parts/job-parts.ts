import { and, asc, eq, inArray, sql } from 'drizzle-orm';
import { JobId, jobCode } from '../../../shared/contract/ids.ts';
import type { JobPart, JobParts } from '../../../shared/contract/parts/index.ts';
import {
  type Expected,
  expectedParts,
  type OnOrder,
} from '../../../shared/work/bench/expected-parts.ts';
import { canMove, type JobState } from '../../../shared/work/counter/job-state.ts';
import { openNeed } from '../../../shared/work/parts/part-needs.ts';
import { available } from '../../../shared/work/parts/stock-ledger.ts';
import { jobMove, purchaseOrder, purchaseOrderLine, stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { jobRowById } from '../counter/jobs.ts';
import { notBilled, notIssued } from './billed-parts.ts';
import { chainOf, currentOf } from './chain.ts';
import { expectedDay } from './expected.ts';
import { fromElsewhere } from './from-elsewhere.ts';
import { type HeldByJob, heldByJob, heldOfParts } from './job-movements.ts';
import { piecesOf } from './kits.ts';
import { partNames } from './names.ts';
import { type JobNeeds, jobNeeds, jobsNeeding } from './needs.ts';
import { issuedTo, shelfOf } from './shelf.ts';

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** What suppliers owe of some parts, by line. */
export const owedOf = (store: ReadStore, partIds: readonly string[]): OnOrder[] =>
  store
    .select({
      jobId: purchaseOrderLine.jobId,
      quantity: sql<number>`sum(${stockMovement.ordered})`,
      expectedOn: expectedDay,
    })
    .from(stockMovement)
    .innerJoin(purchaseOrderLine, eq(purchaseOrderLine.id, stockMovement.orderLineId))
    .innerJoin(purchaseOrder, eq(purchaseOrder.id, purchaseOrderLine.orderId))
    .where(inArray(purchaseOrderLine.partId, [...partIds]))
    .groupBy(purchaseOrderLine.id)
    .orderBy(asc(purchaseOrderLine.id))
    .all()
    .filter(({ quantity }) => quantity > 0);

/** What of some parts is promised to nobody: in a store of an older program that can be what a job needs. */
const freeOf = (store: ReadStore, chain: readonly string[]): number =>
  sum(chain.map((partId) => Math.max(0, available(shelfOf(store, partId)))));

/** What still has to leave the shelf for a job, of parts that took each other's place. */
const stillOpen = (
  { needed, billed }: JobNeeds,
  chain: readonly string[],
  own: readonly HeldByJob[],
): number =>
  openNeed({
    needed: sum(chain.map((partId) => needed.get(partId) ?? 0)),
    issued: sum(own.map(({ issued }) => issued)),
    returned: sum(own.map(({ returned }) => returned)),
    billed,
  });

/** What each job that needs one of these parts still misses of them, the one approved first at the head. */
export function missingOf(store: ReadStore, chain: readonly string[]) {
  const held = Map.groupBy(heldOfParts(store, chain), ({ jobId }) => jobId);
  let free = freeOf(store, chain);
  return jobsNeeding(store, chain)
    .filter(({ gone }) => !gone)
    .map((need) => {
      const { jobId } = need;
      const own = held.get(jobId) ?? [];
      const promised = sum(own.map((each) => each.promised));
      const lacking = Math.max(0, stillOpen(need, chain, own) - promised);
      const missing = Math.max(0, lacking - free);
      free -= lacking - missing;
      return { jobId, missing };
    })
    .filter(({ missing }) => missing > 0);
}

const NOT_EXPECTED: Expected = { onOrder: 0, expectedOn: null };

function jobPart(
  store: ReadStore,
  jobId: string,
  chain: readonly string[],
  {
    need,
    held,
    elsewhere,
  }: {
    need: JobNeeds;
    held: readonly HeldByJob[];
    elsewhere: ReadonlyMap<string, number>;
  },
): JobPart[] {
  const { needed } = need;
  const own = held.filter(({ partId }) => chain.includes(partId));
  const id = chain.find((each) => needed.has(each)) ?? own[0]?.partId;
  const names = partNames(store, chain);
  const part = names.find((name) => name.id === id);
  if (part === undefined) return [];
  const wanted = sum(chain.map((each) => needed.get(each) ?? 0));
  const promised = sum(own.map((each) => each.promised));
  const issued = sum(own.map((each) => each.issued));
  const lacking = missingOf(store, chain);
  const missing = lacking.find((each) => each.jobId === jobId)?.missing ?? 0;
  const expected =
    missing === 0 ? NOT_EXPECTED : expectedParts(lacking, owedOf(store, chain)).get(jobId);
  const withJob = (partId: string) => issuedTo(store, partId, jobId).quantity;
  return [
    {
      part,
      needed: wanted,
      promised,
      issued,
      returned: sum(own.map((each) => each.returned)),
      open: stillOpen(need, chain, own),
      elsewhere: sum(chain.map((each) => elsewhere.get(each) ?? 0)),
      missing,
      ...(expected ?? NOT_EXPECTED),
      withJob: withJob(part.id),
      isKit: piecesOf(store, part.id).length > 0,
      inItsPlace: names
        .filter((name) => name.id !== part.id)
        .map((name) => ({
          ...name,
          former: chain.indexOf(name.id) < chain.indexOf(part.id),
          promised: own.find(({ partId }) => partId === name.id)?.promised ?? 0,
          withJob: withJob(name.id),
        }))
        .filter(({ onHand, promised: kept, withJob: used }) => onHand > 0 || kept > 0 || used > 0),
    },
  ];
}

/** The parts of a job, those that its lines name first. */
function partsOf(store: ReadStore, jobId: string, need: JobNeeds): JobPart[] {
  const facts = {
    need,
    held: heldByJob(store, jobId),
    elsewhere: fromElsewhere(store, [jobId]).get(jobId) ?? new Map<string, number>(),
  };
  const shown = [
    ...[...need.needed].filter(([, quantity]) => quantity > 0).map(([partId]) => partId),
    ...facts.elsewhere.keys(),
    ...facts.held
      .filter(({ promised, issued }) => promised !== 0 || issued !== 0)
      .map(({ partId }) => partId),
  ];
  const chains = new Map(shown.map((partId) => [currentOf(store, partId), partId]));
  return [...chains.keys()].flatMap((current) =>
    jobPart(store, jobId, chainOf(store, current), facts),
  );
}

/** The day of the slowest; null as soon as one has none. */
function slowest(parts: readonly JobPart[]): string | null {
  const days = parts.filter(({ missing }) => missing > 0).map(({ expectedOn }) => expectedOn);
  return days.includes(null) ? null : (days.toSorted().at(-1) ?? null);
}

/** Where a job that waited for its parts was before. */
const backTo = (store: ReadStore, jobId: string): JobState =>
  store
    .select({ to: jobMove.to })
    .from(jobMove)
    .where(and(eq(jobMove.jobId, jobId), eq(jobMove.to, 'on-the-bench')))
    .get() === undefined
    ? 'go-ahead'
    : 'on-the-bench';

function mayMoveTo(
  store: ReadStore,
  { id, state }: { id: string; state: JobState },
  parts: readonly JobPart[],
): JobState | null {
  if (parts.some(({ missing }) => missing > 0))
    return canMove(state, 'waits-for-parts') ? 'waits-for-parts' : null;
  const needsAny = parts.some(({ needed }) => needed > 0);
  return state === 'waits-for-parts' && needsAny ? backTo(store, id) : null;
}

export function jobPartsOf(store: ReadStore, jobId: string): JobParts | undefined {
  const row = jobRowById(store, jobId);
  if (row === undefined) return undefined;
  const need = jobNeeds(store, jobId);
  const parts = partsOf(store, jobId, need);
  return {
    jobId: JobId.parse(row.id),
    jobCode: jobCode(row.number),
    state: row.state,
    billed: need.billed,
    parts,
    notIssued: notIssued(store, jobId),
    notBilled: notBilled(store, jobId),
    missing: parts.filter(({ missing }) => missing > 0).length,
    expectedOn: slowest(parts),
    mayMoveTo: mayMoveTo(store, row, parts),
    cost: sum(heldByJob(store, jobId).map(({ worth }) => worth)),
  };
}
