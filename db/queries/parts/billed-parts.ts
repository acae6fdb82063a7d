import { and, desc, eq, ne } from 'drizzle-orm';
import type { BilledPart, JobWithBilledParts } from '../../../shared/contract/parts/index.ts';
import {
  type BillDifference,
  billedAgainstIssued,
} from '../../../shared/work/parts/billed-against-issued.ts';
import { billedParts } from '../../../shared/work/parts/part-needs.ts';
import { handoverMatter, invoice } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { jobsWithPartsToIssue } from '../counter/jobs.ts';
import { chainOf } from './chain.ts';
import { fromElsewhere } from './from-elsewhere.ts';
import { heldOfParts } from './job-movements.ts';
import { type PartInBin, partNames } from './names.ts';
import { shelfOf } from './shelf.ts';
import { standingBills } from './standing-bills.ts';
import { usedOf } from './used-parts.ts';

/** What of a job's parts is billed and not issued, and the other way round. Quantities are thousandths. */

/** What a job's bills name, less what was credited; null as long as no bill of its work stands. */
const billedOn = (store: ReadStore, jobId: string): Map<string, number> | null => {
  const own = and(eq(invoice.jobId, jobId), ne(invoice.sort, 'storage'));
  const standing = standingBills(store, own).get(jobId);
  return standing === undefined ? null : billedParts(standing.bills);
};

function difference(
  store: ReadStore,
  jobId: string,
  billed: ReadonlyMap<string, number>,
): BillDifference {
  return billedAgainstIssued({
    billed,
    used: usedOf(store, jobId, new Set(billed.keys())),
    elsewhere: fromElsewhere(store, [jobId]).get(jobId) ?? new Map<string, number>(),
    chainOf: (partId) => chainOf(store, partId),
  });
}

export interface ToIssue extends BilledPart {
  /** What the shelf can give: of which parts: the one that is billed, and then those in its place. */
  takes: { partId: string; quantity: number }[];
}

/** What nobody else was promised of a part. */
function freeFor(store: ReadStore, jobId: string, partId: string): number {
  const others = heldOfParts(store, [partId]).filter((held) => held.jobId !== jobId);
  const promised = others.reduce((sum, held) => sum + Math.max(0, held.promised), 0);
  return Math.max(0, shelfOf(store, partId).onHand - promised);
}

/**
 * What of a job's bill has not left the shelf, and from where it can.
 * @param billed what a bill names that is about to be issued; without it, what the bills name that stand
 */
export function notIssued(
  store: ReadStore,
  jobId: string,
  billed: ReadonlyMap<string, number> | null = billedOn(store, jobId),
): ToIssue[] {
  if (billed === null) return [];
  const open = difference(store, jobId, billed).notIssued;
  const taken = new Map<string, number>();
  return partNames(store, [...open.keys()]).map((part) => {
    const quantity = open.get(part.id) ?? 0;
    const takes: ToIssue['takes'] = [];
    let left = quantity;
    for (const partId of new Set([part.id, ...chainOf(store, part.id)])) {
      const before = taken.get(partId) ?? 0;
      const these = Math.min(left, freeFor(store, jobId, partId) - before);
      if (these <= 0) continue;
      left -= these;
      taken.set(partId, before + these);
      takes.push({ partId, quantity: these });
    }
    return { part, quantity, onShelf: quantity - left, takes };
  });
}

/** What went to a job and is not on its bill; nothing as long as no bill stands, unless the job was stopped. */
export function notBilled(
  store: ReadStore,
  jobId: string,
  { stopped = false } = {},
): { part: PartInBin; quantity: number }[] {
  const billed = billedOn(store, jobId) ?? (stopped ? new Map<string, number>() : null);
  if (billed === null) return [];
  const open = difference(store, jobId, billed).notBilled;
  return partNames(store, [...open.keys()]).map((part) => ({
    part,
    quantity: open.get(part.id) ?? 0,
  }));
}

const whyPassedOver = (store: ReadStore, jobId: string): string =>
  store
    .select({ reason: handoverMatter.reason })
    .from(handoverMatter)
    .where(and(eq(handoverMatter.jobId, jobId), eq(handoverMatter.matter, 'parts-billed')))
    .orderBy(desc(handoverMatter.id))
    .get()?.reason ?? '';

/** Every job with billed parts that have not left the shelf, the newest first. */
export const jobsWithBilledParts = (store: ReadStore): JobWithBilledParts[] =>
  jobsWithPartsToIssue(store).flatMap(({ id, code, customerName, machine, state }) => {
    const parts = notIssued(store, id);
    if (parts.length === 0) return [];
    return [
      {
        jobId: id,
        jobCode: code,
        customerName,
        machine,
        state,
        parts,
        passedOver: whyPassedOver(store, id),
      },
    ];
  });
