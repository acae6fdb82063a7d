import { fold } from '../../../shared/work/fold.ts';
import {
  MACHINE_KIND_LABELS,
  MACHINE_KINDS,
  type MachineKind,
} from '../../../shared/work/vocabulary.ts';

export const KINDS: { value: MachineKind; label: string }[] = MACHINE_KINDS.map((value) => ({
  value,
  label: MACHINE_KIND_LABELS[value],
}));

/** First letters of the label come first, then those of its second word: 'mo' is Mower, then Riding mower. */
export function kindsLike<Item extends { label: string }>(
  kinds: readonly Item[],
  typed: string,
): Item[] {
  const wanted = fold(typed);
  const begins = kinds.filter(({ label }) => fold(label).startsWith(wanted));
  const within = kinds.filter(
    (kind) => !begins.includes(kind) && fold(kind.label).includes(` ${wanted}`),
  );
  return [...begins, ...within];
}
