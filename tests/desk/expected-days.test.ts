import { afterAll, beforeAll, expect, test } from 'vitest';
import type { JobId, SupplierId } from '../../shared/contract/ids.ts';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

/** A supplier names another day for what is on order, and the jobs that wait for it say so. */

let shop: PartsShop;
let supplierId: SupplierId;
beforeAll(async () => {
  shop = await openPartsShop();
  const { desk, by } = shop;
  ({ id: supplierId } = await desk.parts.addSupplier({
    by,
    name: 'Ardent Wholesale',
    leadDays: 6,
  }));
});
afterAll(() => shop.close());

/** A job whose piston and rings are on order: promised for 20 March, expected on the 8th. */
async function waitingJob(number: string) {
  const { desk, by, shelve, jobFor } = shop;
  const piston = await shelve(`${number}-P`);
  const rings = await shelve(`${number}-R`);
  const jobId = await jobFor([
    [piston, 1_000],
    [rings, 1_000],
  ]);
  const order = await desk.parts.placeOrder({
    by,
    supplierId,
    lines: [piston, rings].map((partId) => ({ partId, quantity: 1_000, unitCost: 100, jobId })),
  });
  await desk.parts.moveByParts({ by, jobId });
  const [pistonLine, ringsLine] = order.items;
  if (pistonLine === undefined || ringsLine === undefined) throw new Error('Lines are missing.');
  return { jobId, orderId: order.id, pistonLine: pistonLine.id, ringsLine: ringsLine.id };
}

const noteOf = async (id: JobId) => (await shop.desk.counter.job({ id })).stateNote;
const tooLate = async () =>
  (await shop.desk.counter.day({})).partsTooLate.map(({ job, expectedOn }) => [job.id, expectedOn]);

test('another day is kept beside the first, and the slowest part says when the job goes on', async () => {
  const { desk, by } = shop;
  const { jobId, orderId, ringsLine } = await waitingJob('X1');
  expect(await noteOf(jobId)).toMatch(/Mar 8, 2026; .*Mar 8, 2026$/);
  expect(await tooLate()).toEqual([]);
  const move = (expectedOn: string | null, reason: string) =>
    desk.parts.moveExpected({ by, orderId, lineIds: [ringsLine], expectedOn, reason });
  await move('2026-03-19', 'Back-order');
  expect(await tooLate()).toEqual([]);
  const order = await move('2026-03-27', 'Still not made');
  expect(order).toMatchObject({
    expectedOn: '2026-03-08',
    items: [
      { expectedOn: '2026-03-08', expectedChanges: [] },
      {
        expectedOn: '2026-03-27',
        expectedChanges: [
          { former: '2026-03-08', expectedOn: '2026-03-19', reason: 'Back-order' },
          { former: '2026-03-19', expectedOn: '2026-03-27', by: 'Ruth Okafor' },
        ],
      },
    ],
  });
  expect(await desk.parts.jobParts({ jobId })).toMatchObject({ expectedOn: '2026-03-27' });
  expect(await noteOf(jobId)).toMatch(/Mar 8, 2026; .*Mar 27, 2026$/);
  expect(await tooLate()).toEqual([[jobId, '2026-03-27']]);
  const toCome = await desk.parts.toCome({});
  expect(toCome.map(({ expectedOn }) => expectedOn)).toEqual(['2026-03-08', '2026-03-27']);

  // With another promise it comes in time; when nobody knows, nobody can say that it does not.
  const promise = { promisedFor: '2026-03-30', reason: 'Rings', told: 'text' } as const;
  await desk.counter.movePromise({ by, jobId, ...promise });
  expect(await tooLate()).toEqual([]);
  await move(null, 'The maker has closed');
  expect(await desk.parts.jobParts({ jobId })).toMatchObject({ expectedOn: null });
  expect(await noteOf(jobId)).toMatch(/on order$/);
});

test('what a person wrote beside the job stays as they wrote it', async () => {
  const { desk, by } = shop;
  const { jobId, orderId, pistonLine } = await waitingJob('X2');
  await desk.counter.moveJob({ by, jobId, to: 'go-ahead' });
  await desk.counter.moveJob({ by, jobId, to: 'waits-for-parts', note: 'Ask Ardent on Friday' });
  await desk.parts.moveExpected({
    by,
    orderId,
    lineIds: [pistonLine],
    expectedOn: '2026-03-18',
    reason: 'Back-order',
  });
  expect(await noteOf(jobId)).toBe('Ask Ardent on Friday');
});

test('a day that is past is none, and nothing is expected of what came or was given up', async () => {
  const { desk, by } = shop;
  const { orderId, pistonLine, ringsLine } = await waitingJob('X3');
  await desk.parts.closeShort({ by, orderId, lineIds: [ringsLine], reason: 'Out of print' });
  const before = shop.contents();
  const move = (lineIds: (typeof ringsLine)[], expectedOn: string) =>
    desk.parts.moveExpected({ by, orderId, lineIds, expectedOn, reason: 'Late' });
  await expect(move([pistonLine], '2026-03-01')).rejects.toMatchObject({
    code: 'EXPECTED_IN_THE_PAST',
    defined: true,
  });
  await expect(move([pistonLine, ringsLine], '2026-03-20')).rejects.toMatchObject({
    code: 'NOTHING_OWED',
  });
  expect(shop.contents()).toBe(before);
});
