import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { drawPaper } from '../../electron/paper/index.ts';
import type { SupplierId } from '../../shared/contract/ids.ts';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

/** Orders to suppliers, from the first line to the last piece that came or was given up. */

let shop: PartsShop;
let supplierId: SupplierId;
beforeAll(async () => {
  shop = await openPartsShop({ drawPaper });
  const { desk, by } = shop;
  ({ id: supplierId } = await desk.parts.addSupplier({
    by,
    name: 'Ardent Wholesale',
    accountNumber: 'MB-77',
    leadDays: 6,
    carriage: 950,
    freeCarriageFrom: 20_000,
  }));
});
afterAll(() => shop.close());

type Lines = Parameters<PartsShop['desk']['parts']['placeOrder']>[0]['lines'];
const place = (lines: Lines) => shop.desk.parts.placeOrder({ by: shop.by, supplierId, lines });

/** A job that needs a part which is there. */
const otherJob = async (number: string) => shop.jobFor([[await shop.shelve(number, 1_000), 1_000]]);

/** The only line of an order. */
const first = ({ items }: Awaited<ReturnType<typeof place>>) => {
  const [item] = items;
  if (item === undefined) throw new Error('The order has no line.');
  return item;
};

test('an order has the next number, a paper and a day, and what it orders is on order', async () => {
  const { desk, shelve, sums } = shop;
  const part = await shelve('B-1', 2_000, { cost: 300 });
  const order = await place([
    { partId: part, quantity: 5_000, unitCost: 310, supplierNumber: 'AW 991' },
  ]);
  expect(order).toMatchObject({
    number: 'P-000001',
    state: 'awaited',
    expectedOn: '2026-03-08',
    late: false,
    goods: 1_550,
  });
  expect(await sums(part)).toEqual([2_000, 0, 5_000, 600]);
  expect(order.paper.title).toBe('Purchase order P-000001');
  const pdf = await desk.office.paper({ id: order.paper.id });
  expect(Buffer.from(pdf.pdf, 'base64').subarray(0, 5).toString()).toBe('%PDF-');
  const { fileName, text } = await desk.parts.orderFile({ id: order.id });
  expect(fileName).toBe('purchase-order-P-000001.csv');
  expect(parse(text, { columns: true })).toEqual([
    {
      Order: 'P-000001',
      Line: '1',
      'Your number': 'AW 991',
      'Our number': 'B-1',
      Description: 'B-1',
      Quantity: '5.000',
      Unit: 'pc',
      'Unit price, USD': '3.10',
      'Amount, USD': '15.50',
      'For job': '',
    },
  ]);
});

test('it comes in part at another price, then the rest is waited for no longer', async () => {
  const { desk, by, shelve, sums } = shop;
  const part = await shelve('B-2', 1_000, { cost: 1_000 });
  const order = await place([{ partId: part, quantity: 4_000, unitCost: 1_000 }]);
  const { id: lineId } = first(order);
  const { order: after, received } = await desk.parts.receive({
    by,
    orderId: order.id,
    lines: [{ lineId, quantity: 3_000, unitCost: 1_200 }],
    deliveryNote: 'DN 4711',
  });
  expect(received).toMatchObject([
    {
      orderedAt: 1_000,
      paid: 1_200,
      averageBefore: 1_000,
      averageAfter: 1_150,
      costBefore: 1_000,
      costAfter: 1_200,
    },
  ]);
  expect(await sums(part)).toEqual([4_000, 0, 1_000, 4_600]);
  expect(after.state).toBe('part-in');
  const toCome = await desk.parts.toCome({});
  expect(toCome.map(({ orderNumber, received, owed }) => [orderNumber, received, owed])).toEqual([
    ['P-000001', 0, 5_000],
    ['P-000002', 3_000, 1_000],
  ]);
  expect(first(after)).toMatchObject({ received: 3_000, owed: 1_000, closed: 0 });
  expect(first(after).events[0]?.words).toBe(
    'delivery note DN 4711, at $12.00 each (ordered at $10.00)',
  );
  const closed = await desk.parts.closeShort({ by, orderId: order.id, reason: 'Out of print' });
  expect(closed.state).toBe('complete');
  expect(first(closed)).toMatchObject({ received: 3_000, owed: 0, closed: 1_000 });
  expect(await sums(part)).toEqual([4_000, 0, 0, 4_600]);
  const again = desk.parts.closeShort({ by, orderId: order.id, reason: 'Again' });
  await expect(again).rejects.toMatchObject({ code: 'NOTHING_OWED' });
  const open = await desk.parts.orders({});
  expect(open.map(({ number }) => number)).toEqual(['P-000001']);
});

test('more than was ordered is refused, unless somebody keeps it; then nothing is owed', async () => {
  const { desk, by, shelve, sums } = shop;
  const part = await shelve('B-3');
  const order = await place([{ partId: part, quantity: 2_000, unitCost: 500 }]);
  const input = {
    by,
    orderId: order.id,
    lines: [{ lineId: first(order).id, quantity: 3_000, unitCost: 500 }],
  };
  await expect(desk.parts.receive(input)).rejects.toMatchObject({
    code: 'MORE_THAN_ORDERED',
    data: { owed: 2_000 },
  });
  const { order: after } = await desk.parts.receive({ ...input, keepMore: true });
  expect(after.state).toBe('complete');
  expect(first(after)).toMatchObject({ received: 3_000, owed: 0 });
  expect(await sums(part)).toEqual([3_000, 0, 0, 1_500]);
});

test('carriage is shared out by what the goods cost, to the cent', async () => {
  const { desk, by, shelve, sums } = shop;
  const dear = await shelve('B-4');
  const cheap = await shelve('B-5');
  const order = await place([
    { partId: dear, quantity: 1_000, unitCost: 9_000 },
    { partId: cheap, quantity: 3_000, unitCost: 1_000 },
  ]);
  const [one, other] = order.items;
  if (one === undefined || other === undefined) throw new Error('Two lines were ordered.');
  const { received } = await desk.parts.receive({
    by,
    orderId: order.id,
    lines: [
      { lineId: one.id, quantity: 1_000, unitCost: 9_000 },
      { lineId: other.id, quantity: 3_000, unitCost: 1_000 },
    ],
    carriage: 951,
    shareCarriage: true,
    takeOnCosts: false,
  });
  expect(received.map(({ carriage }) => carriage)).toEqual([713, 238]);
  expect((await sums(dear))[3]).toBe(9_713);
  expect((await sums(cheap))[3]).toBe(3_238);
  expect((await desk.parts.part({ id: dear })).part.cost).toBe(0);
});

test('a special order is a need of its job and goes to that job first when it comes', async () => {
  const { desk, by, shelve, jobFor, sums } = shop;
  const part = await shelve('B-6');
  await jobFor([[part, 1_000]]);
  const special = await otherJob('OTHER-1');
  const order = await place([{ partId: part, quantity: 1_000, unitCost: 700, jobId: special }]);
  const of = async () =>
    (await desk.parts.jobParts({ jobId: special })).parts.find((each) => each.part.id === part);
  expect(await of()).toMatchObject({
    needed: 1_000,
    missing: 1_000,
    onOrder: 1_000,
    expectedOn: order.expectedOn,
  });
  await desk.parts.receive({
    by,
    orderId: order.id,
    lines: [{ lineId: first(order).id, quantity: 1_000, unitCost: 700 }],
  });
  expect(await of()).toMatchObject({ promised: 1_000, missing: 0 });
  expect(await sums(part)).toEqual([1_000, 1_000, 0, 700]);
});

test('a special order that is given up is no need of its job any more; a stopped job gets none', async () => {
  const { desk, by, shelve } = shop;
  const part = await shelve('B-7');
  const jobId = await otherJob('OTHER-2');
  const order = await place([{ partId: part, quantity: 1_000, unitCost: 700, jobId }]);
  await desk.parts.closeShort({ by, orderId: order.id, reason: 'Customer changed their mind' });
  const { parts } = await desk.parts.jobParts({ jobId });
  expect(parts.map((each) => each.part.number)).toEqual(['OTHER-2']);
  await desk.counter.moveJob({ by, jobId, to: 'stopped', note: 'Not worth it' });
  await expect(
    place([{ partId: part, quantity: 1_000, unitCost: 700, jobId }]),
  ).rejects.toMatchObject({ code: 'JOB_NEEDS_NOTHING' });
});

test('an order below the supplier’s minimum wants their word, and a refused one takes no number', async () => {
  const { desk, by, shelve } = shop;
  const part = await shelve('B-8');
  const { id } = await desk.parts.addSupplier({ by, name: 'Bulk & Sons', minimumOrder: 10_000 });
  const input = {
    by,
    supplierId: id,
    lines: [{ partId: part, quantity: 1_000, unitCost: 4_000 }],
  };
  await expect(desk.parts.placeOrder(input)).rejects.toMatchObject({
    code: 'BELOW_MINIMUM',
    data: { short: 6_000 },
  });
  const before = (await desk.parts.orders({ open: false }))[0]?.number;
  const { number } = await desk.parts.placeOrder({ ...input, belowMinimum: true });
  expect(Number(number.slice(2))).toBe(Number(before?.slice(2)) + 1);
});

test('an order that is not in by its day is late', async () => {
  const { desk, by, shelve } = shop;
  const part = await shelve('B-9');
  const line = { partId: part, quantity: 1_000, unitCost: 100 };
  const { id } = await desk.parts.placeOrder({
    by,
    supplierId,
    expectedOn: '2026-03-01',
    lines: [line],
  });
  expect((await desk.parts.order({ id })).late).toBe(true);
  await desk.parts.closeShort({ by, orderId: id, reason: 'Lost on the way' });
  expect((await desk.parts.order({ id })).late).toBe(false);
});

test('how long a supplier really took is told by the lines that came in', async () => {
  const { desk, by, shelve, setClock } = shop;
  const { id } = await desk.parts.addSupplier({ by, name: 'Harle & Co', leadDays: 3 });
  const part = await shelve('B-10');
  const orderAndReceive = async (ordered: string, came: string) => {
    setClock(ordered);
    const order = await desk.parts.placeOrder({
      by,
      supplierId: id,
      lines: [{ partId: part, quantity: 2_000, unitCost: 100 }],
    });
    const line = { lineId: first(order).id, quantity: 1_000, unitCost: 100 };
    setClock(came);
    await desk.parts.receive({ by, orderId: order.id, lines: [line] });
    // What comes later of the same line is no other line.
    setClock('2026-05-28T15:00:00.000Z');
    await desk.parts.receive({ by, orderId: order.id, lines: [line] });
  };
  await orderAndReceive('2026-05-01T15:00:00.000Z', '2026-05-05T15:00:00.000Z');
  expect(await desk.parts.supplierLead({ supplierId: id })).toBeNull();
  await orderAndReceive('2026-05-10T23:50:00.000Z', '2026-05-16T12:00:00.000Z');
  // 4 and 6 days: a mean of 5 with a standard deviation of √2.
  expect(await desk.parts.supplierLead({ supplierId: id })).toEqual({
    lines: 2,
    days: 5_000,
    spread: 1_414,
  });
});
