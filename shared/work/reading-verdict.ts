import { judge } from '../trade/index.ts';

export interface PlaceBand {
  low: number | null;
  high: number | null;
}

export type ReadingVerdict = 'within' | 'outside' | 'too-close' | 'no-band';

/**
 * The band that holds at one place: the specification's, times the share of the final figure that a torque
 * stage asks for. Where a source gives no high limit, its wear limit is one.
 */
export function bandAt(
  specification: {
    lowBase: number | null;
    highBase: number | null;
    aimBase: number | null;
    wearLimitBase: number | null;
  } | null,
  share: number,
): PlaceBand & { aim: number | null } {
  const times = (value: number | null | undefined) =>
    value === null || value === undefined ? null : value * share;
  return {
    low: times(specification?.lowBase),
    high: times(specification?.highBase ?? specification?.wearLimitBase),
    aim: times(specification?.aimBase),
  };
}

/**
 * The verdict on a value, all in one unit.
 * @param uncertainty expanded, k = 2
 */
export function verdictOn(
  value: number,
  { low, high }: PlaceBand,
  uncertainty: number,
): { verdict: ReadingVerdict; conformance: number | null } {
  if (low === null && high === null) return { verdict: 'no-band', conformance: null };
  return judge({
    value,
    uncertainty,
    ...(low === null ? {} : { low }),
    ...(high === null ? {} : { high }),
  });
}
