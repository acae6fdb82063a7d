import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

/** Kits: what is in them, and how they are opened onto the shelf and onto a job. */

let shop: PartsShop;
beforeAll(async () => {
  shop = await openPartsShop();
});
afterAll(() => shop.close());

async function gasketSet(number: string, kits = 2_000) {
  const { desk, by, shelve } = shop;
  const head = await shelve(`${number}-head`, 0, { cost: 300 });
  const base = await shelve(`${number}-base`, 0, { cost: 100 });
  const kit = await shelve(number, kits, { cost: 1_000 });
  const pieces = [
    { partId: head, quantity: 1_000 },
    { partId: base, quantity: 2_000 },
  ];
  await desk.parts.setPieces({ by, kitId: kit, pieces });
  return { kit, head, base };
}

test('an opened kit leaves the shelf and its pieces come onto it for the same worth', async () => {
  const { desk, by, sums } = shop;
  const { kit, head, base } = await gasketSet('GS-1');
  await desk.parts.openKit({ by, kitId: kit });
  expect(await sums(kit)).toEqual([1_000, 0, 0, 1_000]);
  expect(await sums(head)).toEqual([1_000, 0, 0, 600]);
  expect(await sums(base)).toEqual([2_000, 0, 0, 400]);
  await expect(desk.parts.openKit({ by, kitId: head })).rejects.toMatchObject({ code: 'NO_KIT' });
  await expect(desk.parts.openKit({ by, kitId: kit, kits: 2 })).rejects.toMatchObject({
    code: 'NOT_ON_THE_SHELF',
    defined: true,
  });
});

test('a piece that was missing stays out, and the rest is worth what the kit was', async () => {
  const { desk, by, sums } = shop;
  const { kit, head, base } = await gasketSet('GS-2');
  await desk.parts.openKit({ by, kitId: kit, without: [base], reason: 'Base gasket torn' });
  expect([await sums(head), await sums(base)]).toEqual([
    [1_000, 0, 0, 1_000],
    [0, 0, 0, 0],
  ]);
});

test('opened for a job, the kit is what the job needed, and only the pieces it got cost it', async () => {
  const { desk, by, sums, jobFor } = shop;
  const { kit, head, base } = await gasketSet('GS-3', 1_000);
  const jobId = await jobFor([[kit, 1_000]]);
  expect(await sums(kit)).toEqual([1_000, 1_000, 0, 1_000]);
  const toJob = [{ partId: head, quantity: 1_000 }];
  await desk.parts.openKit({ by, kitId: kit, jobId, toJob });
  expect([await sums(kit), await sums(head), await sums(base)]).toEqual([
    [0, 0, 0, 0],
    [0, 0, 0, 0],
    [2_000, 0, 0, 400],
  ]);
  expect(await desk.parts.jobParts({ jobId })).toMatchObject({ missing: 0, cost: 600 });
  // The kit is on the bill already: its pieces don't come to it again.
  expect((await desk.till.billAhead({ jobId })).beyond).toEqual([]);
});

test('pieces that don’t come out of the kit, or too many, are refused at their place', async () => {
  const { desk, by, shelve, jobFor } = shop;
  const { kit, base } = await gasketSet('GS-4');
  const stranger = await shelve('X-1', 1_000);
  const jobId = await jobFor([[kit, 1_000]]);
  const toJob = [
    { partId: stranger, quantity: 1_000 },
    { partId: base, quantity: 3_000 },
  ];
  await expect(desk.parts.openKit({ by, kitId: kit, jobId, toJob })).rejects.toMatchObject({
    code: 'BAD_INPUT',
    data: { issues: [{ path: 'toJob.0.partId' }, { path: 'toJob.1.quantity' }] },
  });
});

test('a kit is in itself neither directly nor by another', async () => {
  const { desk, by, shelve } = shop;
  const { kit } = await gasketSet('GS-5');
  const big = await shelve('BIG-1');
  const one = (partId: typeof kit) => [{ partId, quantity: 1_000 }];
  await desk.parts.setPieces({ by, kitId: big, pieces: one(kit) });
  await expect(desk.parts.setPieces({ by, kitId: kit, pieces: one(big) })).rejects.toMatchObject({
    code: 'KIT_LOOP',
    data: { numbers: ['BIG-1'] },
  });
  await expect(desk.parts.setPieces({ by, kitId: kit, pieces: one(kit) })).rejects.toMatchObject({
    code: 'KIT_LOOP',
  });
});
