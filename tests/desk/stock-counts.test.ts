import { afterEach, beforeEach, expect, test } from 'vitest';
import type { PartId, StockCountId } from '../../shared/contract/ids.ts';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

let shop: PartsShop;
beforeEach(async () => {
  shop = await openPartsShop();
});
afterEach(() => shop.close());

const BIN = 'B2-04';

/** A part of the bin with so many on the shelf. */
async function binned(number: string, onHand: number, cost = 0): Promise<PartId> {
  const { desk, by } = shop;
  const { id } = await desk.parts.add({
    by,
    number,
    description: `Part ${number}`,
    bin: BIN,
    price: 100,
    cost,
  });
  if (onHand > 0) await desk.parts.move({ by, partId: id, kind: 'received', quantity: onHand });
  return id;
}

const begin = async (): Promise<StockCountId> =>
  (await shop.desk.parts.openCount({ by: shop.by, bin: BIN })).id;

const put = (countId: StockCountId, partId: PartId, counted: number) =>
  shop.desk.parts.countPart({ by: shop.by, countId, partId, counted });

test('nobody is told what should be there until the count is closed', async () => {
  const { desk, by } = shop;
  const piston = await binned('GP 300-1', 5_000);
  const gasket = await binned('GP 300-2', 2_000);
  const countId = await begin();
  const counting = await put(countId, piston, 4_000);
  expect(counting.lines.map(({ counted, outcome }) => ({ counted, outcome }))).toEqual([
    { counted: 4_000, outcome: null },
    { counted: null, outcome: null },
  ]);
  expect(JSON.stringify(counting)).not.toContain('5000');
  await expect(desk.parts.closeCount({ by, countId })).rejects.toMatchObject({
    code: 'NOT_ALL_COUNTED',
    data: { numbers: ['GP 300-2'] },
  });
  await put(countId, gasket, 2_000);
  const closed = await desk.parts.closeCount({ by, countId });
  expect(closed.lines.map(({ outcome }) => outcome)).toEqual([
    { expected: 5_000, difference: -1_000, explanation: '', worth: null },
    { expected: 2_000, difference: 0, explanation: '', worth: null },
  ]);
  await expect(put(countId, piston, 5_000)).rejects.toMatchObject({ code: 'COUNT_CLOSED' });
});

test('a difference goes onto the shelf when it is explained, and only then', async () => {
  const { desk, by, sums } = shop;
  const piston = await binned('GP 300-1', 5_000, 1_250);
  const countId = await begin();
  await put(countId, piston, 4_000);
  await expect(
    desk.parts.explainDifference({ by, countId, partId: piston, explanation: 'Lost' }),
  ).rejects.toMatchObject({ code: 'COUNT_OPEN' });
  await desk.parts.closeCount({ by, countId });
  expect(await sums(piston)).toEqual([5_000, 0, 0, 6_250]);
  expect((await desk.parts.counts({}))[0]).toMatchObject({ id: countId, unexplained: 1 });

  const explained = await desk.parts.explainDifference({
    by,
    countId,
    partId: piston,
    explanation: 'Used on the shop’s own tiller',
  });
  expect(explained.lines[0]?.outcome).toEqual({
    expected: 5_000,
    difference: -1_000,
    explanation: 'Used on the shop’s own tiller',
    worth: -1_250,
  });
  expect(await sums(piston)).toEqual([4_000, 0, 0, 5_000]);
  const { movements } = await desk.parts.part({ id: piston });
  expect(movements[0]).toMatchObject({
    kind: 'counted',
    quantity: -1_000,
    reason: 'Used on the shop’s own tiller',
  });
  await expect(
    desk.parts.explainDifference({ by, countId, partId: piston, explanation: 'Again' }),
  ).rejects.toMatchObject({ code: 'NOTHING_TO_EXPLAIN' });
});

test('what moves between the counting and the closing is no difference', async () => {
  const { desk, by, sums } = shop;
  const piston = await binned('GP 300-1', 5_000);
  const countId = await begin();
  await put(countId, piston, 4_000);
  await desk.parts.move({ by, partId: piston, kind: 'received', quantity: 3_000 });
  await desk.parts.closeCount({ by, countId });
  await desk.parts.explainDifference({ by, countId, partId: piston, explanation: 'Not found' });
  expect((await sums(piston))[0]).toBe(7_000);
});

test('what was missing may have been issued since: the shelf is then to be put right', async () => {
  const { desk, by, sums } = shop;
  const piston = await binned('GP 300-1', 2_000);
  const countId = await begin();
  await put(countId, piston, 1_000);
  await desk.parts.closeCount({ by, countId });
  await desk.parts.move({
    by,
    partId: piston,
    kind: 'scrapped',
    quantity: 2_000,
    reason: 'Cracked',
  });
  await desk.parts.explainDifference({ by, countId, partId: piston, explanation: 'Not found' });
  expect((await sums(piston))[0]).toBe(-1_000);
  expect(await desk.parts.toPutRight({})).toMatchObject([{ id: piston, reason: 'Not found' }]);
});

test('a second look takes the place of the figure, against the shelf as it is then', async () => {
  const { desk, by, sums } = shop;
  const piston = await binned('GP 300-1', 5_000);
  const gasket = await binned('GP 300-2', 5_000);
  const countId = await begin();
  for (const partId of [piston, gasket]) await put(countId, partId, 2_000);
  await desk.parts.closeCount({ by, countId });
  const look = (partId: PartId, recounted: number) =>
    desk.parts.explainDifference({ by, countId, partId, recounted, explanation: 'Behind a box' });
  await look(piston, 5_000);
  await look(gasket, 6_000);
  expect((await sums(piston))[0]).toBe(5_000);
  expect((await sums(gasket))[0]).toBe(6_000);
  expect((await desk.parts.part({ id: piston })).movements).toHaveLength(1);
  expect((await desk.parts.counts({}))[0]).toMatchObject({ unexplained: 0 });
});

test('what lies in the bin though it belongs elsewhere is counted there too', async () => {
  const { desk, by, shelve } = shop;
  const piston = await binned('GP 300-1', 1_000);
  const stray = await shelve('AA 1', 1_000);
  const countId = await begin();
  await put(countId, piston, 1_000);
  const { lines } = await put(countId, stray, 1_000);
  expect(lines.map(({ number, bin }) => [number, bin])).toEqual([
    ['GP 300-1', BIN],
    ['AA 1', ''],
  ]);
  const closed = await desk.parts.closeCount({ by, countId });
  expect(closed.lines.every(({ outcome }) => outcome?.difference === 0)).toBe(true);
});

test('a bin is counted once at a time, and bins that nobody counted come first', async () => {
  const { desk, by } = shop;
  const piston = await binned('GP 300-1', 1_000);
  await desk.parts.add({ by, number: 'GP 9', description: 'Key', bin: 'A1', price: 100 });
  const countId = await begin();
  await expect(desk.parts.openCount({ by, bin: BIN })).rejects.toMatchObject({
    code: 'COUNT_GOING_ON',
    data: { countId },
  });
  await expect(desk.parts.openCount({ by, bin: 'Z9' })).rejects.toMatchObject({
    code: 'BIN_EMPTY',
  });
  await put(countId, piston, 1_000);
  await desk.parts.closeCount({ by, countId });
  expect(await desk.parts.binsToCount({})).toEqual([
    { bin: 'A1', bins: 1, parts: 1, countedOn: null, openCountId: null },
    { bin: BIN, bins: 1, parts: 1, countedOn: '2026-03-02', openCountId: null },
  ]);
});

test('a count that is given up has changed nothing', async () => {
  const { desk, by, sums } = shop;
  const piston = await binned('GP 300-1', 5_000);
  const countId = await begin();
  await put(countId, piston, 0);
  expect(await desk.parts.dropCount({ by, countId })).toEqual([]);
  expect((await sums(piston))[0]).toBe(5_000);
  await expect(desk.parts.count({ id: countId })).rejects.toMatchObject({ code: 'NOT_FOUND' });
});

test('a rack is counted as a whole, and its bins are counted with it', async () => {
  const { desk, by } = shop;
  const piston = await binned('GP 300-1', 1_000);
  const key = await desk.parts.add({
    by,
    number: 'AA',
    description: 'Key',
    bin: 'B2-05',
    price: 1,
  });
  await desk.parts.add({ by, number: 'BB', description: 'Key', bin: 'B20-1', price: 1 });
  const rack = await desk.parts.openCount({ by, bin: 'B2' });
  expect(rack.lines.map(({ number }) => number)).toEqual(['GP 300-1', 'AA']);
  await expect(begin()).rejects.toMatchObject({
    code: 'COUNT_GOING_ON',
    data: { countId: rack.id },
  });
  await put(rack.id, piston, 1_000);
  await put(rack.id, key.id, 0);
  await desk.parts.closeCount({ by, countId: rack.id });
  const counted = (await desk.parts.binsToCount({})).map(({ bin, bins, countedOn }) => [
    bin,
    bins,
    countedOn,
  ]);
  expect(counted).toEqual([
    ['B20-1', 1, null],
    ['B2', 2, '2026-03-02'],
    [BIN, 1, '2026-03-02'],
    ['B2-05', 1, '2026-03-02'],
  ]);
});
