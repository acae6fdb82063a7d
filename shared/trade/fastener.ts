import { demandFinite, demandNotNegative, demandPositive, finite } from './demand.ts';
import { fraction, over, times, toNumber } from './exact.ts';
import { printedInchArea } from './inch-stress-areas.ts';
import { printedProofLoad } from './proof-load-table.ts';
import { type PropertyClass, proofStress } from './property-class.ts';

const MM_PER_INCH = 25.4;
/** d − 0.938194·P is the mean of the pitch diameter and the minor diameter of the ISO profile. */
const METRIC_DEPTH = 0.938194;
/** The rounded root of an external Unified thread lies deeper. */
const UNIFIED_DEPTH = 0.9743;

/**
 * Nut factor of T = K·d·F when none is stated: zinc-plated or plain, dry (Shigley, table 8-15, from
 * memory). Books differ for one and the same surface (0.20 or 0.295 for dry zinc), so whatever is
 * computed with it must be shown with it.
 */
export const DEFAULT_NUT_FACTOR = 0.2;

export interface Thread {
  /** Nominal, mm; 1/4 in is 6.35. */
  readonly diameter: number;
  /** mm; 20 threads per inch are 1.27. */
  readonly pitch: number;
}

export interface Bolt extends Thread {
  readonly propertyClass: PropertyClass;
}

/**
 * Tensile stress area of a thread, mm². Metric: π/4·(d − 0.938194·P)² (ISO 898-1:2013, 9.1.6.1).
 * Inch: π/4·(d − 0.9743·P)² (ASME B1.1, from memory). A thread counts as inch when its pitch makes
 * a whole number of threads per inch to 0.2 %, which no metric pitch of 0.25 mm or more does.
 *
 * @throws {RangeError} when a size isn't positive or the pitch is too coarse for the diameter
 */
export function stressArea({ diameter, pitch }: Thread): number {
  demandPositive(diameter, 'the diameter');
  demandPositive(pitch, 'the pitch');
  if (pitch >= diameter / 2) {
    throw new RangeError(`A pitch of ${pitch} mm is too coarse for a diameter of ${diameter} mm.`);
  }
  const depth = isUnified(pitch) ? UNIFIED_DEPTH : METRIC_DEPTH;
  return finite((Math.PI / 4) * (diameter - depth * pitch) ** 2);
}

/**
 * Proof load of a bolt, N: for the metric threads that are kept, what ISO 898-1 prints; otherwise
 * stress area × proof stress of the class, which may differ from print by 0.6 %. For the inch threads
 * that are kept the area is the printed, rounded one.
 *
 * @throws {RangeError} as {@link stressArea} does, or when the class is unknown or not standardised
 * for that diameter
 */
export function proofLoad({ diameter, pitch, propertyClass }: Bolt): number {
  const computedArea = stressArea({ diameter, pitch });
  const area = printedInchArea(diameter, pitch) ?? computedArea;
  const computed = area * proofStress(propertyClass, diameter);
  return printedProofLoad(diameter, pitch, propertyClass) ?? computed;
}

export interface Tightening {
  /** Nominal, mm. */
  readonly diameter: number;
  /** N */
  readonly preload: number;
  /** {@link DEFAULT_NUT_FACTOR} when left out. */
  readonly nutFactor?: number | undefined;
}

/**
 * Torque, N·m, that gives a preload: T = K·d·F (Shigley, Mechanical Engineering Design, ch. 8). Real
 * bolts scatter by a quarter and more around it: a check of a figure, never a figure to work to.
 *
 * @throws {RangeError} when the diameter isn't positive, the preload is negative or the nut factor
 * isn't above 0 and below 1
 */
export function tighteningTorque({
  diameter,
  preload,
  nutFactor = DEFAULT_NUT_FACTOR,
}: Tightening): number {
  demandPositive(diameter, 'the diameter');
  demandNotNegative(preload, 'the preload');
  demandNutFactor(nutFactor);
  return finite((nutFactor * diameter * preload) / 1000);
}

export interface StatedTorque extends Bolt {
  /** N·m */
  readonly torque: number;
  /** {@link DEFAULT_NUT_FACTOR} when left out. */
  readonly nutFactor?: number | undefined;
}

export interface TorquePlausibility {
  /** Preload that the torque would give, as a share of the proof load: 1 is the whole. */
  readonly preloadShareOfProof: number;
  /** `low` below 0.3, `high` above 1. */
  readonly verdict: 'low' | 'plausible' | 'high';
}

/**
 * Whether a stated torque makes sense for the bolt, by the preload it would give. It questions a
 * figure and never replaces the maker's: studs in aluminium, small threads and stretch bolts have
 * their own. The limits 0.3 and 1 are this program's choice; 0.75 is the textbook's for bolts that
 * are used again (Shigley, eq. 8-31).
 *
 * @throws {RangeError} when the torque is negative, or as {@link proofLoad} does
 */
export function torquePlausibility({
  torque,
  nutFactor = DEFAULT_NUT_FACTOR,
  ...bolt
}: StatedTorque): TorquePlausibility {
  demandNotNegative(torque, 'the torque');
  demandNutFactor(nutFactor);
  // As decimals: a torque of exactly 0.3 or 1 of the proof load must not miss it by rounding.
  const preload = over(
    times(fraction(torque), fraction(1000)),
    times(fraction(nutFactor), fraction(bolt.diameter)),
  );
  const share = toNumber(over(preload, fraction(proofLoad(bolt))));
  return {
    preloadShareOfProof: share,
    verdict: share < 0.3 ? 'low' : share > 1 ? 'high' : 'plausible',
  };
}

function isUnified(pitch: number): boolean {
  const threadsPerInch = MM_PER_INCH / pitch;
  return Math.abs(threadsPerInch - Math.round(threadsPerInch)) < 0.002 * threadsPerInch;
}

function demandNutFactor(nutFactor: number): void {
  demandFinite(nutFactor, 'the nut factor');
  if (nutFactor <= 0 || nutFactor >= 1) {
    throw new RangeError(`The nut factor must be above 0 and below 1; it is ${nutFactor}.`);
  }
}
