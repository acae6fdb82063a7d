/** A reason in writing that a stranger understands a year later. */

const FEWEST_WORDS = 4;
const FEWEST_LETTERS = 15;

const words = new Intl.Segmenter(undefined, { granularity: 'word' });

/**
 * Whether a text says why in a sentence at least: four words, three of them different, and fifteen letters.
 * Scripts that write without spaces are parted into words too; what it says is the reader's to judge.
 */
export function isSentence(text: string): boolean {
  const found = [...words.segment(text)]
    .filter(({ isWordLike }) => isWordLike)
    .map(({ segment }) => segment.toLowerCase());
  const letters = found.join('').replace(/[^\p{L}\p{M}]/gu, '').length;
  // A character of these scripts is a word or half of one.
  const dense = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}]/u.test(
    text,
  );
  return (
    found.length >= FEWEST_WORDS &&
    new Set(found).size >= FEWEST_WORDS - 1 &&
    letters >= (dense ? FEWEST_LETTERS / 3 : FEWEST_LETTERS)
  );
}
