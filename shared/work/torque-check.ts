import {
  aim,
  isPropertyClass,
  PROPERTY_CLASSES,
  torquePlausibility,
  torqueStages,
} from '../trade/index.ts';
import type { Feature } from './features.ts';
import type { BandIssue, SpecificationBand } from './specification-band.ts';

/** A fastener group as it is typed: diameter and pitch in mm. */
export interface TypedFastener {
  diameter: number;
  pitch: number;
  propertyClass: string;
  stages: readonly number[];
}

/** Whether a specification's fastener makes sense: torques have one, nothing else has. */
export function readFastener<F extends TypedFastener>(
  feature: Feature,
  fastener: F | null,
): { ok: true; fastener: F | null } | { ok: false; issues: BandIssue[] } {
  if (feature !== 'head-bolt-torque')
    return fastener === null
      ? { ok: true, fastener }
      : {
          ok: false,
          issues: [{ path: 'fastener', message: 'Only a torque has a fastener group.' }],
        };
  if (fastener === null)
    return {
      ok: false,
      issues: [
        { path: 'fastener', message: 'Give the thread, its class, the count and the stages.' },
      ],
    };
  const issues: BandIssue[] = [];
  if (!isPropertyClass(fastener.propertyClass))
    issues.push({
      path: 'fastener.propertyClass',
      message: `Use a class as marked on the head: ${PROPERTY_CLASSES.join(', ')}.`,
    });
  if (fastener.pitch >= fastener.diameter)
    issues.push({ path: 'fastener.pitch', message: 'The pitch is smaller than the diameter.' });
  try {
    torqueStages(1, fastener.stages);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    issues.push({ path: 'fastener.stages', message: error.message });
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, fastener };
}

/**
 * A torque that doesn't suit its thread and class, with the share of the proof load that it would put on
 * the bolt; null when it is plausible. It questions a figure and never replaces the source's.
 */
export function questionedTorque(
  band: SpecificationBand,
  fastener: TypedFastener | null,
): { verdict: 'low' | 'high'; preloadShareOfProof: number } | null {
  if (fastener === null || !isPropertyClass(fastener.propertyClass)) return null;
  const torque = targetOf(band);
  if (torque === undefined) return null;
  const { verdict, preloadShareOfProof } = torquePlausibility({
    torque,
    diameter: fastener.diameter,
    pitch: fastener.pitch,
    propertyClass: fastener.propertyClass,
  });
  return verdict === 'plausible' ? null : { verdict, preloadShareOfProof };
}

/** A torque with one limit has no middle: what the source prints is then the figure itself. */
const targetOf = (band: SpecificationBand): number | undefined =>
  band.low !== undefined && band.high !== undefined
    ? aim(band)
    : (band.aim ?? band.high ?? band.low);
