import { lettersOf } from '../fonts/syllables.ts';
import { evened, type TextLine, type TextStyle } from '../fonts/typesetter.ts';
import type { Sheet } from './sheet.ts';

/** At most `count` lines of a text; what is cut off is shown to be cut off. */
export function clippedLines(
  sheet: Sheet,
  text: string,
  style: TextStyle,
  { count, width = sheet.width }: { count: number; width?: number },
): TextLine[] {
  const all = sheet.lines(text.replaceAll(/\s+/g, ' '), style, width);
  const kept = all.slice(0, count);
  const last = kept.at(-1);
  if (all.length <= count || last === undefined) return kept;
  let words = last.text;
  let shortened = sheet.lines(`${words} …`, style, width);
  while (shortened.length > 1) {
    words = lettersOf(words).slice(0, -1).join('').trimEnd();
    shortened = sheet.lines(`${words} …`, style, width);
  }
  return evened([...kept.slice(0, -1), ...shortened]);
}
