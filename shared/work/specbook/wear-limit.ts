import { displayNumber, type Unit } from '../../trade/index.ts';
import { FEATURE_LABELS, type Feature } from '../features.ts';
import { wearDirectionOf } from '../wear-direction.ts';

/**
 * A wear limit is printed in two ways: as the size at which a part is replaced (68.10), or as how much it may
 * wear (0.08). The second is written with a sign, `+0.08` of a bore and `-0.05` of a pin, and counts from the
 * limit of a new part.
 */

/** Beyond this a wear limit is no size that such a part still runs at. Common practice, no source. */
const FARTHEST = { size: 0.1, gap: 15 } as const;
/** No part that has a size of its own may wear by more, as a share of it. Common practice, no source. */
const MOST_WEAR = 0.03;

interface NewLimits {
  low?: number;
  high?: number;
}

/** Whether a text says how much a part may wear, and not at which size it is replaced. */
export const isAllowance = (feature: Feature, text: string): boolean =>
  wearDirectionOf(feature) !== 'either' && /^\s*[+\-−]/.test(text);

/** The limit that wear is counted from: the upper one of what wears up. */
function edgeOf(feature: Feature, { low, high }: NewLimits): number | undefined {
  return wearDirectionOf(feature) === 'up' ? (high ?? low) : (low ?? high);
}

/** The size at which a part is replaced that may wear by so much. @param allowance base unit, either sign */
export function sizeAfterWear(
  feature: Feature,
  limits: NewLimits,
  allowance: number,
): number | undefined {
  const edge = edgeOf(feature, limits);
  if (edge === undefined) return undefined;
  const away = wearDirectionOf(feature) === 'up' ? Math.abs(allowance) : -Math.abs(allowance);
  // Limits and allowances are decimals that people typed; their sum is one too.
  return Number((edge + away).toFixed(9));
}

export interface WearLimitDoubt {
  message: string;
  /** What to write instead, if it is how much the part may wear; null where that can't be. */
  allowance: string | null;
}

/**
 * Why a size can't be the wear limit of a feature: it lies on the side that the part doesn't wear to, within
 * the limits of a new one, or too far off. Null when it can.
 * @param wearLimit base unit, with the text and unit that it was typed in
 */
export function doubtWearLimit(
  feature: Feature,
  limits: NewLimits,
  wearLimit: number,
  typed: { text: string; unit: Unit },
): WearLimitDoubt | null {
  const wears = wearDirectionOf(feature);
  const edge = edgeOf(feature, limits);
  if (wears === 'either' || edge === undefined) return null;
  const beyond = wears === 'up' ? wearLimit - edge : edge - wearLimit;
  const gap = edge < 5;
  const farthest = gap ? Math.max(edge, 0.01) * FARTHEST.gap : edge * FARTHEST.size;
  if (beyond > 0 && beyond <= farthest) return null;
  const size = sizeAfterWear(feature, limits, wearLimit);
  const most = gap ? farthest : edge * MOST_WEAR;
  const plausible = size !== undefined && size > 0 && Math.abs(wearLimit) <= most;
  const allowance = `${wears === 'up' ? '+' : '-'}${typed.text.trim()}`;
  const where =
    beyond > 0
      ? 'is too far from the limits of a new part'
      : `does not lie ${wears === 'up' ? 'above' : 'below'} the limits of a new part, and ${FEATURE_LABELS[feature].toLowerCase()} wears ${wears}`;
  const instead = plausible
    ? ` If it is how much the part may wear, write ${allowance}: it is then replaced ${wears === 'up' ? 'above' : 'below'} ${displayNumber(size, typed.unit)}.`
    : ' Check the figure in the source.';
  return {
    message: `${typed.text.trim()} ${where}.${instead}`,
    allowance: plausible ? allowance : null,
  };
}

/** A wear limit as it is printed: `68.10`, or `68.095 (+0.08)` where the source says how much. */
export const wearLimitWords = ({
  feature,
  wearLimit,
  wearLimitBase,
  unit,
}: {
  feature: Feature;
  wearLimit: string;
  wearLimitBase: number | null;
  unit: Unit;
}): string =>
  wearLimitBase !== null && isAllowance(feature, wearLimit)
    ? `${displayNumber(wearLimitBase, unit)} (${wearLimit.trim()})`
    : wearLimit;
