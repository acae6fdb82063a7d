import { boreReport } from '../../../trade/index.ts';

/** Sizes that a worn bore or crankpin is machined to. All in mm. */

/** Over nominal, in the usual millimetre steps. Common practice, no source. */
export const COMMON_OVERSIZES: readonly number[] = [0.25, 0.5, 0.75, 1];
/** Under nominal. Common practice, no source. */
export const COMMON_UNDERSIZES: readonly number[] = [0.25, 0.5];
/** Stock on the diameter that boring and honing take off to clean up. Common practice, no source. */
export const USUAL_ALLOWANCE = 0.05;

export interface Size {
  low: number;
  high: number;
}

// Steps and limits are decimals that people typed; their sum is one too.
const decimal = (value: number): number => Number(value.toFixed(6));

/** The band of a new part, moved by a step: what the machine shop is to bring it to; null without a band. */
export function machineTo(
  { low, high }: { low: number | null; high: number | null },
  by: number,
): Size | null {
  return low === null || high === null
    ? null
    : { low: decimal(low + by), high: decimal(high + by) };
}

/** The smallest oversize that cleans up the largest of the readings; null when none does. */
export function nextOversize(
  diameters: readonly number[],
  nominal: number,
  oversizes: readonly number[],
  allowance: number,
): number | null {
  return boreReport(
    diameters.map((value, index) => ({ level: index, axis: index, value })),
    { nominal, oversizes, allowance },
  ).nextOversize;
}

/**
 * The smallest undersize that cleans up the smallest of the readings: largest new size − undersize must
 * not be above smallest reading − allowance. Null when none does.
 */
export function nextUndersize(
  diameters: readonly number[],
  largestNew: number,
  undersizes: readonly number[],
  allowance: number,
): number | null {
  const room = decimal(Math.min(...diameters) - allowance);
  return (
    undersizes
      .toSorted((a, b) => a - b)
      .find((undersize) => decimal(largestNew - undersize) <= room) ?? null
  );
}
