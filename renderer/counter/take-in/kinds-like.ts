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

/** What people say for a kind beside its own name. */
const ALSO: Partial<Record<MachineKind, readonly string[]>> = {
  tiller: ['rotary tiller', 'cultivator', 'rototiller', 'power hoe'],
  mower: ['lawn mower', 'push mower', 'walk-behind mower', 'grass cutter'],
  'riding-mower': ['lawn tractor', 'garden tractor', 'ride-on', 'zero-turn'],
  pump: ['water pump', 'trash pump'],
  generator: ['genset', 'power plant', 'standby'],
  'log-splitter': ['wood splitter'],
  'snow-thrower': ['snow blower', 'snowblower'],
  'pressure-washer': ['power washer', 'jet washer'],
  chipper: ['shredder', 'mulcher', 'wood chipper'],
  chainsaw: ['saw', 'chain saw'],
  kart: ['go-kart', 'go kart', 'cart', 'minibike'],
};

/** Letters from which another name is meant: fewer are the beginning of too many. */
const ENOUGH = 3;

const isSaid = (kind: MachineKind, wanted: string): boolean =>
  (ALSO[kind] ?? []).some((name) =>
    [name, ...name.split(/[ -]/)].some((word) => fold(word).startsWith(wanted)),
  );

/** First letters of the label come first, then those of its second word: 'mo' is Mower, then Riding mower; other names come last. */
export function kindsLike<Item extends { value: MachineKind; label: string }>(
  kinds: readonly Item[],
  typed: string,
): Item[] {
  const wanted = fold(typed);
  const begins = kinds.filter(({ label }) => fold(label).startsWith(wanted));
  const within = kinds.filter(
    (kind) => !begins.includes(kind) && fold(kind.label).includes(` ${wanted}`),
  );
  const named = [...begins, ...within];
  const said =
    wanted.length < ENOUGH
      ? []
      : kinds.filter((kind) => !named.includes(kind) && isSaid(kind.value, wanted));
  return [...named, ...said];
}
