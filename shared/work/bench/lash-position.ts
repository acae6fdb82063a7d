import type { MeasuredFeature } from '../features.ts';

/** Where an engine may stand when valve lash is set: both valves closed, the tappets off the cams. */
export const LASH_POSITIONS = ['at-top-dead-centre', 'just-past-top-dead-centre'] as const;
export type LashPosition = (typeof LASH_POSITIONS)[number];

export const LASH_POSITION_LABELS: Record<LashPosition, string> = {
  'at-top-dead-centre': 'compression stroke, at top dead centre',
  'just-past-top-dead-centre': 'compression stroke, just past top dead centre',
};

const LASH: readonly MeasuredFeature[] = ['valve-lash-intake', 'valve-lash-exhaust'];

/**
 * Whether a reading makes sense only where the engine stands right: on another stroke, or where a
 * compression release lifts the valve, lash reads large and is then set too tight.
 */
export const wantsPosition = (feature: MeasuredFeature): boolean => LASH.includes(feature);
