import type { MeasuredFeature } from '../features.ts';

/** What a step of the build asks for. */
export const STEP_KINDS = [
  'confirm',
  'measure',
  'torque',
  'orientation',
  'wiring',
  'quantity',
  'photo',
  'run',
] as const;
export type StepKind = (typeof STEP_KINDS)[number];

/** A step of a build sheet, in its order. */
export interface BuildStep {
  /** Stays the same over revisions, so that a model can amend one step of the sheet it inherits. */
  key: string;
  kind: StepKind;
  label: string;
  caution: string;
  /** Nobody may walk past it without a reason in writing. */
  hold: boolean;
  /** Features that must have a final reading first (measure and torque steps). */
  needs: MeasuredFeature[];
  /** For wiring: pairs of colours that belong together, from the diagram named in `note`. */
  wires: { from: string; to: string }[];
  /** For a quantity: in which unit it is given (`ml`, `L`, `pc`). */
  unit: string;
  /** A quantity that is nothing without its grade: oil. */
  grade: boolean;
  note: string;
  /** Keys of steps after which this one has to be done again; where none are kept, the usual ones. */
  undoneBy?: string[];
}

export const STEP_KIND_LABELS: Record<StepKind, string> = {
  confirm: 'Confirm',
  measure: 'Measure',
  torque: 'Torque',
  orientation: 'Which way round',
  wiring: 'Wiring',
  quantity: 'Quantity',
  photo: 'Photo',
  run: 'Test run',
};

/** The keys that more than one step of a sheet has; a key names one step. */
export const repeatedKeys = (steps: readonly Pick<BuildStep, 'key'>[]): string[] => [
  ...new Set(
    steps.flatMap(({ key }, index) => (steps.findIndex((s) => s.key === key) < index ? key : [])),
  ),
];

interface Wire {
  readonly from: string;
  readonly to: string;
}

const sameColour = (a: string, b: string): boolean =>
  a.trim().toLowerCase() === b.trim().toLowerCase();

/** The wires of the diagram that were found joined to another colour, or not looked at (empty). */
export const wiresThatDiffer = (
  diagram: readonly Wire[],
  found: readonly Wire[],
): { from: string; to: string; found: string }[] =>
  diagram.flatMap(({ from, to }) => {
    const seen = found.find((wire) => sameColour(wire.from, from))?.to ?? '';
    return sameColour(seen, to) ? [] : [{ from, to, found: seen }];
  });

/** A quantity as typed: `1100`, `0,6`; null when it is no number above zero. */
export function quantityOf(typed: string): number | null {
  const text = typed.trim().replace(',', '.');
  if (!/^\d+(\.\d+)?$|^\.\d+$/.test(text)) return null;
  const value = Number(text);
  return value > 0 && value <= 1_000_000 ? value : null;
}
