import bidiFactory from 'bidi-js';
import type { Font, Glyph, GlyphPosition } from 'fontkit';
import { MYANMAR_FEATURES, myanmarOrder } from './myanmar-order.ts';
import { lettersOf, syllablesOf } from './syllables.ts';

const bidi = bidiFactory();

type Shaper = Pick<Font, 'layout'>;

/** One glyph of the font, moved from where the shape begins; in font units. */
export interface Part {
  id: number;
  x: number;
  y: number;
}

export interface Shape {
  parts: readonly Part[];
  /** In font units. */
  advance: number;
}

/** Characters that are drawn as one shape. */
interface Cluster extends Shape {
  /** In the order in which they are written. */
  text: string;
}

/**
 * Clusters of a text by syllables, in the order in which they are written. They are shaped one by one; how
 * they are moved towards each other is taken from the whole text, unless its glyphs are others.
 */
export function syllableClusters(font: Shaper, text: string, rightToLeft: boolean): Cluster[] {
  const syllables = syllablesOf(text);
  const runs = syllables.map((syllable) => layOut(font, syllable, rightToLeft));
  const whole = layOut(font, text, rightToLeft);
  const same = !rightToLeft && idsOf(whole.glyphs) === idsOf(runs.flatMap(({ glyphs }) => glyphs));
  let from = 0;
  return syllables.map((syllable, index) => {
    const { glyphs = [], positions: alone = [] } = runs[index] ?? {};
    const positions = same ? whole.positions.slice(from, from + glyphs.length) : alone;
    from += glyphs.length;
    return clusterOf(syllable, glyphs, positions);
  });
}

const idsOf = (glyphs: Glyph[]): string => glyphs.map(({ id }) => id).join();

/**
 * Clusters of a text whose letters join or are kerned, in the order in which they are written. It is laid
 * out whole; a cluster ends where the glyphs so far stand for whole letters.
 */
export function wordClusters(font: Shaper, text: string, rightToLeft: boolean): Cluster[] {
  const run = layOut(font, text, rightToLeft);
  const written = <T>(list: T[]) => (rightToLeft ? list.toReversed() : list);
  const glyphs = written(run.glyphs);
  const positions = written(run.positions);
  const characters = Array.from(text);
  const ends = endsOf(lettersOf(text));
  const clusters: Cluster[] = [];
  let [count, from, start] = [0, 0, 0];
  for (const [index, glyph] of glyphs.entries()) {
    count += glyph.codePoints.length;
    const next = glyphs[index + 1];
    // A glyph of no characters is a piece of the letter before: its dots, or the second half.
    const ended =
      next === undefined ||
      (ends.has(count) && next.codePoints.length > 0 && positions[index + 1]?.xAdvance !== 0);
    if (!ended) continue;
    const end = next === undefined ? characters.length : count;
    clusters.push(
      clusterOf(
        characters.slice(from, end).join(''),
        written(glyphs.slice(start, index + 1)),
        written(positions.slice(start, index + 1)),
      ),
    );
    [from, start] = [end, index + 1];
  }
  return clusters;
}

function layOut(font: Shaper, text: string, rightToLeft: boolean) {
  if (/\p{Script=Myanmar}/u.test(text))
    return font.layout(syllablesOf(text).map(myanmarOrder).join(''), MYANMAR_FEATURES);
  const ready = rightToLeft ? marksInOrder(mirrored(text)) : text;
  return font.layout(ready, [], null, null, rightToLeft ? 'rtl' : 'ltr');
}

function clusterOf(text: string, glyphs: Glyph[], positions: GlyphPosition[]): Cluster {
  let advance = 0;
  const parts: Part[] = [];
  for (const [index, { id }] of glyphs.entries()) {
    const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[index] ?? {};
    parts.push({ id, x: advance + xOffset, y: yOffset });
    advance += xAdvance;
  }
  return { text, parts, advance };
}

/** After how many characters each letter ends. */
function endsOf(letters: string[]): Set<number> {
  let count = 0;
  return new Set(letters.map((letter) => (count += Array.from(letter).length)));
}

/** Brackets turned round, as they are seen in text that runs from right to left. */
function mirrored(text: string): string {
  return Array.from(text, (character) => bidi.getMirroredCharacter(character) ?? character).join(
    '',
  );
}

/** A shadda stands next to its letter, below the vowel sign that NFC puts before it. */
function marksInOrder(text: string): string {
  return text.replaceAll(/([\u064b-\u0650\u0652\u0670]+)(\u0651)/g, '$2$1');
}
