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
    ['İPEK IŞIK', 'ipek isik'],
    ['Nguyễn Thị Hương', 'nguyen thi huong'],
    ['\u05e9\u05b8\u05c1\u05dc\u05d5\u05b9\u05dd', 'שלום'],
    ['مُحَمَّد', 'محمد'],
    ['آغا أحمد إيمان ٱلله', 'اغا احمد ايمان الله'],
    ['ليلى', 'ليلي'],
    ['محمـــد', 'محمد'],
    ['می‌خواهم', 'ميخواهم'],
    ['०१२ ٣٤٥ ۶۷', '012 345 67'],
    ['🛠️', '🛠'],
    ['ᲒᲘᲝᲠᲒᲘ', 'გიორგი'],
  ])('%s', (text, folded) => {
    expect(fold(text)).toBe(folded);
  });

  test('finds Hangul however it is composed, and by its first letters', () => {
    expect(fold('김민서'.normalize('NFD'))).toBe(fold('김민서'));
    expect(fold('김민서').startsWith(fold('김ㅁ'.replace('ㅁ', '\u1106')))).toBe(true);
  });

  test.each([
    ['राम', 'रीमा'],
    ['สมชาย', 'สมชัย'],
    ['கமல்', 'கமலா'],
  ])('%s and %s stay two names', (one, other) => {
    expect(fold(one)).not.toBe(fold(other));
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
