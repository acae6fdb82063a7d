import { demandNotNegative, finite } from './demand.ts';
import { difference } from './exact.ts';

/** Coverage factor of every expanded uncertainty here: about 95 % of a normal distribution. */
export const COVERAGE_FACTOR = 2;

export interface Gauge {
  /** Smallest step that the gauge shows. */
  readonly resolution: number;
  /** Largest error that its maker or its calibration allows, as a plain amount without sign. */
  readonly maxError: number;
  /** Standard deviation of repeated readings of one thing; zero when left out. */
  readonly repeatability?: number | undefined;
}

/**
 * Expanded uncertainty (k = 2) of one reading of a gauge, in the unit of its three figures. Half a
 * step and the largest error are half-widths of rectangular distributions (each divided by √3); the
 * repeatability is a standard deviation already. Source: JCGM 100:2008 (GUM), 4.3.7 and 5.1.2.
 *
 * @throws {RangeError} when a figure is negative or not finite
 */
export function gaugeUncertainty({ resolution, maxError, repeatability = 0 }: Gauge): number {
  demandNotNegative(resolution, 'the resolution');
  demandNotNegative(maxError, 'the largest error');
  demandNotNegative(repeatability, 'the repeatability');
  return finite(
    COVERAGE_FACTOR *
      Math.hypot(resolution / 2 / Math.sqrt(3), maxError / Math.sqrt(3), repeatability),
  );
}

export interface MeasuredSize {
  readonly value: number;
  /** Expanded, in the unit of the value. */
  readonly uncertainty: number;
}

/**
 * Clearance between two measured sizes of one unit: outer − inner, negative for an interference.
 * Its expanded uncertainty is the root of the sum of the squares of the two, which are taken to be
 * independent and to have the same coverage factor. Source: JCGM 100:2008 (GUM), 5.1.2.
 *
 * @throws {RangeError} when a size or an uncertainty is negative or not finite
 */
export function clearance(outer: MeasuredSize, inner: MeasuredSize): MeasuredSize {
  demandNotNegative(outer.value, 'the outer size');
  demandNotNegative(inner.value, 'the inner size');
  demandNotNegative(outer.uncertainty, 'the uncertainty of the outer size');
  demandNotNegative(inner.uncertainty, 'the uncertainty of the inner size');
  return {
    value: difference(outer.value, inner.value),
    uncertainty: finite(Math.hypot(outer.uncertainty, inner.uncertainty)),
  };
}
