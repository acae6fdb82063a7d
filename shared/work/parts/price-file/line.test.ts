import { describe, expect, test } from 'vitest';
import { columnsAsBefore, columnsByHeading, looksLikeHeadings } from './columns.ts';
import { type Cell, type LineForm, readPriceLine } from './line.ts';

const FORM: LineForm = {
  columns: {
    number: 0,
    description: 1,
    cost: 2,
    listPrice: 3,
    packSize: 4,
    coreCharge: 5,
    supersededBy: 6,
  },
  decimalMark: '.',
  pricedBy: 'one',
  digits: 2,
  rounding: 'half-up',
};
const read = (cells: Cell[], form: Partial<LineForm> = {}) =>
  readPriceLine(cells, { ...FORM, ...form });

describe('a line of a price file', () => {
  test('is read with all it offers', () => {
    expect(read(['TL 44-12', ' Gasket ', '3.20', '5.90', '10', '1.50', 'TL 44-13'])).toEqual({
      line: {
        number: 'TL 44-12',
        numberKey: 'tl4412',
        description: 'Gasket',
        cost: 320,
        listPrice: 590,
        packSize: 10_000,
        coreCharge: 150,
        supersededBy: 'TL 44-13',
      },
    });
    expect(read([4412, 'Gasket', 3.2])).toMatchObject({
      line: { number: '4412', cost: 320, listPrice: null, packSize: 1000, coreCharge: 0 },
    });
  });

  test('gives the price of one where packs are priced', () => {
    expect(read(['B 6', 'Bolt', '1.25', '2.50', '10 pcs'], { pricedBy: 'pack' })).toMatchObject({
      line: { cost: 13, listPrice: 25, packSize: 10_000 },
    });
  });

  test.each([
    ['no-number', ['', 'Gasket', '3.20']],
    ['no-number', ['--', 'Gasket', '3.20']],
    ['number-too-long', ['9'.repeat(61), 'Gasket', '3.20']],
    ['no-cost', ['TL 1', 'Gasket', '']],
    ['no-cost', ['TL 1', 'Gasket', '0.00']],
    ['cost', ['TL 1', 'Gasket', 'call']],
    ['below-zero', ['TL 1', 'Gasket', '-3.20']],
    ['too-much', ['TL 1', 'Gasket', '99999999999']],
    ['list-price', ['TL 1', 'Gasket', '3.20', '5.9.0']],
    ['pack', ['TL 1', 'Gasket', '3.20', '5.90', '0']],
    ['pack', ['TL 1', 'Gasket', '3.20', '5.90', 'many']],
    ['core-charge', ['TL 1', 'Gasket', '3.20', '5.90', '1', 'x']],
    ['replaces-itself', ['TL 1', 'Gasket', '3.20', '5.90', '1', '', 'tl-1']],
    ['letters', ['TL 1', 'Gask\ufffdt', '3.20']],
    ['letters', ['TL\u00001', 'Gasket', '3.20']],
    ['date', ['TL 1', 'Gasket', new Date(0)]],
  ] satisfies [string, Cell[]][])('says %s', (problem, cells) => {
    expect(read(cells)).toEqual({ problem });
  });

  test('of which no column is named is not looked at', () => {
    const columns = { ...FORM.columns, listPrice: null };
    expect(read(['TL 1', 'Gasket', '3.20', 'call'], { columns })).toMatchObject({
      line: { cost: 320, listPrice: null },
    });
  });

  test('is cut between letters where its description is too long', () => {
    const read200 = read(['TL 1', `${'x'.repeat(199)}😀`, '3.20']);
    expect(read200).toMatchObject({ line: { description: 'x'.repeat(199) } });
  });
});

describe('the columns of a file', () => {
  test('are known by the words of their headings', () => {
    expect(
      columnsByHeading([
        'Part No.',
        'Description',
        'Dealer',
        'List',
        'Pack qty',
        'Core',
        'Superseded by',
      ]),
    ).toEqual(FORM.columns);
    expect(
      columnsByHeading(['Ersetzt durch', 'Artikelnummer', 'Bezeichnung', 'Netto', 'Brutto', 'VE']),
    ).toMatchObject({
      supersededBy: 0,
      number: 1,
      description: 2,
      cost: 3,
      listPrice: 4,
      packSize: 5,
    });
    expect(columnsByHeading(['SKU', 'Name', 'Price'])).toMatchObject({
      number: 0,
      description: 1,
      cost: 2,
      listPrice: null,
    });
    expect(columnsByHeading(['a', 'b']).number).toBeNull();
  });

  test('are found again where they moved, or where they were when they have no heading', () => {
    const before = {
      number: { column: 0, heading: 'Part no' },
      cost: { column: 1, heading: 'Dealer' },
      description: { column: 2, heading: '' },
      listPrice: { column: 3, heading: 'Gone' },
      packSize: null,
      coreCharge: null,
      supersededBy: null,
    };
    expect(columnsAsBefore(before, ['x', 'DEALER', 'y', 'part-no'])).toMatchObject({
      number: 3,
      cost: 1,
      description: 2,
      listPrice: null,
      packSize: null,
    });
  });

  test('have headings only where words stand and no price', () => {
    expect(looksLikeHeadings(['Part no', 'Description', 'Cost'])).toBe(true);
    expect(looksLikeHeadings(['TL 44', 'Gasket with part no', '12.50'])).toBe(false);
    expect(looksLikeHeadings(['Price list 2026', '', ''])).toBe(false);
  });
});
