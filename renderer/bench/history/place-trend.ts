import type { HistoryPoint, PlaceHistory } from '../../../shared/contract/bench/index.ts';
import {
  type WearAxis,
  type WearPoint,
  type WearTrend,
  wearTrend,
} from '../../../shared/work/bench/wear-trend-rules.ts';

/** A reading with where it stands on the axis chosen. */
export interface PlottedPoint {
  readonly point: HistoryPoint;
  readonly x: number;
}

export interface PlaceTrend {
  readonly axis: WearAxis;
  readonly plotted: readonly PlottedPoint[];
  /** Readings that have no hours, and so no place on that axis. */
  readonly without: number;
  readonly trend: WearTrend;
}

const DAY = 86_400_000;

export const dayNumber = (date: string): number => Date.parse(`${date}T00:00:00Z`) / DAY;

/** The calendar date of a day number; null beyond what a calendar here has. */
export function dateOfDay(day: number): string | null {
  const date = new Date(Math.round(day) * DAY);
  if (Number.isNaN(date.getTime()) || date.getUTCFullYear() > 2200) return null;
  return date.toISOString().slice(0, 10);
}

/**
 * Why the hours can't be drawn: too few are known, or they run backwards (another meter). Null when they can.
 */
export function hoursUnusable(points: readonly HistoryPoint[]): string | null {
  const known = points.flatMap(({ hours }) => hours ?? []);
  if (new Set(known).size < 2) return 'Running hours of two visits at least are needed for that.';
  return known.some((hours, index) => hours < (known[index - 1] ?? hours))
    ? 'The running hours go backwards: another meter was fitted, or one was misread.'
    : null;
}

/** The readings of a place on an axis, and how they go. */
export function placeTrend(place: PlaceHistory, axis: WearAxis): PlaceTrend {
  const plotted = place.points.flatMap((point): PlottedPoint[] => {
    const x = axis === 'hours' ? point.hours : dayNumber(point.on);
    return x === null ? [] : [{ point, x }];
  });
  const points = plotted.map(
    ({ point, x }): WearPoint => ({
      job: point.jobId,
      phase: point.phase,
      x,
      value: point.value,
      uncertainty: point.uncertainty,
    }),
  );
  return {
    axis,
    plotted,
    without: place.points.length - plotted.length,
    trend: wearTrend(points, place, axis),
  };
}
