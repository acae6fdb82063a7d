import { SECURITY } from '../../money/index.ts';

/**
 * What a job needs of which parts: what its bill names; while there is none, what its customer approved.
 * Quantities are whole thousandths.
 */

interface Line {
  readonly kind: string;
  readonly partId: string | null;
  readonly quantity: number;
}

export interface ApprovedWork {
  /** The lines of the option that was taken, in its order. */
  readonly lines: readonly Line[];
  readonly declined: readonly { readonly line: number }[];
}

/** A core is security for an old part: it may name the part, and is none. */
const partOf = ({ kind, partId }: Line): string | null => (SECURITY.includes(kind) ? null : partId);

/** By part; lines of one part are added up, declined ones left out. */
export function approvedParts({ lines, declined }: ApprovedWork): Map<string, number> {
  const without = new Set(declined.map(({ line }) => line));
  return addedUp(
    lines.map((line, place) => (without.has(place) ? { ...line, partId: null } : line)),
  );
}

/** An invoice of the work, and what credit notes took off each of its lines. */
export interface StandingBill {
  readonly lines: readonly (Line & { readonly amount: number })[];
  /** Minor units, beside `lines`. */
  readonly lineCredits: readonly number[];
  /** Places of the lines of which nothing is left. */
  readonly wholeLines: readonly number[];
}

/** A bill stands as long as a line of it does; one that was credited whole makes way for another. */
export const stands = ({ lines, wholeLines }: StandingBill): boolean =>
  wholeLines.length < lines.length;

/** By part: what is billed, less what was credited. Parts of which nothing is left are in it with 0. */
export const billedParts = (bills: readonly StandingBill[]): Map<string, number> =>
  addedUp(
    bills.flatMap(({ lines, lineCredits, wholeLines }) =>
      lines.map((line, place) => ({
        ...line,
        quantity: wholeLines.includes(place) ? 0 : leftOf(line, lineCredits[place] ?? 0),
      })),
    ),
  );

/** A credit that comes to whole pieces takes those off; any other lowers the price, and they stay billed. */
function leftOf(
  { quantity, amount }: { quantity: number; amount: number },
  credit: number,
): number {
  if (credit === 0 || amount === 0) return quantity;
  const off = (quantity * credit) / amount;
  return off % PIECE === 0 ? quantity - off : quantity;
}

const PIECE = 1000;

function addedUp(lines: readonly Line[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const line of lines) {
    const partId = partOf(line);
    if (partId !== null) sums.set(partId, (sums.get(partId) ?? 0) + line.quantity);
  }
  return sums;
}

/**
 * What is needed of each part before there is a bill: what the customer approved, or what was ordered for this
 * job alone, if that is more.
 */
export function neededParts(
  approved: ReadonlyMap<string, number>,
  special: ReadonlyMap<string, number>,
): Map<string, number> {
  const needed = new Map(approved);
  for (const [partId, quantity] of special)
    needed.set(partId, Math.max(quantity, needed.get(partId) ?? 0));
  return needed;
}

/** How a job stands with a part, or with those that took each other's place. */
export interface WithJob {
  readonly needed: number;
  /** All that went to it, what came back included. */
  readonly issued: number;
  readonly returned: number;
  /** What is needed is what is billed. */
  readonly billed: boolean;
}

/**
 * What still has to leave the shelf for a job; never below zero. Before the bill, what came back unused is not
 * needed a second time; once it is billed it is, or the bill is wrong.
 */
export const openNeed = ({ needed, issued, returned, billed }: WithJob): number =>
  Math.max(0, needed - (billed ? issued - returned : issued));
