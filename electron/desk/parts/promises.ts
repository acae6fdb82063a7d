import { chainOf } from '../../../db/queries/parts/chain.ts';
import {
  type HeldByJob,
  heldByJob,
  movedOfParts,
} from '../../../db/queries/parts/job-movements.ts';
import { jobsNeeding, needsOfJob } from '../../../db/queries/parts/needs.ts';
import { openNeed } from '../../../shared/work/parts/part-needs.ts';
import { type Claim, promiseChanges } from '../../../shared/work/parts/part-promises.ts';
import type { Writing } from '../writing.ts';
import { enter } from './ledger-entry.ts';

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** Who claims any of these parts: jobs that need them in the order of their approval, then who holds them still. */
function claimsOn(
  { store }: Writing,
  chain: readonly string[],
  held: readonly HeldByJob[],
  first: string | null,
): Claim[] {
  const needs = jobsNeeding(store, chain);
  const jobs = new Set([
    ...(first === null ? [] : [first]),
    ...needs.map(({ jobId }) => jobId),
    ...held.filter(({ promised }) => promised !== 0).map(({ jobId }) => jobId),
  ]);
  return [...jobs].map((jobId) => {
    const need = needs.find((each) => each.jobId === jobId);
    const needed = need?.needed ?? new Map<string, number>();
    const named = chain.filter((partId) => needed.has(partId));
    const own = held.filter((each) => each.jobId === jobId);
    const open = openNeed({
      needed: sum(named.map((partId) => needed.get(partId) ?? 0)),
      issued: sum(own.map(({ issued }) => issued)),
      returned: sum(own.map(({ returned }) => returned)),
      billed: need?.billed ?? false,
    });
    return {
      jobId,
      named,
      // A machine that went home keeps what is promised to it, and gets nothing more.
      open: need?.gone ? Math.min(open, sum(own.map(({ promised }) => promised))) : open,
      promised: new Map(own.map(({ partId, promised }) => [partId, promised])),
    };
  });
}

/**
 * Promises what is there to the jobs that need it and takes back what can't be kept, for a part and those
 * that took each other's place with it.
 * @param first a job that comes before all others: what came in was ordered for it
 */
export function settlePromises(
  writing: Writing,
  partId: string,
  first: string | null = null,
): void {
  const chain = chainOf(writing.store, partId);
  const moved = movedOfParts(writing.store, chain);
  const shelves = chain.map((each) => ({
    partId: each,
    onHand: sum(moved.filter((row) => row.partId === each).map(({ quantity }) => quantity)),
  }));
  const held = moved.flatMap((row) => (row.jobId === null ? [] : { ...row, jobId: row.jobId }));
  const claims = claimsOn(writing, chain, held, first);
  for (const { change, ...of } of promiseChanges(shelves, claims))
    enter(
      writing,
      change > 0
        ? { ...of, kind: 'reserved', quantity: change }
        : { ...of, kind: 'released', quantity: -change },
    );
}

/** After a job was approved anew, stopped, billed or credited: its promises follow, and what it lets go goes to others. */
export function settleJob(writing: Writing, jobId: string): void {
  const { store } = writing;
  const parts = new Set([
    ...needsOfJob(store, jobId).keys(),
    ...heldByJob(store, jobId)
      .filter(({ promised }) => promised !== 0)
      .map(({ partId }) => partId),
  ]);
  for (const partId of parts) settlePromises(writing, partId);
}
