const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** What is seen as one letter, with the marks on it. */
export function lettersOf(text: string): string[] {
  return Array.from(graphemes.segment(text), ({ segment }) => segment);
}

/** A sign that ties the letter before it to the one after (virama, coeng), and joiners after it. */
const TIES =
  /[\u094d\u09cd\u0a4d\u0acd\u0b4d\u0bcd\u0c4d\u0ccd\u0d4d\u0dca\u1039\u17d2][\u200c\u200d]?$/;

/** Letters that are drawn as one: none of their shapes depends on what stands outside. */
export function syllablesOf(text: string): string[] {
  const syllables: string[] = [];
  for (const letter of lettersOf(text)) {
    const before = syllables.at(-1);
    if (before !== undefined && TIES.test(before) && /^\p{L}/u.test(letter))
      syllables[syllables.length - 1] = before + letter;
    else syllables.push(letter);
  }
  return syllables;
}
