const IDEOGRAPH =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\u3000-\u303f\uff00-\uffef]/u;
const NEVER_FIRST =
  /[\u3001\u3002\uff0c\uff0e\uff1a\uff1b\uff01\uff1f\u300d\u300f\uff09\u3011\u3009\u300b\u30fc\u3005,.:;!?)\]}%]/u;
const NEVER_LAST = /[\u300c\u300e\uff08\u3010\u3008\u300a([{]/u;
const LETTER = /\p{L}/u;
/** Scripts that put no spaces between words. */
const UNSPACED = /[\p{Script=Thai}\p{Script=Lao}\p{Script=Khmer}\p{Script=Myanmar}]/u;

const words = new Intl.Segmenter('th', { granularity: 'word' });

/**
 * Cuts a line of text into the pieces between which it may be broken; joined, they are the text again.
 * Breaks: after spaces (not after the no-break ones), after a hyphen or stroke between letters, between
 * words of scripts that don't space them, and between ideographs, except before closing and after opening
 * marks. Digits are never parted from their sign, their decimals or their unit's stroke.
 */
export function breakablePieces(text: string): string[] {
  const ends = UNSPACED.test(text) ? wordEndsOf(text) : null;
  const pieces: string[] = [];
  let piece = '';
  let at = 0;
  const characters = [...text];
  for (const [index, character] of characters.entries()) {
    piece += character;
    at += character.length;
    const next = characters[index + 1];
    if (next === undefined) break;
    const between = ends !== null && UNSPACED.test(character) && UNSPACED.test(next);
    if (between ? ends.has(at) : mayBreak(characters[index - 1] ?? '', character, next)) {
      pieces.push(piece);
      piece = '';
    }
  }
  if (piece !== '') pieces.push(piece);
  return pieces;
}

function wordEndsOf(text: string): Set<number> {
  return new Set(Array.from(words.segment(text), ({ index, segment }) => index + segment.length));
}

function mayBreak(before: string, character: string, next: string): boolean {
  if (next === ' ') return false;
  if (character === ' ') return true;
  if (/[-/\u2013\u2014\u05be]/.test(character)) return LETTER.test(before) && LETTER.test(next);
  if (NEVER_FIRST.test(next) || NEVER_LAST.test(character)) return false;
  return IDEOGRAPH.test(character) || IDEOGRAPH.test(next);
}
