/** Letters that Unicode does not decompose, with what people type in their place. */
const PLAIN: Record<string, string> = {
  ł: 'l',
  ø: 'o',
  đ: 'd',
  ð: 'd',
  ħ: 'h',
  þ: 'th',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ı: 'i',
  ς: 'σ',
  // Arabic: forms of alef, yeh, kaf and heh by country and keyboard; the letter drawn long.
  ٱ: 'ا',
  ى: 'ي',
  ی: 'ي',
  ک: 'ك',
  ة: 'ه',
  ہ: 'ه',
  ھ: 'ه',
  ە: 'ه',
  ـ: '',
  '־': '-',
};

/**
 * Marks that people leave out when they type: accents, the points of Hebrew and Arabic, the dot below of
 * Indic letters. The vowel signs of Indic and Thai are no such marks: without them it is another name.
 */
const OPTIONAL_MARK =
  /(?=[\p{Script=Inherited}\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Arabic}\p{Script=Hebrew}])\p{M}|\u093c|\u09bc|\u0a3c|\u0abc|\u0cbc/gu;

/**
 * Text folded for search: without case, accents, joiners or the width of East Asian forms, digits as 0 to
 * 9, so that 'zolkiewska' finds 'Żółkiewska'. Never shown, never used as an identity.
 */
export const fold = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(OPTIONAL_MARK, '')
    .replace(/\p{Default_Ignorable_Code_Point}/gu, '')
    .toLowerCase()
    .replace(/[łøđðħþßæœıςٱىیکةہھەـ־]/g, (letter) => PLAIN[letter] ?? letter)
    .replace(/(?![0-9])\p{Nd}/gu, digitOf)
    .replace(/\s+/g, ' ')
    .trim();

/** Decimal digits stand in tens, from zero up. */
function digitOf(digit: string): string {
  const codePoint = digit.codePointAt(0) ?? 0;
  let value = 0;
  while (value < 9 && /\p{Nd}/u.test(String.fromCodePoint(codePoint - value - 1))) value += 1;
  return String(value);
}

/** A serial or part number folded so that spaces, dashes, dots, slashes and case don't matter. */
export const foldNumber = (text: string): string => fold(text).replace(/[\s\-._/]/g, '');
