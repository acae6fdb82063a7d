import { asc, sql } from 'drizzle-orm';
import { expect } from 'vitest';
import { stockMovement } from '../../db/schema/index.ts';
import type { DeskContext } from '../../electron/desk/index.ts';

/** What a ledger comes to, worked out a second time: row by row, and in the plainest way. */

const rowsOf = ({ store }: DeskContext) =>
  store.read.select().from(stockMovement).orderBy(asc(sql`rowid`)).all();
export type LedgerRow = ReturnType<typeof rowsOf>[number];

interface Held {
  quantity: number;
  worth: number;
}

/** What a movement adds to the worth, by the rules as a person would say them; what it cost is looked up. */
function worthOf(row: LedgerRow, shelf: Held, cost: number, atJob: Held): number {
  const { kind, quantity } = row;
  if (quantity === 0) return 0;
  if (quantity < 0) {
    if (shelf.quantity <= 0) return 0;
    if (-quantity >= shelf.quantity) return -shelf.worth;
    return -Math.round((shelf.worth * -quantity) / shelf.quantity);
  }
  let brings = cost;
  if (kind === 'returned')
    brings =
      quantity === atJob.quantity
        ? atJob.worth
        : Math.round((atJob.worth * quantity) / atJob.quantity);
  else if (kind !== 'received' && shelf.quantity > 0)
    brings = Math.round((shelf.worth * quantity) / shelf.quantity);
  if (shelf.quantity >= 0) return brings;
  const stays = shelf.quantity + quantity;
  return stays <= 0 ? 0 : Math.round((brings * stays) / quantity);
}

interface Expectations {
  /** What came in for a row cost, or what the found parts of an empty shelf cost. */
  costOf: (row: LedgerRow, index: number) => number;
  /** Parts whose shelf may go below nothing. */
  loose: readonly string[];
}

/** Goes through the whole ledger; gives what each part's shelf comes to. */
export function workOutTwice(
  context: DeskContext,
  { costOf, loose }: Expectations,
): Map<string, Held> {
  const shelves = new Map<string, Held>();
  const atJobs = new Map<string, Held>();
  const none = { quantity: 0, worth: 0 };
  rowsOf(context).forEach((row, index) => {
    const shelf = shelves.get(row.partId) ?? none;
    const place = `${row.partId} ${row.jobId}`;
    const atJob = atJobs.get(place) ?? none;
    const worth = worthOf(row, shelf, costOf(row, index), atJob);
    if (row.worth !== worth && row.worth + worth !== 0)
      expect({ index, ...row }).toMatchObject({ worth });
    const after = { quantity: shelf.quantity + row.quantity, worth: shelf.worth + row.worth };
    shelves.set(row.partId, after);
    if (row.kind === 'issued' || row.kind === 'returned')
      atJobs.set(place, {
        quantity: atJob.quantity - row.quantity,
        worth: atJob.worth - row.worth,
      });
    if (after.quantity < 0) expect(loose).toContain(row.partId);
    if (after.worth < 0 || (after.quantity <= 0 && after.worth !== 0))
      expect({ index, ...after }).toMatchObject({ worth: 0 });
  });
  return shelves;
}

/** What a job's lines come to: parts that took each other's place together, thousandths. */
export interface JobLine {
  jobId: string;
  chain: readonly string[];
  needed: number;
}

/** Promises are within the shelf, and within what open lines still need. */
export function checkPromises(context: DeskContext, lines: readonly JobLine[]): void {
  const promised = new Map<string, number>();
  const onHand = new Map<string, number>();
  const atJobs = new Map<string, { promised: number; issued: number }>();
  for (const { partId, jobId, quantity, reserved, kind } of rowsOf(context)) {
    promised.set(partId, (promised.get(partId) ?? 0) + reserved);
    onHand.set(partId, (onHand.get(partId) ?? 0) + quantity);
    const place = `${partId} ${jobId}`;
    const at = atJobs.get(place) ?? { promised: 0, issued: 0 };
    atJobs.set(place, {
      promised: at.promised + reserved,
      issued: at.issued - (kind === 'issued' ? quantity : 0),
    });
  }
  for (const [partId, total] of promised)
    expect(total).toBeLessThanOrEqual(Math.max(0, onHand.get(partId) ?? 0));
  let byLines = 0;
  for (const { jobId, chain, needed } of lines) {
    const own = chain.map((partId) => atJobs.get(`${partId} ${jobId}`));
    const held = own.reduce((sum, at) => sum + (at?.promised ?? 0), 0);
    const issued = own.reduce((sum, at) => sum + (at?.issued ?? 0), 0);
    for (const at of own) expect(at?.promised ?? 0).toBeGreaterThanOrEqual(0);
    expect(held).toBeLessThanOrEqual(Math.max(0, needed - issued));
    byLines += held;
  }
  // Nothing is promised but to these lines.
  expect([...promised.values()].reduce((sum, each) => sum + each, 0)).toBe(byLines);
}
