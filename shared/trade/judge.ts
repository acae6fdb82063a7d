import { type Band, demandBand } from './band.ts';
import { demandFinite, demandNotNegative } from './demand.ts';
import { normalBetween } from './normal-distribution.ts';

/** `too-close`: the gauge can't tell on which side of a limit the true value lies. */
export type Verdict = 'within' | 'outside' | 'too-close';

export interface Judgement {
  readonly verdict: Verdict;
  /** Probability, 0 to 1, that the true value lies inside the band. */
  readonly conformance: number;
}

export interface JudgeInput extends Band {
  readonly value: number;
  /** Expanded, k = 2, in the unit of the value; zero for a value taken as true. */
  readonly uncertainty: number;
}

/** Two decimals that ought to be equal differ by less than this share once subtracted. */
const DUST = 1e-12;

/**
 * Whether a value conforms to its band, given how well it was measured. Value, limits and
 * uncertainty are in one unit. Each limit has a guard band as wide as the expanded uncertainty:
 * `within` only inside the band shrunk by it, `outside` only outside the band widened by it.
 * `conformance` is Φ((high − value)/u) − Φ((low − value)/u) with u = uncertainty/2.
 *
 * Source: JCGM 106:2012, clauses 7 and 8.3 (guard band w = U); ILAC-G8:09/2019 §4.
 *
 * @throws {RangeError} when there is no limit, low is above high, a number isn't finite, or the
 * uncertainty is negative
 */
export function judge({ value, low, high, uncertainty }: JudgeInput): Judgement {
  demandFinite(value, 'the value');
  demandNotNegative(uncertainty, 'the uncertainty');
  demandBand({ low, high });
  if (low === undefined && high === undefined) {
    throw new RangeError('There is nothing to judge by: state a low limit, a high limit or both.');
  }
  const aboveLow = low === undefined ? Number.POSITIVE_INFINITY : value - low;
  const belowHigh = high === undefined ? Number.POSITIVE_INFINITY : high - value;
  const nearest = Math.min(aboveLow, belowHigh);
  const dust = DUST * Math.max(Math.abs(value), Math.abs(low ?? 0), Math.abs(high ?? 0));
  return {
    verdict:
      nearest >= uncertainty - dust
        ? 'within'
        : nearest < -uncertainty - dust
          ? 'outside'
          : 'too-close',
    conformance:
      uncertainty === 0
        ? Number(nearest >= -dust)
        : normalBetween((-2 * aboveLow) / uncertainty, (2 * belowHigh) / uncertainty),
  };
}
