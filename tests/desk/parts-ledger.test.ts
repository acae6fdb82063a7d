import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { createORPCClient } from '@orpc/client';
import { RPCLink } from '@orpc/client/fetch';
import type { ContractRouterClient } from '@orpc/contract';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { enterMovement } from '../../electron/desk/parts/ledger.ts';
import type { StockEntry } from '../../electron/desk/parts/ledger-entry.ts';
import { type Writing, write } from '../../electron/desk/writing.ts';
import { createCallGate } from '../../electron/launch/call-gate.ts';
import { createDeskCalls } from '../../electron/serve/desk-calls.ts';
import type { JobId, PartId } from '../../shared/contract/ids.ts';
import type { Contract } from '../../shared/contract/index.ts';
import { checkPromises, type JobLine, workOutTwice } from './ledger-twice.ts';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

/**
 * Two callers at once move the same parts about at random. On hand is the sum of what moved and never below
 * nothing unless allowed, promises are within the shelf and what open lines need, and the worth is what a
 * second calculation gives.
 */

let shop: PartsShop;
beforeEach(async () => {
  shop = await openPartsShop();
});
afterEach(() => shop.close());

interface Bench {
  parts: PartId[];
  /** The only part whose shelf may go below nothing. */
  loose: PartId;
  jobs: JobId[];
  lines: JobLine[];
}

/** Parts in pairs of a former and a current one, but for the loose one; and jobs that need them. */
async function setUp(pairs: number, needs: readonly number[]): Promise<Bench> {
  const { desk, by, shelve, jobFor } = shop;
  const loose = await shelve('LOOSE');
  const chains: (readonly [PartId, ...PartId[]])[] = [[loose]];
  for (let pair = 0; pair < pairs; pair += 1) {
    const [current, old] = [await shelve(`NEW-${pair}`), await shelve(`OLD-${pair}`)];
    await desk.parts.supersede({ by, partId: old, supersededBy: current });
    chains.push([current, old]);
  }
  const jobs: JobId[] = [];
  for (const needed of needs)
    jobs.push(await jobFor(chains.map(([partId]) => [partId, needed] as const)));
  return {
    parts: chains.flat(),
    loose,
    jobs,
    lines: jobs.flatMap((jobId, index) =>
      chains.map((chain) => ({ jobId, chain, needed: needs[index] ?? 0 })),
    ),
  };
}

const ACTS = ['receive', 'receive', 'issue', 'issue', 'return', 'scrap', 'find', 'miss'] as const;

/** One thing that somebody does, at random. */
const deed = fc.record({
  act: fc.constantFrom(...ACTS),
  part: fc.nat(),
  job: fc.nat(),
  quantity: fc.integer({ min: 1, max: 4_000 }),
  /** What it cost, if it came in. */
  cost: fc.nat(20_000),
  urgent: fc.boolean(),
});
type Deed = typeof deed extends fc.Arbitrary<infer D> ? D : never;

const pick = <T>(list: readonly T[], at: number): T => {
  const picked = list[at % list.length];
  if (picked === undefined) throw new Error('Nothing to pick from.');
  return picked;
};

const randomSeed = () => Math.floor(Math.random() * 2 ** 31);
const ledgerSeed = randomSeed();
const contractSeed = randomSeed();

test(`ten thousand movements of two callers that take turns (seed ${ledgerSeed})`, {
  timeout: 240_000,
}, async () => {
  const MOVEMENTS = 10_000;
  const AT_A_TIME = 50;
  const bench = await setUp(9, [2_000_000, 500, 30_000, 150_000]);
  const { parts, loose, jobs, lines } = bench;
  const costs = new Map<string, number>();
  const withJob = new Map<string, number>();
  let entered = 0;
  let refused = 0;

  /** What a deed is in the ledger; null for a return of what never went out. */
  const entryOf = ({ act, part, job, quantity, cost, urgent }: Deed) => {
    const [partId, jobId] = [pick(parts, part), pick(jobs, job)];
    const place = `${partId} ${jobId}`;
    const issued = withJob.get(place) ?? 0;
    const entry = (event: Parameters<typeof enterMovement>[1]) => ({ event, place });
    switch (act) {
      case 'receive':
        return entry({ kind: 'received', partId, quantity, cost, jobId: urgent ? jobId : null });
      case 'issue':
        return entry({
          kind: 'issued',
          partId,
          jobId,
          quantity,
          reason: 'At random',
          belowNothing: partId === loose,
        });
      case 'return':
        if (issued === 0) return null;
        return entry({ kind: 'returned', partId, jobId, quantity: Math.min(quantity, issued) });
      case 'scrap':
        return entry({ kind: 'scrapped', partId, quantity });
      default:
        return entry({
          kind: urgent ? 'counted' : 'adjusted',
          partId,
          difference: act === 'find' ? quantity : -quantity,
        });
    }
  };
  const tally = (place: string, { kind, ...entry }: StockEntry) => {
    const signed = { issued: 1, returned: -1 }[String(kind)] ?? 0;
    if ('quantity' in entry && signed !== 0)
      withJob.set(place, (withJob.get(place) ?? 0) + signed * entry.quantity);
  };
  const enterOne = (writing: Writing, each: Deed) => {
    const entry = entryOf(each);
    if (entry === null) return;
    try {
      const { id } = enterMovement(writing, entry.event);
      costs.set(id, entry.event.kind === 'received' ? entry.event.cost : 0);
      tally(entry.place, entry.event);
      entered += 1;
    } catch (error) {
      expect(error).toMatchObject({ code: 'NOT_ON_THE_SHELF' });
      refused += 1;
    }
  };
  const caller = async (deeds: readonly Deed[]) => {
    for (let from = 0; from < deeds.length; from += AT_A_TIME) {
      write(shop.context, ['test'], shop.by, (writing) => {
        for (const each of deeds.slice(from, from + AT_A_TIME)) enterOne(writing, each);
      });
      await new Promise((resolve) => setImmediate(resolve));
    }
  };

  const deeds = fc.sample(deed, { numRuns: MOVEMENTS, seed: ledgerSeed });
  for (let from = 0; from < MOVEMENTS; from += MOVEMENTS / 5) {
    const dealt = deeds.slice(from, from + MOVEMENTS / 5);
    await Promise.all([
      caller(dealt.filter((_, index) => index % 2 === 0)),
      caller(dealt.filter((_, index) => index % 2 === 1)),
    ]);
    checkPromises(shop.context, lines);
  }
  expect(entered).toBeGreaterThan(MOVEMENTS / 2);
  expect(refused).toBeGreaterThan(0);
  const shelves = workOutTwice(shop.context, {
    costOf: ({ id }) => costs.get(id) ?? 0,
    loose: [loose],
  });
  for (const partId of parts) {
    const [onHand, , , worth] = await shop.sums(partId);
    expect({ quantity: onHand, worth }).toEqual(shelves.get(partId));
  }
});

/** A second caller, by HTTP. */
async function overHttp<T>(use: (desk: ContractRouterClient<Contract>) => Promise<T>): Promise<T> {
  const session = { context: shop.context, gate: createCallGate(), close: async () => {} };
  const calls = createDeskCalls(session);
  const server = createServer((request, response) => void calls(request, response));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  try {
    return await use(createORPCClient(new RPCLink({ url: `http://127.0.0.1:${port}/rpc` })));
  } finally {
    await new Promise((resolve) => server.close(resolve));
  }
}

test(`one caller in process and one over HTTP, by the contract (seed ${contractSeed})`, {
  timeout: 60_000,
}, async () => {
  const CALLS = 300;
  const COST = 733;
  const REFUSALS = ['NOT_ON_THE_SHELF', 'MORE_THAN_ISSUED', 'PROMISED_ELSEWHERE'];
  const { parts, loose, jobs, lines } = await setUp(1, [60_000, 500]);
  const { by } = shop;
  for (const partId of parts) await shop.desk.parts.reprice({ by, partId, price: 1, cost: COST });

  const call = (desk: ContractRouterClient<Contract>, each: Deed): Promise<unknown> => {
    const { act, quantity, urgent } = each;
    const [partId, jobId] = [pick(parts, each.part), pick(jobs, each.job)];
    const reason = urgent || act === 'scrap' ? 'At random' : '';
    const moved = { by, partId, quantity, reason };
    switch (act) {
      case 'receive':
        return desk.parts.move({ ...moved, kind: 'received' });
      case 'issue': {
        const belowNothing = urgent && partId === loose;
        return desk.parts.move({ ...moved, kind: 'issued', jobId, belowNothing });
      }
      case 'return':
        return desk.parts.takeBack({ ...moved, jobId });
      case 'scrap':
        return desk.parts.move({ ...moved, kind: 'scrapped' });
      case 'find':
        return desk.parts.putRight({ by, partId, difference: quantity, reason: 'Found' });
      case 'miss':
        return desk.parts.move({ ...moved, kind: 'counted', reason: 'Counted' });
    }
  };
  const caller = async (desk: ContractRouterClient<Contract>, deeds: readonly Deed[]) => {
    for (const each of deeds)
      await call(desk, each).catch((error: unknown) =>
        expect(REFUSALS).toContain(Object(error).code),
      );
  };
  const deeds = fc.sample(deed, { numRuns: CALLS, seed: contractSeed });
  await overHttp((desk) =>
    Promise.all([
      caller(shop.desk, deeds.slice(0, CALLS / 2)),
      caller(desk, deeds.slice(CALLS / 2)),
    ]),
  );
  checkPromises(shop.context, lines);
  const shelves = workOutTwice(shop.context, {
    costOf: ({ quantity }) => Math.round((COST * quantity) / 1000),
    loose: [loose],
  });
  for (const partId of parts) {
    const [onHand, , , worth] = await shop.sums(partId);
    expect({ quantity: onHand, worth }).toEqual(shelves.get(partId) ?? { quantity: 0, worth: 0 });
  }
});
