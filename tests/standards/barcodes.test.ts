import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { code128 } from '../../electron/paper/furniture/code-128.ts';
import { gs1CheckDigit, isMisreadGtin } from '../../shared/work/parts/barcode-digits.ts';

/**
 * Code 128: the values of its characters as bars and spaces, ISO/IEC 15417 table 1, from memory. That they
 * are 106 different patterns of 11 modules, with an even count of dark ones, is checked below.
 */
const PATTERNS =
  `212222 222122 222221 121223 121322 131222 122213 122312 132212 221213 221312 231212 112232 122132
  122231 113222 123122 123221 223211 221132 221231 213212 223112 312131 311222 321122 321221 312212 322112
  322211 212123 212321 232121 111323 131123 131321 112313 132113 132311 211313 231113 231311 112133 112331
  132131 113123 113321 133121 313121 211331 231131 213113 213311 213131 311123 311321 331121 312113 312311
  332111 314111 221411 431111 111224 111422 121124 121421 141122 141221 112214 112412 122114 122411 142112
  142211 241211 221114 413111 241112 134111 111242 121142 121241 114212 124112 124211 411212 421112 421211
  212141 214121 412121 111143 111341 131141 114113 114311 411113 411311 113141 114131 311141 411131 211412
  211214 211232`.split(/\s+/);
const STOP = '2331112';
const [START_A, START_B, START_C, CODE_C] = [103, 104, 105, 99];

const modulesOf = (pattern: string) => [...pattern].reduce((sum, width) => sum + Number(width), 0);

test('the patterns of Code 128 are what the standard says of them', () => {
  expect(PATTERNS).toHaveLength(106);
  expect(new Set(PATTERNS).size).toBe(106);
  for (const pattern of PATTERNS) {
    expect(modulesOf(pattern)).toBe(11);
    expect(
      [...pattern].filter((_, at) => at % 2 === 0).reduce((a, b) => a + Number(b), 0) % 2,
    ).toBe(0);
  }
});

/** The start's value and each that follows by its place, modulo 103. */
const sumOf = (values: readonly number[]) =>
  values.reduce((sum, value, place) => sum + value * Math.max(1, place), 0);

/** Values of characters below 96 in set A and B: their place after the space. */
const valuesOf = (text: string) => [...text].map((letter) => letter.charCodeAt(0) - 32);

describe('the check character of Code 128', () => {
  test('PJJ123C in set A: 878, and 54 (Wikipedia, Code 128, as read there)', () => {
    const values = [START_A, ...valuesOf('PJJ123C')];
    expect(sumOf(values)).toBe(878);
    expect(sumOf(values) % 103).toBe(54);
  });

  test('HI345678 from set A to C: 1406, and 67 (barcodeisland.com, Code 128, as read there)', () => {
    const values = [START_A, ...valuesOf('HI'), CODE_C, 34, 56, 78];
    expect(sumOf(values)).toBe(1406);
    expect(sumOf(values) % 103).toBe(67);
  });

  test('what is drawn begins with a start, carries that check, and ends with the stop', () => {
    fc.assert(
      fc.property(
        fc.string({
          unit: fc.integer({ min: 32, max: 126 }).map((code) => String.fromCharCode(code)),
          minLength: 1,
          maxLength: 30,
        }),
        (text) => {
          const widths = code128(text).widths.join('');
          expect(widths.endsWith(STOP)).toBe(true);
          const values = (widths.slice(0, -STOP.length).match(/.{6}/g) ?? []).map((pattern) =>
            PATTERNS.indexOf(pattern),
          );
          const check = values.pop();
          expect(values).not.toContain(-1);
          expect([START_A, START_B, START_C]).toContain(values[0]);
          expect(check).toBe(sumOf(values) % 103);
        },
      ),
    );
  });
});

describe('the GS1 check digit', () => {
  test('629104150021 has 3 (GS1, How to calculate a check digit manually, as read there)', () => {
    expect(gs1CheckDigit('629104150021')).toBe(3);
    expect(isMisreadGtin('6291041500213')).toBe(false);
    expect(isMisreadGtin('6291041500214')).toBe(true);
  });

  test('a sum that is a multiple of ten has 0, not 10 (gs1.se, as read there)', () => {
    expect(gs1CheckDigit('0000000')).toBe(0);
    // 3 × 3 + 1 = 10.
    expect(gs1CheckDigit('13')).toBe(0);
  });

  test('any digit that is misread in a number is noticed (follows from the weights 1 and 3)', () => {
    fc.assert(
      fc.property(
        fc.stringMatching(/^\d{12}$/),
        fc.integer({ min: 0, max: 12 }),
        fc.integer({ min: 1, max: 9 }),
        (digits, place, off) => {
          const whole = `${digits}${gs1CheckDigit(digits)}`;
          const read = (Number(whole[place]) + off) % 10;
          expect(isMisreadGtin(whole)).toBe(false);
          expect(isMisreadGtin(`${whole.slice(0, place)}${read}${whole.slice(place + 1)}`)).toBe(
            true,
          );
        },
      ),
    );
  });

  test('numbers of the shop’s own are no such numbers', () => {
    expect(isMisreadGtin('HV 740-50')).toBe(false);
    expect(isMisreadGtin('0042')).toBe(false);
    expect(() => gs1CheckDigit('12a')).toThrow(RangeError);
  });
});
