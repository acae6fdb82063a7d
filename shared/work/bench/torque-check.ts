import {
  aim,
  isPropertyClass,
  PROPERTY_CLASSES,
  parseThread,
  proofLoad,
  sameThread,
  stressArea,
  torquePlausibility,
  torqueStages,
} from '../../trade/index.ts';
import { FEATURE_UNITS, type Feature } from '../features.ts';
import type { BandIssue, SpecificationBand } from '../specbook/specification-band.ts';

/** A fastener group as it is typed: diameter and pitch in mm. */
export interface TypedFastener {
  /** As the source prints it; empty when only the size is known. */
  designation: string;
  diameter: number;
  pitch: number;
  propertyClass: string;
  stages: readonly number[];
}

/** Only a torque is about a fastener. */
export const isTorque = (feature: Feature): boolean => FEATURE_UNITS[feature] === 'N·m';

/** A head is tightened in stages and in an order: its torque is nothing without its bolts. */
export const needsFastener = (feature: Feature): boolean => feature === 'head-bolt-torque';

/** Whether a specification's fastener makes sense: a torque may have one, nothing else has. */
export function readFastener<F extends TypedFastener>(
  feature: Feature,
  fastener: F | null,
): { ok: true; fastener: F | null } | { ok: false; issues: BandIssue[] } {
  if (!isTorque(feature))
    return fastener === null
      ? { ok: true, fastener }
      : {
          ok: false,
          issues: [{ path: 'fastener', message: 'Only a torque has a fastener group.' }],
        };
  if (fastener === null)
    return needsFastener(feature)
      ? {
          ok: false,
          issues: [
            { path: 'fastener', message: 'Give the thread, its class, the count and the stages.' },
          ],
        }
      : { ok: true, fastener };
  const issues: BandIssue[] = [];
  if (!isPropertyClass(fastener.propertyClass))
    issues.push({
      path: 'fastener.propertyClass',
      message: `Use a class as marked on the head: ${PROPERTY_CLASSES.join(', ')}.`,
    });
  issues.push(...designationIssues(fastener));
  issues.push(...fault('fastener.stages', () => torqueStages(1, fastener.stages)));
  issues.push(...fault('fastener.pitch', () => stressArea(fastener)));
  // The class may not go with the diameter (9.8 stops at 16 mm): only the proof load can tell.
  if (issues.length === 0)
    issues.push(...fault('fastener.propertyClass', () => proofLoad(asThread(fastener))));
  return issues.length > 0 ? { ok: false, issues } : { ok: true, fastener };
}

/** A designation that is no thread, or names another one than diameter and pitch do. */
function designationIssues({ designation, ...thread }: TypedFastener): BandIssue[] {
  if (designation === '') return [];
  const path = 'fastener.designation';
  return fault(path, () => {
    const named = parseThread(designation);
    if (!sameThread(named, thread))
      throw new RangeError(
        `${designation} is ${named.diameter} × ${named.pitch} mm, not ${thread.diameter} × ${thread.pitch} mm. Mend the one or the other.`,
      );
  });
}

/** What the maths finds wrong, at the field that it is about. */
function fault(path: string, compute: () => unknown): BandIssue[] {
  try {
    compute();
    return [];
  } catch (error) {
    if (error instanceof RangeError) return [{ path, message: error.message }];
    throw error;
  }
}

function asThread({ diameter, pitch, propertyClass }: TypedFastener) {
  if (!isPropertyClass(propertyClass)) throw new RangeError(`${propertyClass} is no class.`);
  return { diameter, pitch, propertyClass };
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
