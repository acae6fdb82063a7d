import type { MeasuredFeature } from '../../features.ts';
import type { DecisionSubject } from '../deciding/decisions.ts';
import type { WorkKind } from './kinds-of-work.ts';

/** Measured only when the engine is open. */
const INSIDE: readonly MeasuredFeature[] = [
  'bore',
  'piston-skirt',
  'ring-end-gap',
  'ring-side-clearance',
  'crankpin',
  'rod-big-end',
  'main-journal',
];

const INSIDE_PARTS: readonly DecisionSubject[] = [
  'cylinder',
  'piston',
  'rings',
  'crankshaft',
  'connecting-rod',
];

/** What a job seems to be, by what was measured and decided on; null when nothing speaks for either. */
export function seemsToBe(facts: {
  measured: readonly MeasuredFeature[];
  decided: readonly DecisionSubject[];
}): WorkKind | null {
  const open =
    facts.measured.some((feature) => INSIDE.includes(feature)) ||
    facts.decided.some((subject) => INSIDE_PARTS.includes(subject));
  if (open) return 'rebuild';
  return facts.decided.length > 0 ? 'repair' : null;
}
