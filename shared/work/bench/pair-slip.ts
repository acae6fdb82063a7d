import { type Slip, suspectSlip } from '../../trade/index.ts';
import { FEATURE_UNITS, type MeasuredFeature } from '../features.ts';

/** Questions about a reading that no band speaks of: it is held against its fellows. */

/**
 * How far two honest readings of one pair lie apart, as a share of the reading that stands: two legs of
 * a coil, two rings of one bore, a bore at two depths. The factor that brings them nearest wins, and
 * past the last nothing is explained. This program's choice, no source.
 */
const SPREADS = [0.1, 0.2, 0.4] as const;
const WIDEST = SPREADS[2];

/** Features whose places are not of one size: closed and open are far apart by nature. */
const NOT_PAIRS: readonly MeasuredFeature[] = ['valve-travel-intake', 'valve-travel-exhaust'];

export interface PlacedReading {
  readonly place: string;
  /** Cylinder of the place. */
  readonly cylinder: number;
  /** Share of the final figure, for stages of a torque; 1 else. */
  readonly share: number;
}

/** Readings that one at `place` may be compared with: other places of the same cylinder or coil. */
export const fellowsOf = <P extends PlacedReading>(
  feature: MeasuredFeature,
  place: PlacedReading,
  standing: readonly P[],
): P[] =>
  NOT_PAIRS.includes(feature)
    ? []
    : standing.filter((other) => other.place !== place.place && other.cylinder === place.cylinder);

/**
 * The slip that would explain why a reading disagrees by a factor with all that stand beside it;
 * `null` when it agrees with them as readings do, when nothing stands there, or when no factor explains
 * it. Values in one unit, each divided by its share of the final figure.
 */
export function suspectPairSlip(
  feature: MeasuredFeature,
  value: number,
  fellows: readonly number[],
): Slip | null {
  const sizes = fellows.filter((size) => size > 0);
  if (sizes.length === 0 || value <= 0) return null;
  const within = (spread: number) => ({
    low: Math.min(...sizes) * (1 - spread),
    high: Math.max(...sizes) * (1 + spread),
  });
  if (suspectSlip(value, within(WIDEST)) === null) return null;
  // Twelve is the slip of feet and inches, which only a torque is typed in.
  const possible = ({ kind }: Slip) => kind !== 'foot-inch' || FEATURE_UNITS[feature] === 'N·m';
  return (
    SPREADS.map((spread) => suspectSlip(value, within(spread))).find(
      (slip) => slip !== null && possible(slip),
    ) ?? null
  );
}
