const IDEOGRAPH =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\u3000-\u303f\uff00-\uffef]/u;
const NEVER_FIRST =
  /[\u3001\u3002\uff0c\uff0e\uff1a\uff1b\uff01\uff1f\u300d\u300f\uff09\u3011\u3009\u300b\u30fc\u3005,.:;!?)\]}%]/u;
const NEVER_LAST = /[\u300c\u300e\uff08\u3010\u3008\u300a([{]/u;
const LETTER = /\p{L}/u;

/**
 * Cuts a line of text into the pieces between which it may be broken; joined, they are the text again.
 * Breaks: after spaces (not after the no-break ones), after a hyphen or stroke between letters, and
 * between ideographs, except before closing and after opening marks. Digits are never parted from their
 * sign, their decimals or their unit's stroke.
 */
export function breakablePieces(text: string): string[] {
  const pieces: string[] = [];
  let piece = '';
  const characters = [...text];
  for (const [index, character] of characters.entries()) {
    piece += character;
    const next = characters[index + 1];
    if (next !== undefined && mayBreak(characters[index - 1] ?? '', character, next)) {
      pieces.push(piece);
      piece = '';
    }
  }
  if (piece !== '') pieces.push(piece);
  return pieces;
}

function mayBreak(before: string, character: string, next: string): boolean {
  if (next === ' ') return false;
  if (character === ' ') return true;
  if (/[-/\u2013\u2014]/.test(character)) return LETTER.test(before) && LETTER.test(next);
  if (NEVER_FIRST.test(next) || NEVER_LAST.test(character)) return false;
  return IDEOGRAPH.test(character) || IDEOGRAPH.test(next);
}
