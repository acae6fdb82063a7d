import type { MeasuredSize } from '../../trade/index.ts';
import type { DerivedValue } from './derived.ts';
import { type PlaceBand, type ReadingVerdict, verdictOn } from './reading-verdict.ts';

/** The verdict on what follows from readings: a clearance is held to its band at both of its ends. */

export type Spread = Pick<DerivedValue, 'value' | 'uncertainty' | 'largest'>;

const WORST_FIRST: readonly ReadingVerdict[] = ['outside', 'too-close', 'within', 'no-band'];

const worse = (a: ReadingVerdict, b: ReadingVerdict): ReadingVerdict =>
  WORST_FIRST.indexOf(b) < WORST_FIRST.indexOf(a) ? b : a;

/**
 * The low limit is judged at the tightest spot and the high one, or the limit of wear, at the loosest, each
 * with the uncertainty of its own two readings; the worse of both stands. All in one unit, uncertainties
 * expanded (k = 2).
 */
export function verdictOnSpread(
  { value, uncertainty, largest }: Spread,
  { low, high }: PlaceBand,
): ReadingVerdict {
  if (largest === null) return verdictOn(value, { low, high }, uncertainty).verdict;
  return worse(
    verdictOn(value, { low, high: null }, uncertainty).verdict,
    verdictOn(largest.value, { low: null, high }, largest.uncertainty).verdict,
  );
}

/** The end that the verdict comes from; of two that say the same, the tightest. */
export function tellingEnd(spread: Spread, band: PlaceBand): MeasuredSize {
  const { value, uncertainty, largest } = spread;
  const tightest = { value, uncertainty };
  const verdict = verdictOnSpread(spread, band);
  const byTightest = verdictOn(value, band, uncertainty).verdict === verdict;
  return largest === null || byTightest ? tightest : largest;
}

/** Both ends, or the one that there is. */
export const endsOf = ({ value, largest }: Pick<Spread, 'value' | 'largest'>): number[] =>
  largest === null ? [value] : [value, largest.value];

/** The uncertainty that is told of both: the larger. */
export const uncertaintyOf = ({ uncertainty, largest }: Spread): number =>
  Math.max(uncertainty, largest?.uncertainty ?? 0);
