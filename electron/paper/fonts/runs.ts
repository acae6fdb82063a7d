import { type Face, type Family, hasGlyph } from './font-files.ts';

/** A stretch of text that one font draws. */
export interface Run {
  text: string;
  family: Family;
}

/** Stands, visibly, where no font has the character. */
const REPLACEMENT = '\ufffd';

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * Splits a line into runs by the fonts that cover it. Base letters and the marks on them stay together. A
 * stretch outside the base font goes to the one font that covers all of it, if there is one, so that a
 * name is not set from two hands; which Han font is asked first follows the shop's locale, since the same
 * code point is drawn differently in Japan and in China.
 */
export function runsOf(text: string, face: Face, locale: string): Run[] {
  const foreign: Family[] = /^zh\b/i.test(locale)
    ? ['chinese', 'japanese']
    : ['japanese', 'chinese'];
  if (covers('base', face, text)) return [{ text, family: 'base' }];

  const runs: Run[] = [];
  let stretch: string[] = [];
  const append = (piece: string, family: Family) => {
    const last = runs.at(-1);
    if (last?.family === family) last.text += piece;
    else runs.push({ text: piece, family });
  };
  const flush = () => {
    const whole = foreign.find((family) => covers(family, face, stretch.join('')));
    for (const piece of stretch) {
      const family = whole ?? foreign.find((candidate) => covers(candidate, face, piece));
      if (family === undefined) append(REPLACEMENT, 'base');
      else append(piece, family);
    }
    stretch = [];
  };
  for (const { segment } of graphemes.segment(text)) {
    if (covers('base', face, segment)) {
      flush();
      append(segment, 'base');
    } else stretch.push(segment);
  }
  flush();
  return runs;
}

/** What has been asked before, per font: every character of every paper is asked for. */
const known: Record<Family, Record<Face, Map<string, boolean>>> = {
  base: { regular: new Map(), strong: new Map(), oblique: new Map() },
  japanese: { regular: new Map(), strong: new Map(), oblique: new Map() },
  chinese: { regular: new Map(), strong: new Map(), oblique: new Map() },
};

function covers(family: Family, face: Face, text: string): boolean {
  const answers = known[family][face];
  for (const character of text) {
    let has = answers.get(character);
    if (has === undefined) {
      has = hasGlyph(family, face, character);
      answers.set(character, has);
    }
    if (!has) return false;
  }
  return true;
}

/**
 * Text made ready for drawing: composed (NFC), line ends as `\n`, and without characters that have no
 * shape of their own but can turn or hide what stands around them (direction overrides, joiners).
 * Control characters become the visible replacement.
 */
export function drawable(text: string): string {
  return text
    .toWellFormed()
    .normalize('NFC')
    .replaceAll(/\r\n?|[\u2028\u2029\u0085\v\f]/g, '\n')
    .replaceAll('\t', ' ')
    .replaceAll(/\p{Default_Ignorable_Code_Point}/gu, '')
    .replaceAll(/[^\P{Cc}\n]/gu, REPLACEMENT);
}
