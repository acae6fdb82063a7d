import { judge } from '../../trade/index.ts';
import type { Feature } from '../features.ts';
import type { Phase } from '../vocabulary.ts';
import { wearDirectionOf } from '../wear-direction.ts';

export interface PlaceBand {
  low: number | null;
  high: number | null;
}

export type ReadingVerdict = 'within' | 'outside' | 'too-close' | 'no-band';

/** A place's limits with the limit of wear beyond which the part is replaced, all in one unit. */
export interface PlaceLimits extends PlaceBand {
  aim: number | null;
  wearLimit: number | null;
}

/** The limits at one place: the specification's, times the share of the final figure of a torque stage. */
export function limitsAt(
  specification: {
    lowBase: number | null;
    highBase: number | null;
    aimBase: number | null;
    wearLimitBase: number | null;
  } | null,
  share: number,
): PlaceLimits {
  const times = (value: number | null | undefined) =>
    value === null || value === undefined ? null : value * share;
  return {
    low: times(specification?.lowBase),
    high: times(specification?.highBase),
    aim: times(specification?.aimBase),
    wearLimit: times(specification?.wearLimitBase),
  };
}

/**
 * What a reading is held against. A part that has run is good until its wear limit; one that comes from
 * machining has to meet the limits of a new one. Which way it wears is known of the feature.
 */
export function acceptedBand(
  feature: Feature,
  { low, high, wearLimit }: Omit<PlaceLimits, 'aim'>,
  phase: Phase,
): PlaceBand {
  if (wearLimit === null || phase === 'after-machining') return { low, high };
  const wears = wearDirectionOf(feature);
  const down = wears === 'either' ? low !== null && wearLimit < low : wears === 'down';
  const edge = down ? (low ?? high) : (high ?? low);
  // A book from before such figures were refused may hold a limit on the wrong side: it limits nothing.
  if (edge !== null && (down ? wearLimit > edge : wearLimit < edge)) return { low, high };
  return down ? { low: wearLimit, high } : { low, high: wearLimit };
}

/**
 * Whether a value that is good by the wear limit would not do for a new part: it is within, and whoever
 * signs for it has to see that it is worn.
 */
export const isWornButGood = (
  feature: Feature,
  value: number,
  limits: Omit<PlaceLimits, 'aim'>,
  phase: Phase,
): boolean => {
  const inside = ({ low, high }: PlaceBand) =>
    (low === null || value >= low) && (high === null || value <= high);
  return inside(acceptedBand(feature, limits, phase)) && !inside(limits);
};

/** The words for it, on screens and papers. */
export const WORN_BUT_GOOD = 'worn, inside the wear limit';

/**
 * The verdict on a value, all in one unit.
 * @param uncertainty expanded, k = 2
 */
export function verdictOn(
  value: number,
  { low, high }: PlaceBand,
  uncertainty: number,
): { verdict: ReadingVerdict; conformance: number | null } {
  if (low === null && high === null) return { verdict: 'no-band', conformance: null };
  return judge({
    value,
    uncertainty,
    ...(low === null ? {} : { low }),
    ...(high === null ? {} : { high }),
  });
}
