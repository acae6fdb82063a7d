import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

/** What is promised to which job follows from what customers approved and what is on the shelf. */

let shop: PartsShop;
beforeAll(async () => {
  shop = await openPartsShop();
});
afterAll(() => shop.close());

const promisedTo = async (partId: Parameters<PartsShop['sums']>[0]) => (await shop.sums(partId))[1];

test('an approval promises its parts, as far as they are there, and a new one promises anew', async () => {
  const { shelve, jobFor, approve } = shop;
  const piston = await shelve('P-1', 5_000);
  const rings = await shelve('P-2', 1_000);
  const jobId = await jobFor([
    [piston, 2_000],
    [rings, 2_000],
    [piston, 1_000],
  ]);
  expect([await promisedTo(piston), await promisedTo(rings)]).toEqual([3_000, 1_000]);
  await approve(jobId, [[piston, 1_000]]);
  expect([await promisedTo(piston), await promisedTo(rings)]).toEqual([1_000, 0]);
});

test('what comes in goes to the job that was approved first; a stopped job lets go', async () => {
  const { desk, by, shelve, jobFor } = shop;
  const part = await shelve('P-3');
  const first = await jobFor([[part, 1_000]]);
  const second = await jobFor([[part, 1_000]]);
  await desk.parts.move({ by, partId: part, kind: 'received', quantity: 1_000 });
  const owners = async () => {
    const { movements } = await desk.parts.part({ id: part });
    const held = Map.groupBy(movements, ({ jobCode }) => jobCode);
    return Object.fromEntries(
      [...held].map(([code, all]) => [code, all.reduce((sum, one) => sum + one.reserved, 0)]),
    );
  };
  const codeOf = async (jobId: typeof first) => (await desk.counter.job({ id: jobId })).code;
  expect(await owners()).toMatchObject({ [await codeOf(first)]: 1_000 });
  await desk.counter.moveJob({ by, jobId: first, to: 'stopped', note: 'Not worth it' });
  expect(await owners()).toMatchObject({ [await codeOf(first)]: 0, [await codeOf(second)]: 1_000 });
});

test('issuing uses the promise up, an unused part goes back at its cost and is not promised again', async () => {
  const { desk, by, shelve, jobFor, sums } = shop;
  const part = await shelve('P-4', 3_000, { cost: 700 });
  const jobId = await jobFor([[part, 2_000]]);
  const move = (kind: 'issued' | 'returned', quantity: number) =>
    desk.parts.move({ by, partId: part, jobId, kind, quantity });
  expect(await sums(part)).toEqual([3_000, 2_000, 0, 2_100]);
  await move('issued', 2_000);
  expect(await sums(part)).toEqual([1_000, 0, 0, 700]);
  await desk.parts.reprice({ by, partId: part, price: 100, cost: 9_000 });
  await move('returned', 1_000);
  expect(await sums(part)).toEqual([2_000, 0, 0, 1_400]);
});

test('a bill keeps what it names promised, and lets go of what it leaves out', async () => {
  const { desk, by, shelve, jobFor } = shop;
  const part = await shelve('P-5', 2_000);
  const other = await shelve('P-5b', 1_000);
  const jobId = await jobFor([
    [part, 2_000],
    [other, 1_000],
  ]);
  expect([await promisedTo(part), await promisedTo(other)]).toEqual([2_000, 1_000]);
  const line = { kind: 'part' as const, description: 'Part', partId: part, unitPrice: 100 };
  await desk.till.issueInvoice({ by, jobId, lines: [{ ...line, quantity: 1_000 }] });
  expect([await promisedTo(part), await promisedTo(other)]).toEqual([1_000, 0]);
});

test('a shelf that is found to hold fewer takes promises back from the last', async () => {
  const { desk, by, shelve, jobFor } = shop;
  const part = await shelve('P-6', 3_000);
  await jobFor([[part, 2_000]]);
  await jobFor([[part, 1_000]]);
  const counted = {
    by,
    partId: part,
    kind: 'counted' as const,
    quantity: 1_000,
    reason: 'Counted',
  };
  await desk.parts.move(counted);
  expect(await promisedTo(part)).toBe(1_000);
});
