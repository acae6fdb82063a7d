import { setImmediate as turn } from 'node:timers/promises';
import { createRouterClient } from '@orpc/server';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { priceFileLine, supplierItem } from '../../db/schema/index.ts';
import { openStore } from '../../db/store.ts';
import { desk, deskInterceptors } from '../../electron/desk/index.ts';
import type { PriceFileId } from '../../shared/contract/ids.ts';
import { costOf, madePriceFile, partNumber } from './made-price-file.ts';
import { base64, mappingFrom, openPriceFileShop, type PriceFileShop } from './price-file-shop.ts';

let shop: PriceFileShop;
beforeEach(async () => {
  shop = await openPriceFileShop();
});
afterEach(() => shop.close());

const apply = ({ id }: { id: PriceFileId }) => shop.desk.parts.applyPriceFile({ by: shop.by, id });
const undo = ({ id }: { id: PriceFileId }) => shop.desk.parts.undoPriceFile({ by: shop.by, id });
const offers = async (text: string) =>
  (await shop.desk.parts.findOffers({ text })).map(({ number, cost, listPrice }) => [
    number,
    cost,
    listPrice,
  ]);
const addPart = (number: string, more: object = {}) =>
  shop.desk.parts.add({
    by: shop.by,
    number,
    description: number,
    price: 900,
    cost: 300,
    supplier: 'PRAIRIE line',
    ...more,
  });

/** Every row, as the store has it. */
const priceList = () =>
  shop.context.store.read.select().from(supplierItem).orderBy(supplierItem.id).all();

describe('a price file of five thousand lines', () => {
  const made = madePriceFile(5000);

  test('lists every broken line with its number and reason, and takes the rest over', async () => {
    const card = await shop.read(made.bytes);
    const { usable, broken } = made;
    expect(card).toMatchObject({ state: 'read', lines: 5000, share: 1 });
    expect(card.counts).toEqual({
      new: usable - 5,
      dearer: 0,
      cheaper: 0,
      unchanged: 0,
      superseded: 5,
      unreadable: broken.length,
    });
    const listed = await shop.desk.parts.unreadableLines({ id: card.id, limit: 1000 });
    expect(listed.map(({ line, problem }) => ({ line, problem }))).toEqual(broken);
    const twice = listed.find(({ problem }) => problem === 'twice');
    expect(twice?.firstLine).toBe((twice?.line ?? 0) - 9);
    expect(listed[0]?.raw).toContain('"Seal, never closed');

    expect(await apply(card)).toMatchObject({ state: 'applied', canBeUndone: true });
    expect(await offers(partNumber(20))).toEqual([[partNumber(20), costOf(20), costOf(20) * 2]]);
    expect(await shop.desk.parts.unreadableLines({ id: card.id })).toHaveLength(broken.length);
  });

  test('is compared with what is known, applied again and undone', async () => {
    await apply(await shop.read(made.bytes));
    const before = priceList();
    const card = await shop.read(madePriceFile(5000, { dearer: 40 }).bytes);
    expect(card.counts).toMatchObject({ new: 0, dearer: 1000, cheaper: 0, superseded: 0 });
    const [first] = await shop.desk.parts.priceFileLines({
      id: card.id,
      change: 'dearer',
      from: 1,
    });
    expect(first).toMatchObject({ line: 7, formerCost: costOf(5), cost: costOf(5, 40) });
    await apply(card);
    expect(await offers(partNumber(25))).toEqual([
      [partNumber(25), costOf(25, 40), costOf(25, 40) * 2],
    ]);
    await undo(card);
    expect(priceList()).toEqual(before);
    await expect(undo(card)).rejects.toMatchObject({ code: 'NOT_THE_LAST' });
  });

  test('which is stopped leaves nothing, and other calls go on while it is read', async () => {
    const card = await shop.read(madePriceFile(20_000).bytes, { wait: false });
    expect(card.state).toBe('reading');
    await expect(shop.read(made.bytes)).rejects.toMatchObject({ code: 'STILL_READING' });
    await expect(apply(card)).rejects.toMatchObject({ code: 'NOT_READ' });
    let midway = card;
    while (midway.state === 'reading' && midway.share < 0.2) {
      await turn();
      midway = await shop.desk.parts.priceFile({ id: card.id });
    }
    expect(midway).toMatchObject({ state: 'reading' });
    expect(midway.share).toBeLessThan(1);
    const stopped = await shop.desk.parts.stopPriceFile({ by: shop.by, id: card.id });
    expect(stopped).toMatchObject({ state: 'stopped' });
    for (let turns = 0; turns < 20; turns += 1) await turn();
    expect(await shop.desk.parts.priceFile({ id: card.id })).toMatchObject({ state: 'stopped' });
    expect(await shop.desk.parts.unreadableLines({ id: card.id })).toEqual([]);
    expect(await shop.desk.parts.findOffers({ text: 'QX' })).toEqual([]);
    await expect(apply(card)).rejects.toMatchObject({ code: 'NOT_READ' });
  });
});

test('a file that the end of the program cut off counts as stopped, and the next one can be read', async () => {
  const card = await shop.read(madePriceFile(20_000).bytes, { wait: false });
  while ((await shop.desk.parts.priceFile({ id: card.id })).lines === 0) await turn();
  shop.context.store.close();
  for (let turns = 0; turns < 5; turns += 1) await turn();
  const store = openStore(shop.folder);
  const again = createRouterClient(desk, {
    context: { ...shop.context, store },
    interceptors: deskInterceptors,
  });
  const { by, supplierId } = shop;
  expect(await again.parts.priceFile({ id: card.id })).toMatchObject({ state: 'stopped' });
  const content = 'Part no;Cost\nA1;1,50\n';
  const file = { supplierId, fileName: 'list.csv', bytes: base64(content) };
  const mapping = mappingFrom(await again.parts.sketchPriceFile(file));
  const next = await again.parts.readPriceFile({ by, ...file, mapping, wait: true });
  expect(next).toMatchObject({ state: 'read', counts: { new: 1 } });
  expect(store.read.select().from(priceFileLine).all()).toHaveLength(1);
  store.close();
});

describe('parts follow the price file of their supplier', () => {
  const file = (cost: string, list = '9,00', replaced = '') =>
    `Part no;Name;Cost;List;Replaced by\nKX-1;Ring;${cost};${list};${replaced}\nKX-2;Ring;4,00;9,00;\n`;
  const part = async (id: Awaited<ReturnType<typeof addPart>>['id']) =>
    (await shop.desk.parts.part({ id })).part;

  test('by their own number, the supplier’s or the maker’s; those of others don’t', async () => {
    const own = await addPart('kx 1');
    const theirs = await addPart('PL-77', { supplier: '' });
    await shop.desk.parts.addNumber({
      by: shop.by,
      partId: theirs.id,
      kind: 'supplier',
      whose: 'Prairie Line',
      number: 'KX 2',
    });
    const other = await addPart('KX-2', { supplier: 'Ferry Street' });
    const card = await shop.read(file('3,50'));
    expect(card.ours).toBe(2);
    const seen = await shop.desk.parts.repricedParts({ id: card.id });
    expect(seen.map(({ number, formerCost, cost }) => [number, formerCost, cost])).toEqual([
      ['PL-77', 300, 400],
      ['kx 1', 300, 350],
    ]);
    await apply(card);
    expect(await part(own.id)).toMatchObject({ cost: 350, listPrice: 900, price: 900 });
    expect(await part(theirs.id)).toMatchObject({ cost: 400, listPrice: 900 });
    expect(await part(other.id)).toMatchObject({ cost: 300, listPrice: null });
    expect(await shop.desk.parts.repricedParts({ id: card.id })).toEqual(seen);
  });

  test('with prices by rule, and back again when the file is undone', async () => {
    const { id } = await addPart('KX 1', { priceRule: 'list', listPrice: 800 });
    const card = await shop.read(file('3,50'));
    expect(await shop.desk.parts.repricedParts({ id: card.id })).toMatchObject([
      { formerlySellsAt: 800, sellsAt: 900 },
    ]);
    await apply(card);
    expect(await part(id)).toMatchObject({ cost: 350, sellsAt: 900 });
    await undo(card);
    expect(await part(id)).toMatchObject({ cost: 300, listPrice: 800, sellsAt: 800 });
    expect(await shop.desk.parts.findOffers({ text: 'KX' })).toEqual([]);
  });

  test('what somebody changed since stays when the file is undone', async () => {
    const { id } = await addPart('KX 1');
    const card = await shop.read(file('3,50'));
    await apply(card);
    await shop.desk.parts.reprice({
      by: shop.by,
      partId: id,
      price: 900,
      cost: 333,
      listPrice: 900,
    });
    await undo(card);
    expect(await part(id)).toMatchObject({ cost: 333, listPrice: null });
  });

  test('into their successor, never round in a circle, and back', async () => {
    const old = await addPart('KX 1');
    const current = await addPart('KX 2');
    const successor = async () => (await shop.desk.parts.part({ id: old.id })).supersededBy?.id;
    const card = await shop.read(file('3,50', '9,00', 'kx2'));
    expect(card.counts).toMatchObject({ superseded: 1, new: 1 });
    await apply(card);
    expect(await successor()).toBe(current.id);
    await undo(card);
    expect(await successor()).toBeUndefined();
    await shop.desk.parts.supersede({ by: shop.by, partId: current.id, supersededBy: old.id });
    await apply(await shop.read(file('3,50', '9,00', 'kx2')));
    expect(await successor()).toBeUndefined();
  });

  test('only the last applied file of a supplier can be undone', async () => {
    const first = await apply(await shop.read(file('3,50')));
    const second = await apply(await shop.read(file('3,60')));
    await expect(undo(first)).rejects.toMatchObject({ code: 'NOT_THE_LAST' });
    await undo(second);
    expect((await offers('KX-1'))[0]).toEqual(['KX-1', 350, 900]);
    await expect(
      shop.desk.parts.stopPriceFile({ by: shop.by, id: first.id }),
    ).rejects.toMatchObject({ code: 'APPLIED_ALREADY' });
  });

  test('a column that the file hasn’t got leaves what is known', async () => {
    await apply(await shop.read(file('3,50')));
    await apply(await shop.read('Part no;Cost\nKX-1;3,70\nKX-3;1,00\n'));
    expect(await offers('KX')).toEqual([
      ['KX-1', 370, 900],
      ['KX-2', 400, 900],
      ['KX-3', 100, null],
    ]);
  });
});
