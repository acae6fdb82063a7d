import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvText } from '../../electron/desk/csv-cells.ts';

/**
 * RFC 4180, Common Format and MIME Type for CSV Files, section 2: rules 1 to 5 as read there; the examples of
 * rules 6 and 7 from memory. csv-parse 7.0.3, which the program does not write with, reads it back.
 */
describe('RFC 4180, section 2', () => {
  test('rules 1 to 4: records end with CRLF, fields are parted by commas, as many in each', () => {
    expect(
      csvText(
        [
          ['aaa', 'bbb', 'ccc'],
          ['zzz', 'yyy', 'xxx'],
        ],
        false,
      ),
    ).toBe('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n');
  });

  test('rule 6: a field with a line break is within quotes', () => {
    expect(csvText([['aaa', 'b\r\nbb', 'ccc']], false)).toBe('aaa,"b\r\nbb",ccc\r\n');
    expect(parse(csvText([['aaa', 'b\r\nbb', 'ccc']], false))).toEqual(
      parse('"aaa","b\r\nbb","ccc"\r\n'),
    );
  });

  test('rule 7: a quote within a field is doubled', () => {
    expect(csvText([['aaa', 'b"bb', 'ccc']], false)).toBe('aaa,"b""bb",ccc\r\n');
    expect(parse('"aaa","b""bb","ccc"')).toEqual([['aaa', 'b"bb', 'ccc']]);
  });

  test('a comma is within quotes, and spaces belong to the field', () => {
    expect(csvText([['a,b', ' c ']], false)).toBe('"a,b"," c "\r\n');
  });

  test('whatever stands in the cells is read back, but for what a spreadsheet would run', () => {
    const cells = fc.array(
      fc.array(fc.string({ unit: 'grapheme' }), { minLength: 2, maxLength: 2 }),
      {
        minLength: 1,
      },
    );
    fc.assert(
      fc.property(cells, fc.boolean(), (lines, mark) => {
        const read: string[][] = parse(csvText(lines, mark), { bom: true });
        for (const [row, line] of lines.entries())
          for (const [column, cell] of line.entries()) {
            const found = read[row]?.[column];
            expect([cell, `'${cell}`]).toContain(found);
            if (found !== cell) expect(cell).toMatch(/^[=+\-@\t\r']/);
          }
      }),
    );
  });

  test('a formula is text, a negative amount is a number', () => {
    expect(csvText([['=SUM(A1:A9)', '-12.50']], false)).toBe("'=SUM(A1:A9),-12.50\r\n");
  });
});
