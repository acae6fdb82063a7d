import { type FittedLine, fitLine } from '../../trade/index.ts';
import type { Phase } from '../vocabulary.ts';

/**
 * How a place of an engine wore: a line through its readings, how far it is from the wear limit, and when
 * it would get there if it went on like that. What the readings don't show is said, not computed.
 */

export interface WearPoint {
  /** Order of the jobs: readings of one job share it. */
  job: string;
  phase: Phase;
  /** Days or running hours. */
  x: number;
  /** Base unit. */
  value: number;
  /** Expanded (k = 2), base unit; 0 when no gauge was named. */
  uncertainty: number;
}

export interface WearLimits {
  low: number | null;
  high: number | null;
  wearLimit: number | null;
}

/** Slopes are told per 100 running hours or per year. */
export const SLOPE_SPAN = { hours: 100, dates: 365.25 } as const;
export type WearAxis = keyof typeof SLOPE_SPAN;

/** Beyond so many times the stretch that was observed, a line says nothing. */
const FARTHEST = 3;

/**
 * The readings since the part was last machined, replaced or set: those of earlier jobs are of another
 * part or another setting, and no line leads from them to these. In the job that changed it, its last
 * reading begins the new life.
 * @param points in the order in which they were taken
 */
export function sinceLastChange(points: readonly WearPoint[]): WearPoint[] {
  const start = points.findLastIndex((point, index) => {
    const before = points[index - 1];
    if (before === undefined || before.job !== point.job) return false;
    if (point.phase === before.phase) return false;
    const apart = Math.abs(point.value - before.value);
    return point.phase === 'after-machining' || apart > point.uncertainty + before.uncertainty;
  });
  return points.slice(Math.max(start, 0));
}

export type WearReach =
  /** No wear limit in the spec book. */
  | { kind: 'no-limit' }
  | { kind: 'passed' }
  /** It doesn't come nearer to the limit. */
  | { kind: 'never' }
  /** The change is no larger than the gauges can tell apart. */
  | { kind: 'not-told' }
  /** So far beyond the readings that the line says nothing. */
  | { kind: 'far' }
  /** Where the line meets the limit, and with twice the scatter, where it might; null without a scatter. */
  | { kind: 'at'; x: number; spread: { earliest: number; latest: number } | null };

export type WearTrend =
  | { kind: 'too-few'; used: WearPoint[] }
  | {
      kind: 'line';
      used: WearPoint[];
      line: FittedLine;
      /** Base units per 100 h or per year. */
      slope: number;
      /** Standard deviation about the line, base unit; null for two times: none is known. */
      scatter: number | null;
      /** From the line at the last reading to the wear limit, positive while it isn't reached. */
      distance: number | null;
      reach: WearReach;
    };

/** Whether wear takes the value up, told by the side of the band on which the limit lies. */
const limitLiesAbove = ({ low, wearLimit }: WearLimits): boolean =>
  wearLimit === null || low === null || wearLimit >= low;

/**
 * The trend of one place since it was last changed. Fewer than two different times give none.
 * @param points in the order in which they were taken, x ascending
 */
export function wearTrend(
  points: readonly WearPoint[],
  limits: WearLimits,
  axis: WearAxis,
): WearTrend {
  const used = sinceLastChange(points);
  const times = new Set(used.map(({ x }) => x));
  if (times.size < 2) return { kind: 'too-few', used };
  const line = fitLine(used.map(({ x, value }) => ({ x, y: value })));
  const scatter = used.length > 2 ? line.residualSd : null;
  const last = Math.max(...times);
  const sign = limitLiesAbove(limits) ? 1 : -1;
  const distance =
    limits.wearLimit === null
      ? null
      : sign * (limits.wearLimit - (line.intercept + line.slope * last));
  return {
    kind: 'line',
    used,
    line,
    slope: line.slope * SLOPE_SPAN[axis],
    scatter,
    distance,
    reach: reachOf({ used, line, scatter, distance, sign, wearLimit: limits.wearLimit }),
  };
}

function reachOf(facts: {
  used: readonly WearPoint[];
  line: FittedLine;
  scatter: number | null;
  distance: number | null;
  sign: number;
  wearLimit: number | null;
}): WearReach {
  const { used, line, scatter, distance, sign, wearLimit } = facts;
  if (distance === null || wearLimit === null) return { kind: 'no-limit' };
  if (distance <= 0) return { kind: 'passed' };
  const xs = used.map(({ x }) => x);
  const first = Math.min(...xs);
  const last = Math.max(...xs);
  const change = Math.abs(line.slope) * (last - first);
  const toldApart = Math.hypot(
    ...[first, last].map((x) =>
      Math.max(...used.filter((point) => point.x === x).map(({ uncertainty }) => uncertainty)),
    ),
  );
  if (change > 0 && change <= toldApart) return { kind: 'not-told' };
  if (line.slope * sign <= 0) return { kind: 'never' };
  const meets = (offset: number) => (wearLimit - line.intercept - sign * offset) / line.slope;
  const x = meets(0);
  if (x - last > FARTHEST * (last - first)) return { kind: 'far' };
  return {
    kind: 'at',
    x,
    spread:
      scatter === null
        ? null
        : { earliest: Math.max(last, meets(2 * scatter)), latest: meets(-2 * scatter) },
  };
}
