import type { MeasuredFeature } from './features.ts';

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
  note: string;
}
