import type { MeasuredFeature } from '../features.ts';

/** Readings that can lie below zero: a piston that stands proud of the deck, a dial that was turned. */
const MAY_BE_NEGATIVE: readonly MeasuredFeature[] = [
  'deck-clearance',
  'valve-travel-intake',
  'valve-travel-exhaust',
];

/** Gaps and plays can be nothing at all; a part that is there has a size, and a bolt pulled has a torque. */
const MAY_BE_ZERO: readonly MeasuredFeature[] = [
  ...MAY_BE_NEGATIVE,
  'ring-end-gap',
  'ring-side-clearance',
  'crankshaft-end-play',
  'camshaft-end-play',
  'head-flatness',
  'deck-flatness',
  'coil-air-gap',
  'valve-lash-intake',
  'valve-lash-exhaust',
  'compression',
  'coil-resistance',
];

/**
 * Why a value can't be a reading of this feature, in a sentence; null when it can. The value is in the base
 * unit, or in any other with the same zero.
 */
export function whyImpossible(feature: MeasuredFeature, value: number): string | null {
  if (value < 0 && !MAY_BE_NEGATIVE.includes(feature)) return 'This can’t be less than nothing.';
  if (value === 0 && !MAY_BE_ZERO.includes(feature)) return 'A part that is there is more than 0.';
  return null;
}
