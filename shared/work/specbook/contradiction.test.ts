import { describe, expect, test } from 'vitest';
import { figuresAgree, openContradictions, type PrintedBand } from './contradiction.ts';

const INCH = 25.4;

const band = (low: string, high: string, unit: 'mm' | 'in' = 'mm'): PrintedBand => {
  const base = (text: string) => (text === '' ? null : Number(text) * (unit === 'in' ? INCH : 1));
  return { low, high, unit, lowBase: base(low), highBase: base(high) };
};

describe('whether two sources give the same figures', () => {
  test('in one unit they are equal or they are not', () => {
    expect(figuresAgree(band('0.2', '0.4'), band('0.20', '0.40'))).toBe(true);
    expect(figuresAgree(band('0.2', '0.4'), band('0.2', '0.41'))).toBe(false);
  });

  test('in two units the finer print decides', () => {
    // 0.012 in is 0.3048 mm: within half of its last digit, 0.0127 mm, of 0.3 mm.
    expect(figuresAgree(band('', '0.3'), band('', '0.012', 'in'))).toBe(true);
    expect(figuresAgree(band('', '0.3'), band('', '0.013', 'in'))).toBe(false);
    // Beside 0.300 mm the same print is 0.0048 mm off, and half of a thousandth is 0.0005 mm.
    expect(figuresAgree(band('', '0.300'), band('', '0.012', 'in'))).toBe(false);
  });

  test('a limit on one side only is another figure', () => {
    expect(figuresAgree(band('0.2', '0.4'), band('', '0.4'))).toBe(false);
  });
});

describe('what stands against a specification', () => {
  const specification = band('0.2', '0.4');
  const said = (sourceId: string, figures: PrintedBand) => ({ sourceId, ...figures });

  test('the last word of each source', () => {
    const first = said('bulletin', band('0.3', '0.4'));
    const second = said('bulletin', band('0.25', '0.4'));
    const sheet = said('sheet', band('0.1', '0.2'));
    expect(openContradictions(specification, [first, sheet, second])).toEqual([second, sheet]);
  });

  test('a source that turned out to say the same stands against it no more', () => {
    const wrong = said('bulletin', band('2', '4'));
    const mended = said('bulletin', band('0.20', '0.40'));
    expect(openContradictions(specification, [wrong, mended])).toEqual([]);
  });
});
