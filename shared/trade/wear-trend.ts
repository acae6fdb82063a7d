import { demandFinite, finite } from './demand.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface FittedLine {
  /** Units of y per unit of x. */
  readonly slope: number;
  /** y at x = 0. */
  readonly intercept: number;
  /**
   * Standard deviation of the points about the line, n − 2 in the divisor. Zero for two points:
   * nothing is left over to show a scatter, so don't read it as certainty.
   */
  readonly residualSd: number;
}

/**
 * Straight line of least squares through readings (`y`) against hours or days (`x`). The means are
 * taken off first, so that large numbers with small differences keep their digits.
 *
 * @throws {RangeError} when a coordinate isn't finite, there aren't two different x, or the figures are
 * too large or too small to be worked out
 */
export function fitLine(points: readonly Point[]): FittedLine {
  for (const { x, y } of points) {
    demandFinite(x, 'an x of the points');
    demandFinite(y, 'a y of the points');
  }
  if (new Set(points.map(({ x }) => x)).size < 2) {
    throw new RangeError('A line needs readings at two different times at least.');
  }
  const meanX = mean(points.map(({ x }) => x));
  const meanY = mean(points.map(({ y }) => y));
  const centred = points.map(({ x, y }) => ({ x: x - meanX, y: y - meanY }));
  const slope =
    exactSum(centred.map(({ x, y }) => x * y)) / exactSum(centred.map(({ x }) => x * x));
  const residuals = centred.map(({ x, y }) => (y - slope * x) ** 2);
  return {
    slope: finite(slope),
    intercept: finite(meanY - slope * meanX),
    residualSd: finite(
      points.length > 2 ? Math.sqrt(exactSum(residuals) / (points.length - 2)) : 0,
    ),
  };
}

function mean(values: readonly number[]): number {
  return exactSum(values) / values.length;
}

/** Neumaier's sum: what each addition loses is added at the end. */
function exactSum(values: readonly number[]): number {
  let total = 0;
  let lost = 0;
  for (const value of values) {
    const next = total + value;
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  return total + lost;
}
