import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvText } from '../../electron/desk/csv-cells.ts';
import { csvRecords } from '../../electron/desk/parts/price-files/csv-records.ts';
import { DELIMITERS, type Delimiter } from '../../shared/work/parts/price-file/words.ts';

/**
 * Price files against RFC 4180, "Common Format and MIME Type for Comma-Separated Values (CSV) Files"
 * (Y. Shafranovich, October 2005), section 2, by its numbered rules. Rules 1 to 5 were read; the examples
 * of rules 6 and 7 are its text from memory.
 */

const recordsOf = (text: string, delimiter: Delimiter = ',', size = 1000) =>
  [...csvRecords(text, delimiter, size)].flatMap(({ records }) => records);
const cellsOf = (text: string, delimiter: Delimiter = ',', size = 1000) =>
  recordsOf(text, delimiter, size).map(({ cells }) => cells);

describe('RFC 4180, section 2', () => {
  const two = [
    ['aaa', 'bbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ];

  test('rules 1 and 2: records end with CRLF, the last one with or without it', () => {
    expect(cellsOf('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n')).toEqual(two);
    expect(cellsOf('aaa,bbb,ccc\r\nzzz,yyy,xxx')).toEqual(two);
  });

  test('rule 3: a line of headings has the form of the others', () => {
    expect(cellsOf('field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n')).toEqual([
      ['field_name', 'field_name', 'field_name'],
      ...two,
    ]);
  });

  test('rule 4: spaces belong to the field', () => {
    expect(cellsOf('aaa, bbb ,ccc\r\n')).toEqual([['aaa', ' bbb ', 'ccc']]);
  });

  test('rule 5: fields may stand in quotation marks or without', () => {
    expect(cellsOf('"aaa","bbb","ccc"\r\nzzz,yyy,xxx')).toEqual(two);
  });

  test('rule 6: line breaks, quotation marks and commas stand within quotation marks', () => {
    expect(cellsOf('"aaa","b \r\nbb","ccc"\r\nzzz,yyy,xxx')).toEqual([
      ['aaa', 'b \r\nbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
    expect(cellsOf('"a,a"\r\n')).toEqual([['a,a']]);
  });

  test('rule 7: a quotation mark within a field is doubled', () => {
    expect(cellsOf('"aaa","b""bb","ccc"')).toEqual([['aaa', 'b"bb', 'ccc']]);
  });
});

describe('what the standard leaves open', () => {
  test('LF and CR end a line too, and lines are counted as an editor counts them', () => {
    const text = 'a,b\n"c\nd",e\n\nf,g\r\nh,i';
    expect(recordsOf(text).map(({ line, cells }) => [line, cells])).toEqual([
      [1, ['a', 'b']],
      [2, ['c\nd', 'e']],
      [5, ['f', 'g']],
      [6, ['h', 'i']],
    ]);
    expect(cellsOf('a,b\rc,d\r')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
  });

  test('a quotation mark that is never closed costs its own line and no other', () => {
    expect(
      recordsOf('a,b\r\n"c,d\r\ne,"f"\r\n"g" h,i\r\n5" pulley,j').map(({ line, cells }) => [
        line,
        cells,
      ]),
    ).toEqual([
      [1, ['a', 'b']],
      [2, null],
      [3, ['e', 'f']],
      [4, null],
      [5, ['5" pulley', 'j']],
    ]);
  });

  test('whatever is written by the standard is read back, however few records come at a time', () => {
    const cell = fc
      .string({ unit: 'grapheme', maxLength: 8 })
      .map((text) => text.replace(/\0/g, ''));
    const special = fc.constantFrom('"', '""', ',', ';', '\r\n', '\n', '\r', '\t', ' ', 'x"y', '|');
    const cells = fc.array(fc.oneof(cell, special), { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(
        fc.array(cells, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(...DELIMITERS),
        fc.integer({ min: 1, max: 4 }),
        (rows, delimiter, size) => {
          const written = rows
            .map((row) => row.map((each) => `"${each.replaceAll('"', '""')}"`).join(delimiter))
            .join('\r\n');
          expect(cellsOf(written, delimiter, size)).toEqual(rows);
        },
      ),
    );
  });

  test('what this program writes itself is read back', () => {
    const rows = [
      ['Number', 'Name'],
      ['TL 44', 'Pulley, 5"'],
    ];
    expect(cellsOf(csvText(rows, false))).toEqual(rows);
  });
});
