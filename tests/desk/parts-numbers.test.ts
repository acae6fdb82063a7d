import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

/** Which numbers find a part, what took its place, and what its facts may become. */

let shop: PartsShop;
beforeAll(async () => {
  shop = await openPartsShop();
});
afterAll(() => shop.close());

const hits = async (number: string) =>
  (await shop.desk.parts.byNumber({ number })).map(({ part, by, current }) => [
    part.number,
    by,
    current?.number ?? null,
  ]);

describe('numbers', () => {
  test('a part is found by its own, makers’ and suppliers’ numbers and barcodes, however they are written', async () => {
    const { desk, by, shelve } = shop;
    const partId = await shelve('HV 740-50');
    const add = (kind: 'maker' | 'supplier' | 'barcode', number: string) =>
      desk.parts.addNumber({ by, partId, kind, whose: 'Halvard', number });
    await add('maker', 'TL-44 12/A');
    await add('supplier', '0040.771');
    await add('barcode', '4006381333931');
    expect(await hits('hv74050')).toEqual([['HV 740-50', 'own', null]]);
    expect(await hits('tl 4412a')).toEqual([['HV 740-50', 'maker', null]]);
    expect(await hits('0040771')).toEqual([['HV 740-50', 'supplier', null]]);
    expect(await hits('4006381333931')).toEqual([['HV 740-50', 'barcode', null]]);
    expect(await hits('0040')).toEqual([]);
    const found = await desk.parts.find({ text: '0040-771' });
    expect(found.map(({ number }) => number)).toEqual(['HV 740-50']);
    await expect(add('maker', 'tl4412a')).rejects.toMatchObject({ code: 'HAS_THIS_NUMBER' });
    const [first] = (await desk.parts.part({ id: partId })).numbers;
    if (first === undefined) throw new Error('No number was kept.');
    await desk.parts.dropNumber({ by, id: first.id });
    expect(await hits('tl4412a')).toEqual([]);
    expect(await desk.parts.find({ text: 'tl4412a' })).toEqual([]);
  });

  test('a renamed part keeps its former number, and a number that is taken is refused', async () => {
    const { desk, by, shelve } = shop;
    const partId = await shelve('GK-10');
    await shelve('GK-11');
    const amend = (number: string) =>
      desk.parts.amend({ by, partId, number, description: 'Gasket', packSize: 10_000 });
    await expect(amend('gk 11')).rejects.toMatchObject({ code: 'PART_NUMBER_TAKEN' });
    expect(await amend('GK-12')).toMatchObject({ number: 'GK-12', packSize: 10_000 });
    expect(await hits('GK-10')).toEqual([['GK-12', 'former', null]]);
  });

  test('the unit stays as it is once stock has moved in it', async () => {
    const { desk, by, shelve } = shop;
    const partId = await shelve('OIL-1', 1_000);
    const amend = desk.parts.amend({ by, partId, number: 'OIL-1', description: 'Oil', unit: 'L' });
    await expect(amend).rejects.toMatchObject({ code: 'UNIT_IN_USE' });
  });
});

describe('a part that took another’s place', () => {
  test('an old number finds the newest, and a circle is refused wherever it would close', async () => {
    const { desk, by, shelve } = shop;
    const first = await shelve('S-1');
    const second = await shelve('S-2');
    const third = await shelve('S-3');
    const supersede = (partId: typeof first, supersededBy: typeof first | null) =>
      desk.parts.supersede({ by, partId, supersededBy });
    await supersede(first, second);
    await supersede(second, third);
    expect(await hits('s1')).toEqual([['S-1', 'own', 'S-3']]);
    expect(await hits('s3')).toEqual([['S-3', 'own', null]]);
    for (const [from, to] of [
      [third, first],
      [second, first],
      [first, first],
    ] as const)
      await expect(supersede(from, to)).rejects.toMatchObject({ code: 'SUPERSESSION_LOOP' });
    const { former, current } = await desk.parts.part({ id: second });
    expect([former.map(({ number }) => number), current?.number]).toEqual([['S-1'], 'S-3']);
    await supersede(second, null);
    expect(await hits('s1')).toEqual([['S-1', 'own', 'S-2']]);
  });

  test('a job that needs the new one is promised the old one, and may be issued it by its old number', async () => {
    const { desk, by, shelve, jobFor, sums } = shop;
    const old = await shelve('T-1', 1_000);
    const current = await shelve('T-2');
    const jobId = await jobFor([[current, 1_000]]);
    expect((await desk.parts.jobParts({ jobId })).missing).toBe(1);
    await desk.parts.supersede({ by, partId: old, supersededBy: current });
    expect((await sums(old))[1]).toBe(1_000);
    const { issued, job } = await desk.parts.issue({ by, jobId, number: 't 1' });
    expect(issued.number).toBe('T-1');
    expect(job).toMatchObject({ missing: 0, parts: [{ needed: 1_000, issued: 1_000 }] });
    expect(await sums(old)).toEqual([0, 0, 0, 0]);
    // It counts for the line of the new one.
    expect((await desk.till.billAhead({ jobId })).beyond).toEqual([]);
  });

  test('once the old one is out, its number takes the new one off the shelf', async () => {
    const { desk, by, shelve, jobFor } = shop;
    const old = await shelve('U-1');
    const current = await shelve('U-2', 1_000);
    await desk.parts.supersede({ by, partId: old, supersededBy: current });
    const jobId = await jobFor([[old, 1_000]]);
    const { issued } = await desk.parts.issue({ by, jobId, number: 'U-1' });
    expect(issued.number).toBe('U-2');
  });
});

test('a photo of a part is kept byte for byte, and what is no picture is refused', async () => {
  const { desk, by, shelve } = shop;
  const partId = await shelve('PH-1');
  const bytes = Buffer.from('\x89PNG\r\n\x1a\nand so on', 'latin1').toString('base64');
  const { id } = await desk.parts.addPhoto({ by, partId, caption: 'The mark on the crown', bytes });
  expect((await desk.parts.part({ id: partId })).photos).toMatchObject([
    { id, caption: 'The mark on the crown', mediaType: 'image/png', by: 'Ruth Okafor' },
  ]);
  expect((await desk.parts.photo({ id })).bytes).toBe(bytes);
  await expect(
    desk.parts.addPhoto({ by, partId, bytes: Buffer.from('text').toString('base64') }),
  ).rejects.toMatchObject({ code: 'NOT_A_PHOTO' });
});
