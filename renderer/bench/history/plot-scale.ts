/** Where things stand on the plot of a place: pure geometry, no drawing. */

export interface Scale {
  readonly from: number;
  readonly to: number;
  /** Round figures for the axis, all within the scale. */
  readonly ticks: readonly number[];
}

const ROOM = 0.06;

/** Steps that people count in: 1, 2 or 5 of a power of ten. */
function roundStep(span: number, wanted: number): number {
  const rough = span / wanted;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].find((each) => each * power >= rough) ?? 10;
  return step * power;
}

/** A scale with a little room at both ends that holds every value; a lone value gets room around it. */
export function scaleFor(values: readonly number[], wanted: number, least: number): Scale {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const span = Math.max(high - low, least);
  const middle = (low + high) / 2;
  const from = Math.min(low, middle - span / 2) - span * ROOM;
  const to = Math.max(high, middle + span / 2) + span * ROOM;
  const step = roundStep(to - from, wanted);
  const first = Math.ceil(from / step);
  const count = Math.floor(to / step) - first + 1;
  return {
    from,
    to,
    // Counted in whole steps, so that no tick carries the error of the one before.
    ticks: Array.from({ length: Math.max(count, 0) }, (_, index) => (first + index) * step),
  };
}

/** Where a value stands between two ends of the drawing. */
export const along = (scale: Scale, value: number, start: number, end: number): number =>
  start + ((value - scale.from) / (scale.to - scale.from)) * (end - start);
