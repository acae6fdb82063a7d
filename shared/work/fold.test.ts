import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fold, foldNumber } from './fold.ts';

describe('folding for search', () => {
  test.each([
    ['Łucja Żółkiewska', 'lucja zolkiewska'],
    ['Ødegård', 'odegard'],
    ['Ελένη', 'ελενη'],
    ['Παπάς', 'παπασ'],
    ['ÆTHELSTAN', 'aethelstan'],
    ['Straße', 'strasse'],
    ['ＡＢＣ　１２', 'abc 12'],
    ['  two\n lines ', 'two lines'],
  ])('%s', (text, folded) => {
    expect(fold(text)).toBe(folded);
  });

  test('is the same twice as once, and deaf to capitals', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(fold(fold(text))).toBe(fold(text));
      }),
    );
  });

  test('numbers are one number however they are spaced', () => {
    for (const text of ['FM-5 0042', 'fm50042', 'FM 5/0042', 'Fm.5_0042'])
      expect(foldNumber(text)).toBe('fm50042');
  });
});
