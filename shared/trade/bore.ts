import { demandNotNegative, demandPositive } from './demand.ts';
import { difference, sum } from './exact.ts';

/** One diameter of a bore: how deep (`level`) and in which direction (`axis`) it was taken. */
export interface BoreReading {
  readonly level: string | number;
  readonly axis: string | number;
  readonly value: number;
}

export interface BoreSpecification {
  /** Diameter of the new bore. */
  readonly nominal: number;
  /**
   * What the source states as the limit of wear, diameter or amount. It is checked for sense and
   * changes no figure of the report: whether it is passed is for `judge`, with the uncertainty.
   */
  readonly wearLimit?: number | undefined;
  /** Amounts above nominal for which pistons are to be had, in any order. */
  readonly oversizes: readonly number[];
  /** Stock on the diameter that boring and honing must be able to take off to clean up. */
  readonly allowance: number;
}

/** Sizes that were computed, and ought to be equal, differ by less than this share. */
const DUST = 1e-12;

export interface BoreReport {
  readonly min: number;
  readonly max: number;
  /** Largest spread along one axis. */
  readonly taper: number;
  /** Largest spread across one level. */
  readonly outOfRound: number;
  /** Largest reading − nominal; negative in a bore below nominal. */
  readonly wear: number;
  /** Smallest oversize that cleans up, or `null` when none does. */
  readonly nextOversize: number | null;
}

/**
 * What the readings of one bore say, all in one unit. `nextOversize` is the smallest of `oversizes`
 * with nominal + oversize ≥ max + allowance; it says what would clean up, not that boring is due.
 *
 * @throws {RangeError} when there is no reading, a place was read twice, a diameter isn't positive,
 * or an oversize, the allowance or the wear limit is negative
 */
export function boreReport(
  readings: readonly BoreReading[],
  { nominal, wearLimit = 0, oversizes, allowance }: BoreSpecification,
): BoreReport {
  demandPositive(nominal, 'the nominal bore');
  demandNotNegative(wearLimit, 'the wear limit');
  demandNotNegative(allowance, 'the stock allowance');
  for (const oversize of oversizes) {
    demandNotNegative(oversize, 'an oversize');
  }
  demandReadings(readings);

  const values = readings.map(({ value }) => value);
  const max = Math.max(...values);
  const needed = sum(max, allowance);
  const cleansUp = (oversize: number) =>
    difference(sum(nominal, oversize), needed) >= -DUST * needed;
  return {
    min: Math.min(...values),
    max,
    taper: largestSpread(readings, ({ axis }) => axis),
    outOfRound: largestSpread(readings, ({ level }) => level),
    wear: difference(max, nominal),
    nextOversize: oversizes.toSorted((a, b) => a - b).find(cleansUp) ?? null,
  };
}

function demandReadings(readings: readonly BoreReading[]): void {
  if (readings.length === 0) {
    throw new RangeError('A bore without a reading has no report: measure it first.');
  }
  const places = new Set<string>();
  for (const { level, axis, value } of readings) {
    demandPositive(value, `the bore at level ${level}, axis ${axis}`);
    const place = JSON.stringify([level, axis]);
    if (places.has(place)) {
      throw new RangeError(
        `The bore at level ${level}, axis ${axis} was read twice: keep the reading that counts.`,
      );
    }
    places.add(place);
  }
}

function largestSpread(
  readings: readonly BoreReading[],
  lineOf: (reading: BoreReading) => string | number,
): number {
  const lines = Map.groupBy(readings, lineOf);
  return Math.max(
    ...lines.values().map((line) => {
      const values = line.map(({ value }) => value);
      return difference(Math.max(...values), Math.min(...values));
    }),
  );
}
