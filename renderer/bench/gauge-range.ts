import type { Gauge } from '../../shared/contract/bench/index.ts';
import { BASE_UNIT_OF, convert, dimensionOf, unitLabel } from '../../shared/trade/index.ts';

/** Whether a gauge reaches a size in the base unit; any does as long as no size is expected. */
export function reaches(gauge: Gauge, expected: number | null): boolean {
  if (expected === null) return true;
  const size = convert(expected, BASE_UNIT_OF[dimensionOf(gauge.unit)], gauge.unit);
  return size >= gauge.rangeLow && size <= gauge.rangeHigh;
}

/** `10–35 mm` */
export const rangeWords = ({ rangeLow, rangeHigh, unit }: Gauge): string =>
  `${rangeLow}–${rangeHigh} ${unitLabel(unit)}`;

/** The gauges that reach the size first, each group in the order of the list. */
export const reachingFirst = (gauges: readonly Gauge[], expected: number | null): Gauge[] =>
  gauges.toSorted((a, b) => Number(reaches(b, expected)) - Number(reaches(a, expected)));
