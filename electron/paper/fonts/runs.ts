import { covers, isBase, isWhole } from './coverage.ts';
import type { Stretch } from './direction.ts';
import { REPLACEMENT } from './drawable.ts';
import { FAMILIES, type Face, type Family } from './families.ts';
import { lettersOf } from './syllables.ts';

/** A stretch of text that one font draws. */
export interface Run extends Stretch {
  family: Family;
  /** Whether its glyphs are not simply those of its characters, one after the other. */
  shaped: boolean;
}

/**
 * Splits a stretch into runs by the fonts that cover it, from left to right. Base letters and the marks on
 * them stay together. Letters outside the base font go to the one font that covers all of them, if there
 * is one, so that a name is not set from two hands. Spaces and digits within a script that is shaped are
 * set with it.
 * @param families those outside the base, in the order in which they are asked
 */
export function runsOf(stretch: Stretch, face: Face, families: readonly Family[]): Run[] {
  const { text, rightToLeft } = stretch;
  if (!rightToLeft && isBase(face, text))
    return [{ ...stretch, family: 'base', shaped: !isWhole(face, text) }];
  const runs: Omit<Run, 'shaped'>[] = [];
  let { at } = stretch;
  for (const piece of withNeighbours(piecesOf(text, face, families), face, rightToLeft)) {
    const last = runs.at(-1);
    if (last?.family === piece.family) last.text += piece.text;
    else runs.push({ ...piece, rightToLeft, at });
    at += piece.text.length;
  }
  const shaped = runs.map((run) => ({ ...run, shaped: isShaped(run, face) }));
  return rightToLeft ? shaped.reverse() : shaped;
}

function isShaped({ text, family, rightToLeft }: Omit<Run, 'shaped'>, face: Face): boolean {
  if (rightToLeft || FAMILIES[family].setting !== 'plain') return true;
  return family === 'base' && !isWhole(face, text);
}

interface Piece {
  text: string;
  family: Family;
}

/** The text letter by letter, with the families that are there for them. */
function piecesOf(text: string, face: Face, families: readonly Family[]): Piece[] {
  const pieces: Piece[] = [];
  let stretch: string[] = [];
  let possible = families;
  const flush = () => {
    const family = possible.find((candidate) => covers(candidate, face, stretch.join('')));
    for (const letter of stretch)
      pieces.push(...(family ? [{ text: letter, family }] : drawnFrom(families, face, letter)));
    stretch = [];
    possible = families;
  };
  for (const letter of lettersOf(text)) {
    if (isBase(face, letter)) {
      flush();
      pieces.push({ text: letter, family: 'base' });
      continue;
    }
    const there = (family: Family) => FAMILIES[family].letters.test(letter);
    if (!possible.some(there)) flush();
    stretch.push(letter);
    possible = possible.filter(there);
  }
  flush();
  return pieces;
}

/** A letter by the first family that has it, or as much of it as there is. */
function drawnFrom(families: readonly Family[], face: Face, letter: string): Piece[] {
  const there = families.filter((family) => FAMILIES[family].letters.test(letter));
  // Signs that belong to no script are in the Japanese font, if anywhere.
  const asked: Family[] = /^\p{L}/u.test(letter) ? there : [...there, 'japanese'];
  const family = asked.find((candidate) => covers(candidate, face, letter));
  if (family !== undefined) return [{ text: letter, family }];
  const characters = Array.from(letter);
  if (characters.length === 1) return [{ text: REPLACEMENT, family: 'base' }];
  return characters.flatMap((character): Piece[] =>
    isBase(face, character)
      ? [{ text: character, family: 'base' }]
      : drawnFrom(families, face, character),
  );
}

/** Sets what is neither letter nor mark with the letters before and after it. */
function withNeighbours(pieces: Piece[], face: Face, rightToLeft: boolean): Piece[] {
  const isLetter = ({ family, text }: Piece) => family !== 'base' || /\p{L}/u.test(text);
  const after: (Family | undefined)[] = [];
  for (const [index, piece] of [...pieces.entries()].reverse())
    after[index] = isLetter(piece) ? piece.family : after[index + 1];
  let before: Family | undefined;
  return pieces.map((piece, index) => {
    if (isLetter(piece)) {
      before = piece.family;
      return piece;
    }
    const family = before ?? after[index];
    const within = rightToLeft || before === after[index];
    return within && setsOthers(family) && covers(family, face, piece.text)
      ? { text: piece.text, family }
      : piece;
  });
}

function setsOthers(family: Family | undefined): family is Family {
  return family !== undefined && family !== 'emoji' && FAMILIES[family].setting !== 'plain';
}
