import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { PartId } from '../../shared/contract/ids.ts';
import { LabelSettings } from '../../shared/contract/parts/index.ts';
import { readBarcode, readPaper } from '../unit/paper/reading-back.ts';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

let shop: PartsShop;
beforeEach(async () => {
  shop = await openPartsShop();
});
afterEach(() => shop.close());

const MM = 72 / 25.4;

const add = async (number: string, more: { bin?: string } = {}): Promise<PartId> =>
  (
    await shop.desk.parts.add({
      by: shop.by,
      number,
      description: 'Piston with rings, second oversize',
      price: 1_995,
      ...more,
    })
  ).id;

const set = (change: Partial<LabelSettings>) =>
  shop.desk.parts.setLabelSettings({
    by: shop.by,
    settings: { ...LabelSettings.parse({}), ...change },
  });

const pdf = ({ pdf: base64 }: { pdf: string }) => new Uint8Array(Buffer.from(base64, 'base64'));

describe('labels on a sheet', () => {
  test('are read back by a reader that had no part in drawing them', async () => {
    const { desk } = shop;
    const ids = [await add('HV 740-50'), await add('K416/12.A'), await add('0042')];
    const asked = {
      sort: 'shelf',
      form: 'sheet',
      labels: ids.map((partId) => ({ partId })),
    } as const;
    for (const [symbol, format] of [
      ['code-128', 'Code128'],
      ['qr', 'QRCode'],
    ] as const) {
      await set({ symbol });
      const found = await readBarcode(pdf(await desk.parts.labelFile(asked)), 180);
      expect(found.map((each) => each.text).toSorted()).toEqual(['0042', 'HV 740-50', 'K416/12.A']);
      expect(new Set(found.map((each) => each.format))).toEqual(new Set([format]));
    }
  });

  test('begin at the label that is free, and go on to a second sheet', async () => {
    const { desk } = shop;
    const partId = await add('HV 740-50', { bin: 'B2-04' });
    const { sheet } = await set({ showPrice: true });
    const file = await desk.parts.labelFile({
      sort: 'shelf',
      form: 'sheet',
      startAt: 23,
      labels: [{ partId, copies: 3 }],
    });
    expect(file.pages).toBe(2);
    const paper = await readPaper(pdf(file));
    const numbers = paper.placed.filter(({ text }) => text === 'HV 740-50');
    expect(numbers.map(({ page }) => page)).toEqual([1, 1, 2]);
    const [first, second] = numbers;
    const step = (sheet.labelWidth + sheet.gapAcross) * MM;
    expect((second?.x ?? 0) - (first?.x ?? 0)).toBeCloseTo(step, 1);
    expect(paper.text).toContain('B2-04');
    expect(paper.text).toContain('$19.95');
  });

  test('refuse a first label that the sheet does not have', async () => {
    const partId = await add('HV 740-50');
    // Of the shop's own paper, until somebody says otherwise.
    expect((await shop.desk.parts.labelSettings({})).sheet).toMatchObject({
      paper: 'Letter',
      rows: 10,
    });
    await expect(
      shop.desk.parts.labelFile({
        sort: 'part',
        form: 'sheet',
        startAt: 31,
        labels: [{ partId }],
      }),
    ).rejects.toMatchObject({ code: 'NO_SUCH_LABEL', data: { labels: 30 } });
  });
});

test('labels from a roll are pages of their size, each to be read', async () => {
  const ids = [await add('HV 740-50'), await add('GP 300-1')];
  await set({ single: { width: 50, height: 25 } });
  const file = await shop.desk.parts.labelFile({
    sort: 'part',
    form: 'single',
    labels: ids.map((partId) => ({ partId })),
  });
  const bytes = pdf(file);
  const { pages } = await readPaper(bytes);
  expect(pages).toHaveLength(2);
  expect(pages[1]?.width).toBeCloseTo(50 * MM, 0);
  expect(await readBarcode(bytes, 300, 2)).toEqual([{ format: 'Code128', text: 'GP 300-1' }]);
});

test('bars that no reader could be trusted with are refused; a QR code has room for more', async () => {
  const { desk } = shop;
  const long = await add('PISTON-KIT-740-OVERSIZE-050-WITH-RINGS');
  const foreign = await add('Поршень 740');
  const asked = {
    sort: 'shelf' as const,
    form: 'single' as const,
    labels: [{ partId: long }, { partId: foreign }],
  };
  await set({ single: { width: 40, height: 25 } });
  await expect(desk.parts.labelFile(asked)).rejects.toMatchObject({
    code: 'LABEL_TOO_SMALL',
    data: { numbers: ['PISTON-KIT-740-OVERSIZE-050-WITH-RINGS', 'Поршень 740'] },
  });
  await set({ single: { width: 40, height: 25 }, symbol: 'qr' });
  const bytes = pdf(await desk.parts.labelFile(asked));
  expect(await readBarcode(bytes, 300, 2)).toEqual([{ format: 'QRCode', text: 'Поршень 740' }]);
});

test('more labels than can be drawn in one go are refused', async () => {
  const ids = [await add('HV 740-50'), await add('GP 300-1'), await add('GP 300-2')];
  await expect(
    shop.desk.parts.labelFile({
      sort: 'part',
      form: 'sheet',
      labels: ids.map((partId) => ({ partId, copies: 400 })),
    }),
  ).rejects.toMatchObject({
    code: 'BAD_INPUT',
    data: { issues: [{ path: 'labels', message: expect.stringContaining('in parts') }] },
  });
});

test('a sheet whose labels reach over the paper is refused with the millimetres', async () => {
  const { sheet } = LabelSettings.parse({});
  await expect(set({ sheet: { ...sheet, columns: 4 } })).rejects.toMatchObject({
    code: 'BAD_INPUT',
    data: {
      issues: [
        {
          path: 'settings.sheet.columns',
          message: expect.stringContaining('58.7 mm over the edge'),
        },
      ],
    },
  });
});
