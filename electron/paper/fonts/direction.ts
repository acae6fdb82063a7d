import bidiFactory from 'bidi-js';

const bidi = bidiFactory();

/** A stretch of a line that runs one way. */
export interface Stretch {
  /** In the order in which it is written. */
  text: string;
  rightToLeft: boolean;
  /** Where it begins in the paragraph. */
  at: number;
}

const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/;
const RIGHT_TO_LEFT_LETTER =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;

/**
 * A paragraph with the directions in it, by the Unicode Bidirectional Algorithm (UAX 9). It runs from
 * left to right, as the papers' own words do, unless it begins with a letter of a script that runs the
 * other way and most of its letters are of such.
 */
export class Paragraph {
  readonly text: string;
  readonly rightToLeft: boolean;
  readonly #levels: ReturnType<typeof bidi.getEmbeddingLevels> | null;

  constructor(text: string) {
    this.text = text;
    this.rightToLeft = RIGHT_TO_LEFT.test(text) && runsRightToLeft(text);
    this.#levels = RIGHT_TO_LEFT.test(text)
      ? bidi.getEmbeddingLevels(withoutPairs(text), this.rightToLeft ? 'rtl' : 'ltr')
      : null;
  }

  /** A line of it, as stretches from left to right. */
  stretches(start: number, end: number): Stretch[] {
    if (start >= end) return [];
    if (this.#levels === null)
      return [{ text: this.text.slice(start, end), rightToLeft: false, at: start }];
    const { levels } = this.#levels;
    const stretches: { level: number; first: number; last: number }[] = [];
    let before: number | undefined;
    const order = bidi.getReorderedIndices(this.text, this.#levels, start, end - 1);
    for (const index of order.slice(start, end)) {
      const level = levels[index] ?? 0;
      const open = stretches.at(-1);
      if (open !== undefined && open.level === level && Math.abs(index - (before ?? 0)) === 1) {
        open.first = Math.min(open.first, index);
        open.last = Math.max(open.last, index);
      } else stretches.push({ level, first: index, last: index });
      before = index;
    }
    return stretches.map(({ level, first, last }) => ({
      text: this.text.slice(first, last + 1),
      rightToLeft: level % 2 === 1,
      at: first,
    }));
  }
}

function runsRightToLeft(text: string): boolean {
  const letters = text.match(/\p{L}/gu) ?? [];
  const count = letters.filter((letter) => RIGHT_TO_LEFT_LETTER.test(letter)).length;
  return RIGHT_TO_LEFT_LETTER.test(letters[0] ?? '') && count > letters.length / 2;
}

/** The library takes halves of pairs for letters: signs beyond them, such as emoji, become a plain star. */
function withoutPairs(text: string): string {
  return text.replaceAll(/(?!\p{L})[\u{10000}-\u{10ffff}]/gu, '\u2606\u2606');
}
