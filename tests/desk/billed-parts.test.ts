import { afterAll, beforeAll, expect, test } from 'vitest';
import type { JobId, PartId } from '../../shared/contract/ids.ts';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

/** What is billed is needed until it has left the shelf, whatever becomes of the job. */

let shop: PartsShop;
beforeAll(async () => {
  shop = await openPartsShop();
});
afterAll(() => shop.close());

const open = async (jobId: JobId) => {
  const { parts } = await shop.desk.parts.jobParts({ jobId });
  return Object.fromEntries(parts.map((each) => [each.part.number, each.open]));
};
const listed = async (jobId: JobId) =>
  (await shop.desk.parts.billedNotIssued({})).find((each) => each.jobId === jobId)?.parts ?? [];
const onHand = async (partId: PartId) => (await shop.sums(partId))[0];

test('a bill that was not issued stays a need, and is taken off the shelf with one press', async () => {
  const { desk, by, shelve, jobFor } = shop;
  const rings = await shelve('B-1', 3_000);
  const gasket = await shelve('B-2', 3_000);
  const jobId = await jobFor([
    [rings, 1_000],
    [gasket, 2_000],
  ]);
  await desk.till.issueInvoice({ by, jobId });
  expect(await open(jobId)).toEqual({ 'B-1': 1_000, 'B-2': 2_000 });
  expect(await listed(jobId)).toMatchObject([
    { part: { number: 'B-1' }, quantity: 1_000, onShelf: 1_000 },
    { part: { number: 'B-2' }, quantity: 2_000, onShelf: 2_000 },
  ]);
  expect(await desk.parts.issueBilled({ by, jobId, partIds: [rings] })).toMatchObject([
    { part: { number: 'B-2' } },
  ]);
  expect(await desk.parts.issueBilled({ by, jobId })).toEqual([]);
  expect([await onHand(rings), await onHand(gasket)]).toEqual([2_000, 1_000]);
  expect(await listed(jobId)).toEqual([]);
  await expect(desk.parts.issueBilled({ by, jobId })).rejects.toMatchObject({
    code: 'NOTHING_TO_ISSUE',
  });
});

test('the invoice takes them along in the same call', async () => {
  const { desk, by, shelve, jobFor } = shop;
  const rings = await shelve('B-3', 3_000);
  const jobId = await jobFor([[rings, 2_000]]);
  await desk.parts.issue({ by, jobId, number: 'B-3', quantity: 1_000 });
  const lines = [{ partId: rings, quantity: 2_000 }];
  expect(await desk.parts.notIssuedOf({ jobId, lines })).toMatchObject([
    { quantity: 1_000, onShelf: 1_000 },
  ]);
  await desk.till.issueInvoice({ by, jobId, issueParts: true });
  expect(await onHand(rings)).toBe(1_000);
  expect(await listed(jobId)).toEqual([]);
});

test('what the shelf cannot give stays billed and not issued, and others’ promises are left alone', async () => {
  const { desk, by, shelve, jobFor } = shop;
  const rings = await shelve('B-4', 1_000);
  const first = await jobFor([[rings, 1_000]]);
  const second = await jobFor([[rings, 1_000]]);
  await desk.till.issueInvoice({ by, jobId: second, issueParts: true });
  expect(await onHand(rings)).toBe(1_000);
  expect(await listed(second)).toMatchObject([{ quantity: 1_000, onShelf: 0 }]);
  expect(await open(first)).toEqual({ 'B-4': 1_000 });
});

test('what came back from a job is needed again once it is billed, and a credit note ends it', async () => {
  const { desk, by, shelve, jobFor } = shop;
  const rings = await shelve('B-5', 2_000);
  const jobId = await jobFor([[rings, 1_000]]);
  await desk.parts.issue({ by, jobId, number: 'B-5' });
  const { invoice } = await desk.till.issueInvoice({ by, jobId });
  expect(await listed(jobId)).toEqual([]);
  await desk.parts.takeBack({ by, jobId, partId: rings, quantity: 1_000 });
  expect(await listed(jobId)).toMatchObject([{ quantity: 1_000, onShelf: 1_000 }]);
  if (invoice === null) throw new Error('There is no invoice.');
  await desk.till.creditInvoice({
    by,
    invoiceId: invoice.id,
    reason: 'Not used',
    lines: [{ line: 0 }],
  });
  expect(await listed(jobId)).toEqual([]);
});

test('a part that did not come off the shelf is explained, and no more of it than is billed', async () => {
  const { desk, by, shelve, jobFor, sums } = shop;
  const rings = await shelve('B-6', 2_000);
  const jobId = await jobFor([[rings, 1_000]]);
  await desk.till.issueInvoice({ by, jobId });
  const reason = 'The customer brought it along';
  const said = { by, jobId, partId: rings, reason };
  await expect(desk.parts.fromElsewhere({ ...said, quantity: 2_000 })).rejects.toMatchObject({
    code: 'MORE_THAN_BILLED',
    data: { open: 1_000 },
  });
  expect(await desk.parts.fromElsewhere({ ...said, quantity: 1_000 })).toEqual([]);
  expect((await sums(rings)).slice(0, 2)).toEqual([2_000, 0]);
  const { parts } = await desk.parts.jobParts({ jobId });
  expect(parts).toMatchObject([{ needed: 0, elsewhere: 1_000, open: 0 }]);
});

test('the current part is issued for the former one that the bill names', async () => {
  const { desk, by, shelve, jobFor } = shop;
  const former = await shelve('B-7', 1_000);
  const jobId = await jobFor([[former, 2_000]]);
  const current = await shelve('B-8', 5_000);
  await desk.parts.supersede({ by, partId: former, supersededBy: current });
  await desk.till.issueInvoice({ by, jobId, issueParts: true });
  expect([await onHand(former), await onHand(current)]).toEqual([0, 4_000]);
  expect(await listed(jobId)).toEqual([]);
});

test('the pieces of a billed kit that was opened for the job count as the kit', async () => {
  const { desk, by, shelve, jobFor } = shop;
  const kit = await shelve('B-KIT', 2_000);
  const piece = await shelve('B-PIECE');
  await desk.parts.setPieces({ by, kitId: kit, pieces: [{ partId: piece, quantity: 1_000 }] });
  const jobId = await jobFor([[kit, 1_000]]);
  await desk.parts.openKit({
    by,
    kitId: kit,
    jobId,
    toJob: [{ partId: piece, quantity: 1_000 }],
  });
  await desk.till.issueInvoice({ by, jobId });
  expect(await listed(jobId)).toEqual([]);
});
