/**
 * A job's bill set against what left the shelf for it. Parts that took each other's place count as one: what
 * was issued beyond the one makes up for what is short of the other. Quantities are whole thousandths.
 */

export interface BillAndShelf {
  /** By part: what is billed, less what was credited. */
  readonly billed: ReadonlyMap<string, number>;
  /** By part of the lines that it counts for: what went to the job, less what came back. */
  readonly used: ReadonlyMap<string, number>;
  /** By part: what is billed and came from elsewhere than the shelf. */
  readonly elsewhere: ReadonlyMap<string, number>;
  /** The parts that took each other's place, one among them. */
  readonly chainOf: (partId: string) => readonly string[];
}

export interface BillDifference {
  /** Billed, and neither issued nor from elsewhere. Above zero. */
  notIssued: Map<string, number>;
  /** Issued and not billed. Above zero. */
  notBilled: Map<string, number>;
}

export function billedAgainstIssued({
  billed,
  used,
  elsewhere,
  chainOf,
}: BillAndShelf): BillDifference {
  const difference: BillDifference = { notIssued: new Map(), notBilled: new Map() };
  const parts = [...new Set([...billed.keys(), ...used.keys()])];
  for (const chain of Map.groupBy(parts, (partId) => chainOf(partId).at(-1) ?? partId).values()) {
    const open = chain.map((partId) => ({
      partId,
      short: lessElsewhere(
        (billed.get(partId) ?? 0) - (used.get(partId) ?? 0),
        elsewhere.get(partId) ?? 0,
      ),
    }));
    const short = sum(open.map((each) => Math.max(0, each.short)));
    const over = sum(open.map((each) => Math.max(0, -each.short)));
    const madeUp = Math.min(short, over);
    takeOff(madeUp, open, (each) => each.short, difference.notIssued);
    takeOff(madeUp, open, (each) => -each.short, difference.notBilled);
  }
  return difference;
}

/** What came from elsewhere makes up for what is short, and for nothing else. */
const lessElsewhere = (short: number, elsewhere: number): number =>
  short > 0 ? Math.max(0, short - elsewhere) : short;

/** Keeps what is above zero of each, less an amount that is taken off the first of them. */
function takeOff(
  amount: number,
  open: readonly { partId: string; short: number }[],
  of: (each: { short: number }) => number,
  kept: Map<string, number>,
): void {
  let left = amount;
  for (const each of open) {
    const quantity = Math.max(0, of(each));
    const off = Math.min(left, quantity);
    left -= off;
    if (quantity > off) kept.set(each.partId, quantity - off);
  }
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
