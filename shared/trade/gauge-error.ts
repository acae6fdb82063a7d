import { demandNotNegative, finite } from './demand.ts';
import { gaugeUncertainty } from './uncertainty.ts';

/** A gauge's error as its papers state it. */

/** An amount in the gauge's unit, or per cent of what it reads (is set to), or of the end of its range. */
export const GAUGE_ERROR_KINDS = ['absolute', 'of-reading', 'of-full-scale'] as const;
export type GaugeErrorKind = (typeof GAUGE_ERROR_KINDS)[number];

export interface StatedError {
  readonly errorKind: GaugeErrorKind;
  /** In the gauge's unit, or in per cent; without sign. */
  readonly maxError: number;
  /** End of its range, in its unit. */
  readonly rangeHigh: number;
}

export interface StatedGauge extends StatedError {
  /** Smallest step that the gauge shows, in its unit. */
  readonly resolution: number;
  /** Standard deviation of repeated readings of one thing, in its unit; zero when left out. */
  readonly repeatability?: number | undefined;
  /** Largest error of what it is set by (a ring, a rod), in its unit; zero when left out. */
  readonly settingError?: number | undefined;
}

/**
 * Largest error at a reading, both in the gauge's unit.
 * @throws {RangeError} when a figure isn't finite or the error is negative
 */
export function largestErrorAt(
  { errorKind, maxError, rangeHigh }: StatedError,
  reading: number,
): number {
  demandNotNegative(maxError, 'the largest error');
  if (errorKind === 'absolute') return maxError;
  return finite((maxError / 100) * Math.abs(errorKind === 'of-reading' ? reading : rangeHigh));
}

/**
 * Expanded uncertainty (k = 2) of one reading, in the gauge's unit. The error of a setting master adds to
 * the gauge's own as another rectangular distribution, independent of it. Source: JCGM 100:2008 (GUM),
 * 4.3.7 and 5.1.2.
 *
 * @throws {RangeError} when a figure is negative or not finite
 */
export function uncertaintyAt(gauge: StatedGauge, reading: number): number {
  const { resolution, repeatability, settingError = 0 } = gauge;
  demandNotNegative(settingError, 'the error of the setting master');
  const maxError = Math.hypot(largestErrorAt(gauge, reading), settingError);
  return gaugeUncertainty({ resolution, maxError, repeatability });
}
