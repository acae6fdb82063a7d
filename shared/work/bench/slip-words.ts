import { type Unit, unitLabel } from '../../trade/index.ts';
import type { ReadingSlipKind } from './question-reading.ts';
import { asTyped } from './reading-in-words.ts';

/** A reading that was asked about, in words: the same on screens and papers. */

/** Digits beyond these come out of the arithmetic of floats, and not from a hand. */
const TYPED_DIGITS = 7;

/** The figure that is offered, as somebody would type it: `0.3`. */
export const likelyFigure = (likely: number): string =>
  String(Number(likely.toPrecision(TYPED_DIGITS)));

/** What the slip of the hand probably was, named as a mechanic would. */
export const SLIP_SENTENCES: Record<ReadingSlipKind, string> = {
  decimal: 'The decimal point in the wrong place, or left out?',
  unit: 'The figure of another unit?',
  transposed: 'Two digits the wrong way round?',
  dropped: 'A digit missing?',
  doubled: 'A digit typed twice?',
  sleeve: 'The micrometer’s sleeve read half a turn off?',
  frame: 'The micrometer frame of another size?',
  deviation: 'Only the deviation that the bore gauge shows?',
  unexplained: 'No part of this kind reads that.',
};

/** `questioned (0.3 mm?), kept as typed` */
export function keptWords({ likely, unit }: { likely: number | null; unit: Unit }): string {
  const offered = likely === null ? '' : ` (${likelyFigure(likely)} ${unitLabel(unit)}?)`;
  return `questioned${offered}, kept as typed`;
}

interface Typed {
  text: string;
  unit: Unit;
}

/** `typed 0.03, taken as 0.3`; with their units where those differ. */
export const takenWords = (taken: Typed & { typed: Typed }): string =>
  taken.typed.unit === taken.unit
    ? `typed ${taken.typed.text}, taken as ${taken.text}`
    : `typed ${asTyped(taken.typed)}, taken as ${asTyped(taken)}`;
