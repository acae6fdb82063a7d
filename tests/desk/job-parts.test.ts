import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { stockMovement } from '../../db/schema/index.ts';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

/** A job's parts: issued by scanning, waited for, taken back; and shelves that have to be put right. */

let shop: PartsShop;
beforeAll(async () => {
  shop = await openPartsShop();
});
afterAll(() => shop.close());

describe('issuing by what was scanned', () => {
  test('a number of several parts means the one that the job needs, else one has to be chosen', async () => {
    const { desk, by, shelve, jobFor } = shop;
    const one = await shelve('A-1', 1_000);
    const other = await shelve('A-2', 1_000);
    for (const partId of [one, other])
      await desk.parts.addNumber({ by, partId, kind: 'maker', number: 'SHARED 7' });
    const jobId = await jobFor([[other, 1_000]]);
    const { issued } = await desk.parts.issue({ by, jobId, number: 'shared7' });
    expect(issued.number).toBe('A-2');
    const unrelated = await jobFor([[await shelve('A-3', 1_000), 1_000]]);
    await expect(
      desk.parts.issue({ by, jobId: unrelated, number: 'shared7' }),
    ).rejects.toMatchObject({
      code: 'NUMBER_OF_SEVERAL',
      data: { parts: [{ number: 'A-1' }, { number: 'A-2' }] },
    });
    await expect(desk.parts.issue({ by, jobId, number: 'nowhere' })).rejects.toMatchObject({
      code: 'NUMBER_UNKNOWN',
    });
  });

  test('what is promised to another job is taken with a reason only, and then that job misses it', async () => {
    const { desk, by, shelve, jobFor } = shop;
    const part = await shelve('B-1', 1_000);
    const first = await jobFor([[part, 1_000]]);
    const second = await jobFor([[part, 1_000]]);
    const issue = (reason = '') => desk.parts.issue({ by, jobId: second, number: 'B-1', reason });
    const code = (await desk.parts.jobParts({ jobId: first })).jobCode;
    await expect(issue()).rejects.toMatchObject({
      code: 'PROMISED_ELSEWHERE',
      data: { available: 0, jobs: [code] },
    });
    await issue('Goes out this afternoon');
    expect((await desk.parts.jobParts({ jobId: first })).missing).toBe(1);
  });

  test('a shelf goes below nothing with a reason only, and is then on the list to put right', async () => {
    const { desk, by, shelve, jobFor, sums } = shop;
    const part = await shelve('C-1', 1_000, { cost: 500 });
    const jobId = await jobFor([[part, 2_000]]);
    const issue = (more: { reason?: string; belowNothing?: boolean }) =>
      desk.parts.issue({ by, jobId, number: 'C-1', quantity: 2_000, ...more });
    for (const refused of [{}, { belowNothing: true }, { reason: 'In my hand' }])
      await expect(issue(refused)).rejects.toMatchObject({
        code: 'NOT_ON_THE_SHELF',
        defined: true,
      });
    await issue({ belowNothing: true, reason: 'Two were in the bin' });
    expect(await sums(part)).toEqual([-1_000, 0, 0, 0]);
    const { jobCode } = await desk.parts.jobParts({ jobId });
    expect(await desk.parts.toPutRight({})).toMatchObject([
      { number: 'C-1', onHand: -1_000, reason: 'Two were in the bin', jobCode, by: 'Ruth Okafor' },
    ]);
    await desk.parts.putRight({ by, partId: part, difference: 3_000, reason: 'Not booked in May' });
    expect(await desk.parts.toPutRight({})).toEqual([]);
    expect(await sums(part)).toEqual([2_000, 0, 0, 1_000]);
  });
});

test('no more comes back than went to the job', async () => {
  const { desk, by, shelve, jobFor } = shop;
  const part = await shelve('D-1', 5_000);
  const jobId = await jobFor([[part, 2_000]]);
  await desk.parts.issue({ by, jobId, number: 'D-1', quantity: 2_000 });
  const back = (quantity: number) =>
    desk.parts.takeBack({ by, jobId, partId: part, quantity, reason: 'Not needed' });
  expect((await back(1_000)).parts).toMatchObject([
    { issued: 2_000, returned: 1_000, withJob: 1_000, missing: 0 },
  ]);
  await expect(back(2_000)).rejects.toMatchObject({
    code: 'MORE_THAN_ISSUED',
    data: { withJob: 1_000 },
  });
});

test('a job waits for what is missing and goes on when the last part is there; a person says so', async () => {
  const { desk, by, shelve, jobFor } = shop;
  const [piston, rings] = [await shelve('E-1'), await shelve('E-2')];
  const jobId = await jobFor([
    [piston, 1_000],
    [rings, 1_000],
  ]);
  const job = () => desk.parts.jobParts({ jobId });
  expect(await job()).toMatchObject({ missing: 2, mayMoveTo: 'waits-for-parts', expectedOn: null });
  expect(await desk.parts.moveByParts({ by, jobId })).toMatchObject({ state: 'waits-for-parts' });
  const { stateNote } = await desk.counter.job({ id: jobId });
  expect(stateNote).toBe('E-1 (E-1), not ordered yet; E-2 (E-2), not ordered yet');
  const receive = (partId: typeof piston) =>
    desk.parts.move({ by, partId, kind: 'received', quantity: 1_000 });
  await receive(piston);
  expect(await job()).toMatchObject({ missing: 1, mayMoveTo: null });
  await expect(desk.parts.moveByParts({ by, jobId })).rejects.toMatchObject({
    code: 'NOTHING_TO_MOVE',
  });
  await receive(rings);
  expect(await job()).toMatchObject({ state: 'waits-for-parts', mayMoveTo: 'go-ahead' });
  const [card] = await desk.parts.jobsAndParts({});
  expect(card).toMatchObject({ jobId, state: 'waits-for-parts', missing: [], toIssue: 2 });
  expect(await desk.parts.moveByParts({ by, jobId })).toMatchObject({ state: 'go-ahead' });
});

test('in a store whose program made no promises yet, what lies there free is not missing', async () => {
  const { desk, by, shelve, jobFor, context, sums } = shop;
  const part = await shelve('G-1');
  const first = await jobFor([[part, 1_000]]);
  const second = await jobFor([[part, 1_000]]);
  const before = { partId: part, kind: 'received', quantity: 1_000, reason: '', by } as const;
  context.store.write((store) => {
    store
      .insert(stockMovement)
      .values({ id: crypto.randomUUID(), ...before, at: '2026-03-01T12:00:00.000Z' })
      .run();
  });
  expect((await sums(part))[1]).toBe(0);
  const missing = async (jobId: typeof first) => (await desk.parts.jobParts({ jobId })).missing;
  expect([await missing(first), await missing(second)]).toEqual([0, 1]);
  await desk.parts.issue({ by, jobId: first, number: 'G-1' });
});

test('the stores are worth what they were at the end of any day', async () => {
  const { desk, by, shelve, setClock } = shop;
  const day = async (on: string, work: () => Promise<unknown>) => {
    setClock(`${on}T18:00:00.000Z`);
    await work();
  };
  let part = '' as Awaited<ReturnType<typeof shelve>>;
  await day('2026-05-04', async () => {
    part = await shelve('F-1', 4_000, { cost: 250 });
  });
  await day('2026-05-06', () =>
    desk.parts.move({ by, partId: part, kind: 'scrapped', quantity: 1_000, reason: 'Bent' }),
  );
  const worth = async (on: string) =>
    (await desk.parts.valuation({ on })).shelves.find(({ id }) => id === part);
  expect(await worth('2026-05-03')).toBeUndefined();
  expect(await worth('2026-05-05')).toMatchObject({ onHand: 4_000, worth: 1_000, average: 250 });
  expect(await worth('2026-05-06')).toMatchObject({ onHand: 3_000, worth: 750 });
});
