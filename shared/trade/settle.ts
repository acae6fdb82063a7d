import { type Band, demandBand } from './band.ts';
import { demandFinite, demandNotNegative } from './demand.ts';
import { COVERAGE_FACTOR, type Gauge, gaugeUncertainty } from './uncertainty.ts';

/** What would settle a reading that is too close to a limit. */
export type Settling =
  /** It is settled as it is. */
  | { readonly by: 'nothing'; readonly uncertainty: number; readonly needed: number }
  /** The scatter of the readings is what stands in the way: so many readings in all, and their mean. */
  | {
      readonly by: 'more-readings';
      readonly uncertainty: number;
      readonly needed: number;
      readonly readings: number;
    }
  /** The gauge itself can't tell, however often it is read. */
  | { readonly by: 'better-gauge'; readonly uncertainty: number; readonly needed: number }
  /** The value lies on the limit: no gauge tells on which side. */
  | { readonly by: 'no-gauge'; readonly uncertainty: number; readonly needed: number };

export interface Unsettled extends Band {
  /** The reading, or the mean of repeated ones. */
  readonly value: number;
  readonly gauge: Pick<Gauge, 'resolution' | 'maxError'>;
  /** Standard deviation of one reading; zero as long as nothing was read twice. */
  readonly repeatability?: number | undefined;
  /** How many readings the value is the mean of; one when left out. */
  readonly readings?: number | undefined;
}

/** Nobody reads a part more often than this; past it only a better gauge is of use. No source. */
const MOST_READINGS = 20;

/** Nearer to a limit than this share of the value is on the limit, but for rounding. */
const DUST = 1e-12;

/**
 * What would bring a verdict. A mean of n readings has the expanded uncertainty
 * 2·√(g² + s²/n), with g the gauge's own part and s the scatter of one reading
 * (JCGM 100:2008, 4.2.3 and 5.1.2); a verdict needs it to be no more than the distance to the
 * nearest limit (guard band w = U, JCGM 106:2012, 8.3). More readings lessen s only: where g alone
 * is too much, or so many readings would be wanted that nobody takes them, a better gauge is wanted,
 * whose expanded uncertainty is `needed` at most. All in the unit of the value.
 *
 * @throws {RangeError} when there is no limit, low is above high, or a figure makes no sense
 */
export function settle({
  value,
  low,
  high,
  gauge,
  repeatability = 0,
  readings = 1,
}: Unsettled): Settling {
  demandFinite(value, 'the value');
  demandBand({ low, high });
  demandNotNegative(repeatability, 'the repeatability');
  if (low === undefined && high === undefined)
    throw new RangeError('Without a limit there is nothing to settle.');
  if (!Number.isInteger(readings) || readings < 1)
    throw new RangeError('A value is the mean of one reading at least.');
  const needed = Math.min(
    low === undefined ? Number.POSITIVE_INFINITY : Math.abs(value - low),
    high === undefined ? Number.POSITIVE_INFINITY : Math.abs(high - value),
  );
  const own = gaugeUncertainty(gauge);
  const uncertainty = meanUncertainty({ gauge, repeatability, readings });
  if (uncertainty <= needed) return { by: 'nothing', uncertainty, needed };
  if (needed <= DUST * Math.abs(value)) return { by: 'no-gauge', uncertainty, needed };
  const room = needed ** 2 - own ** 2;
  if (repeatability === 0 || room <= 0) return { by: 'better-gauge', uncertainty, needed };
  const wanted = Math.ceil((COVERAGE_FACTOR * repeatability) ** 2 / room);
  return wanted > MOST_READINGS
    ? { by: 'better-gauge', uncertainty, needed }
    : { by: 'more-readings', uncertainty, needed, readings: Math.max(wanted, readings + 1) };
}

/**
 * Expanded uncertainty (k = 2) of the mean of repeated readings of one gauge: its own part stays, the
 * scatter lessens with the root of their number. Source: JCGM 100:2008 (GUM), 4.2.3 and 5.1.2.
 */
export function meanUncertainty({
  gauge,
  repeatability,
  readings,
}: {
  readonly gauge: Pick<Gauge, 'resolution' | 'maxError'>;
  /** Standard deviation of one reading. */
  readonly repeatability: number;
  readonly readings: number;
}): number {
  return gaugeUncertainty({ ...gauge, repeatability: repeatability / Math.sqrt(readings) });
}

/**
 * Mean and experimental standard deviation of repeated readings; a single one scatters by nought as
 * far as anybody knows. Source: JCGM 100:2008 (GUM), 4.2.1 and 4.2.2.
 *
 * @throws {RangeError} when there is none, or one isn't finite
 */
export function repeated(values: readonly number[]): { mean: number; deviation: number } {
  const [first] = values;
  if (first === undefined) throw new RangeError('There is no reading to take the mean of.');
  for (const value of values) demandFinite(value, 'a reading');
  // Differences from the first keep the digits of a small scatter about a large size.
  const mean = first + values.reduce((sum, value) => sum + (value - first), 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, deviation: values.length < 2 ? 0 : Math.sqrt(squares / (values.length - 1)) };
}
