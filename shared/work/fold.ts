/** Letters that Unicode does not decompose, with what people type in their place. */
const PLAIN: Record<string, string> = {
  ł: 'l',
  ø: 'o',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ı: 'i',
  ς: 'σ',
};

/**
 * Text folded for search: without case, accents or the width of East Asian forms, so that 'zolkiewska'
 * finds 'Żółkiewska'. Never shown, never used as an identity.
 */
export const fold = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[łøđðþßæœıς]/g, (letter) => PLAIN[letter] ?? letter)
    .replace(/\s+/g, ' ')
    .trim();

/** A serial or part number folded so that spaces, dashes, dots, slashes and case don't matter. */
export const foldNumber = (text: string): string => fold(text).replace(/[\s\-._/]/g, '');
