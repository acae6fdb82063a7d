import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import writeWorkbook from 'write-excel-file/node';
import {
  base64,
  mappingFrom,
  NO_COLUMNS,
  openPriceFileShop,
  type PriceFileShop,
} from './price-file-shop.ts';

let shop: PriceFileShop;
beforeAll(async () => {
  shop = await openPriceFileShop();
});
afterAll(() => shop.close());

describe('a price file is looked at', () => {
  const rows = 'Part no;Description;Dealer;List\r\nKX 1;Größe 40;1.234,50;2.000,00\r\n';

  test.each([
    ['utf-8', Buffer.from(rows)],
    ['utf-8', Buffer.from(`\ufeff${rows}`)],
    ['utf-16le', Buffer.from(`\ufeff${rows}`, 'utf16le')],
    ['utf-16le', Buffer.from(rows, 'utf16le')],
    ['utf-16be', Buffer.from(`\ufeff${rows}`, 'utf16le').swap16()],
    ['windows-1252', Buffer.from(rows, 'latin1')],
  ])('as %s, with decimal comma and semicolon', async (encoding, bytes) => {
    expect(await shop.sketch(bytes)).toMatchObject({
      kind: 'text',
      encoding,
      delimiter: ';',
      decimalMark: ',',
      headingLines: 1,
      headings: ['Part no', 'Description', 'Dealer', 'List'],
      sample: [['KX 1', 'Größe 40', '1.234,50', '2.000,00']],
      columns: { number: 0, description: 1, cost: 2, listPrice: 3, packSize: null },
    });
  });

  test.each([
    [',', '.', 'No.,Name,Cost\nA1,x,1.50\nA2,"x, y",2.50\n'],
    ['\t', '.', 'SKU\tName\tPrice\nA1\tx, y\t1.50\nA2\tx\t2.50\n'],
    ['|', ',', 'Item no|Text|Net\nA1|x|1,50\nA2|x|2,50\n'],
  ])('divided by %j', async (delimiter, decimalMark, content) => {
    const seen = await shop.sketch(content);
    expect(seen).toMatchObject({ delimiter, decimalMark, columns: { number: 0, cost: 2 } });
  });

  test('headings may stand lower down, or nowhere', async () => {
    const lower = 'Prairie Line;;\nvalid from May;;\nPart no;Name;Cost\nA1;x;1,50\n';
    expect(await shop.sketch(lower)).toMatchObject({
      headingLines: 3,
      sample: [['A1', 'x', '1,50']],
    });
    expect(await shop.sketch('A1;x;1,50\nA2;y;2,50\n')).toMatchObject({
      headingLines: 0,
      columns: { number: null },
    });
  });

  test('a workbook of several sheets, with numbers as numbers', async () => {
    const cells = (...row: (string | number)[]) => row.map((value) => ({ value }));
    const bytes = await writeWorkbook([
      { sheet: 'Terms', data: [cells('Valid from May')] },
      {
        sheet: 'Prices',
        data: [
          cells(),
          cells('Part no', 'Name', 'Net'),
          cells('A1', 'x', 12.5),
          cells('A2', '', 7),
        ],
      },
    ]).toBuffer();
    const file = { supplierId: shop.supplierId, fileName: 'list.xlsx', bytes: base64(bytes) };
    expect(await shop.desk.parts.sketchPriceFile(file)).toMatchObject({
      kind: 'spreadsheet',
      sheets: ['Terms', 'Prices'],
      sheet: 'Prices',
    });
    expect(
      await shop.desk.parts.sketchPriceFile({ ...file, as: { sheet: 'Terms' } }),
    ).toMatchObject({ sheet: 'Terms', sample: [['Valid from May']] });
    const seen = await shop.desk.parts.sketchPriceFile(file);
    expect(seen).toMatchObject({
      sheet: 'Prices',
      columns: { number: 0, description: 1, cost: 2 },
    });
    const card = await shop.desk.parts.readPriceFile({
      by: shop.by,
      ...file,
      mapping: mappingFrom(seen),
      wait: true,
    });
    expect(card).toMatchObject({ state: 'read', lines: 2, counts: { new: 2, unreadable: 0 } });
    await shop.desk.parts.applyPriceFile({ by: shop.by, id: card.id });
    expect(
      (await shop.desk.parts.findOffers({ text: 'a' })).map(({ number, cost }) => [number, cost]),
    ).toEqual([
      ['A1', 1250],
      ['A2', 700],
    ]);
  });

  test.each([
    ['a PDF', Buffer.from('%PDF-1.7 whatever')],
    ['a picture', Buffer.from('\x89PNG\r\n\x1a\n\0\0\0\rIHDR', 'latin1')],
    ['an archive of something else', Buffer.from('PK\x03\x04 nothing', 'latin1')],
    ['blank lines', Buffer.from('\r\n \r\n')],
  ])('and %s is refused', async (_, bytes) => {
    await expect(shop.sketch(bytes)).rejects.toMatchObject({ code: 'NOT_A_PRICE_FILE' });
  });

  test('its columns are those of the supplier’s last file, wherever they stand now', async () => {
    const first = 'Art;Was;Wieviel\nA1;x;1,50\n';
    const seen = await shop.sketch(first);
    expect(seen.columns).toMatchObject({ number: null, cost: null });
    await shop.desk.parts.readPriceFile({
      by: shop.by,
      supplierId: shop.supplierId,
      fileName: 'list.csv',
      bytes: base64(first),
      mapping: {
        ...mappingFrom(seen),
        headingLines: 1,
        pricedBy: 'pack',
        columns: {
          ...NO_COLUMNS,
          number: { column: 0, heading: 'Art' },
          cost: { column: 2, heading: 'Wieviel' },
        },
      },
      wait: true,
    });
    const next = await shop.desk.parts.sketchPriceFile({
      supplierId: shop.supplierId,
      fileName: 'next.csv',
      bytes: base64('Wieviel;Art\n1,50;A1\n'),
      as: { headingLines: 1 },
    });
    expect(next).toMatchObject({
      columnsFrom: 'last-file',
      pricedBy: 'pack',
      columns: { number: 1, cost: 0, listPrice: null },
    });
  });
});

test('two fields can’t be read from one column', async () => {
  const content = 'Part no;Cost\nA1;1,50\n';
  const mapping = mappingFrom(await shop.sketch(content));
  await expect(
    shop.desk.parts.readPriceFile({
      by: shop.by,
      supplierId: shop.supplierId,
      fileName: 'list.csv',
      bytes: base64(content),
      mapping: { ...mapping, columns: { ...mapping.columns, cost: { column: 0, heading: '' } } },
    }),
  ).rejects.toMatchObject({
    code: 'BAD_INPUT',
    data: { issues: [{ path: 'mapping.columns.number' }, { path: 'mapping.columns.cost' }] },
  });
});
