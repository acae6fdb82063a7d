import type { Face, Family } from './families.ts';
import { hasGlyph, isTakenApart } from './font-files.ts';

/** What has been asked before, per font: every character of every paper is asked for. */
const known = new Map<string, Map<string, boolean>>();
const answersByFace = (): Record<Face, Map<string, boolean>> => ({
  regular: new Map(),
  strong: new Map(),
  oblique: new Map(),
});
const inBase = answersByFace();
const whole = answersByFace();

/** Whether a font has all of a text. What has no shape of its own is never missing. */
export function covers(family: Family, face: Face, text: string): boolean {
  const font = `${family} ${face}`;
  const answers = known.get(font) ?? new Map<string, boolean>();
  known.set(font, answers);
  return everyCharacter(
    text,
    answers,
    (character) =>
      /\p{Default_Ignorable_Code_Point}/u.test(character) || hasGlyph(family, face, character),
  );
}

/** Whether the base font is there for all of a text. */
export function isBase(face: Face, text: string): boolean {
  return everyCharacter(
    text,
    inBase[face],
    (character) => hasGlyph('base', face, character) && !/\p{Script=Devanagari}/u.test(character),
  );
}

/** Whether the base font has one glyph for each character of a text that is all in it. */
export function isWhole(face: Face, text: string): boolean {
  return everyCharacter(text, whole[face], (character) => !isTakenApart('base', face, character));
}

function everyCharacter(
  text: string,
  answers: Map<string, boolean>,
  ask: (character: string) => boolean,
): boolean {
  for (const character of text) {
    let answer = answers.get(character);
    if (answer === undefined) {
      answer = ask(character);
      answers.set(character, answer);
    }
    if (!answer) return false;
  }
  return true;
}
