import type { Font, Glyph, GlyphRun } from 'fontkit';
import { syllableClusters, wordClusters } from './clusters.ts';
import { mendLayout } from './layout-mends.ts';
import { OwnGlyphs } from './own-glyphs.ts';

/** Tells, as an OpenType feature that means it, which way the text runs. */
export const DIRECTION_FEATURE = { rightToLeft: 'rtla', leftToRight: 'ltra' } as const;

/** Holds punctuation at an edge to the letters beside it, for readers that tell direction by letters. */
const RIGHT_TO_LEFT_MARK = '\u200f';
const ENDS_ITSELF = /[\p{L}\p{M}\s]$/u;
const BEGINS_ITSELF = /^[\p{L}\s]/u;

const EMPTY = { parts: [], advance: 0 };

/**
 * A font for one document in which each character has one glyph of its own, in the order in which readers
 * of PDF files look for them. The first character of a cluster carries the whole of its shape, made up of
 * glyphs of the font; the others are empty and take no room. Text that is searched for, copied or read
 * aloud thereby comes out as it was written, whatever shaping does to the order and number of glyphs.
 * @param whole whether words are laid out whole, and not syllable by syllable
 */
export function shapedFont(font: Font, whole: boolean): Font {
  const own = new OwnGlyphs(font);
  const shaped: Font = Object.create(font, {
    // pdfkit takes fonts of one name for the same.
    postscriptName: { value: `${font.postscriptName}-Shaped` },
    maxp: { get: () => own.most() },
  });
  // fontkit would give a glyph the characters that it was first drawn for.
  shaped.getGlyph = (id, codePoints = []) =>
    own.find(id) ?? Object.assign(Object.create(font.getGlyph(id)), { codePoints });
  mendLayout(shaped);

  const shaper = { layout: font.layout.bind(shaped) };
  const layOutWord = (word: string, rightToLeft: boolean): Glyph[] => {
    const clusters = (whole ? wordClusters : syllableClusters)(shaper, word, rightToLeft);
    const glyphs = clusters.flatMap(({ text, ...shape }) =>
      unitsOf(text, rightToLeft).map((unit, index) =>
        own.glyphFor(unit, index === 0 ? shape : EMPTY),
      ),
    );
    return rightToLeft ? glyphs.reverse() : glyphs;
  };

  const laidOut = new Map<string, Glyph[]>();
  const glyphsOf = (word: string, rightToLeft: boolean): Glyph[] => {
    const key = `${rightToLeft} ${word}`;
    const glyphs = laidOut.get(key) ?? layOutWord(word, rightToLeft);
    laidOut.set(key, glyphs);
    return glyphs;
  };

  shaped.layout = (text, features = []) => {
    const rightToLeft = features.includes(DIRECTION_FEATURE.rightToLeft);
    const words = text.split(/(?<= )/).map((word) => glyphsOf(word, rightToLeft));
    if (!rightToLeft) return runOf(words.flat());
    const mark = own.glyphFor(RIGHT_TO_LEFT_MARK, EMPTY);
    return runOf([
      ...(ENDS_ITSELF.test(text) ? [] : [mark]),
      ...words.reverse().flat(),
      ...(BEGINS_ITSELF.test(text) ? [] : [mark]),
    ]);
  };

  shaped.createSubset = () => {
    const subset = font.createSubset.call(shaped);
    own.addTo(subset);
    return subset;
  };
  return shaped;
}

function runOf(glyphs: Glyph[]): GlyphRun {
  const positions = glyphs.map(({ advanceWidth }) => ({
    xAdvance: advanceWidth,
    yAdvance: 0,
    xOffset: 0,
    yOffset: 0,
  }));
  return {
    glyphs,
    positions,
    // pdfkit scales the positions before it asks.
    get advanceWidth() {
      return positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
    },
  };
}

/**
 * Characters by themselves. From left to right a joiner goes with the character that follows: readers
 * skip one that stands alone or last.
 */
function unitsOf(text: string, rightToLeft: boolean): string[] {
  return rightToLeft ? Array.from(text) : (text.match(/\p{Cf}*\P{Cf}|\p{Cf}+$/gu) ?? []);
}
