import { describe, expect, it } from 'vitest';
import type { HistoryPoint, PlaceHistory } from '../../../shared/contract/bench/index.ts';
import { JobId, jobCode } from '../../../shared/contract/ids.ts';
import { dateOfDay, dayNumber, hoursUnusable, placeTrend } from './place-trend.ts';
import { trendSentences } from './trend-words.ts';

const point = (number: number, on: string, hours: number | null, value: number): HistoryPoint => ({
  jobId: JobId.parse(`00000000-0000-7000-8000-00000000000${number}`),
  code: jobCode(number),
  phase: 'as-received',
  on,
  hours,
  text: String(value),
  unit: 'mm',
  value,
  uncertainty: 0.002,
  verdict: 'within',
});

const place = (points: HistoryPoint[]): PlaceHistory => ({
  key: 'c1-top-along',
  label: 'top, along the crankshaft',
  low: 68,
  high: 68.02,
  wearLimit: 68.1,
  points,
});

const THREE = [
  point(1, '2024-03-04', 120, 68.03),
  point(2, '2025-03-04', 320, 68.05),
  point(3, '2026-03-04', 520, 68.07),
];

describe('the axis', () => {
  it('of dates is the calendar’s', () => {
    expect(dateOfDay(dayNumber('2026-02-28') + 1)).toBe('2026-03-01');
    expect(dateOfDay(1e9)).toBeNull();
  });

  it('of hours needs two visits and one meter', () => {
    expect(hoursUnusable(THREE)).toBeNull();
    expect(hoursUnusable([point(1, '2024-03-04', 120, 68.03)])).toContain('two visits');
    expect(hoursUnusable([...THREE, point(4, '2026-09-01', 30, 68.08)])).toContain('backwards');
  });

  it('leaves out what has no hours, and says how many', () => {
    const some = placeTrend(place([...THREE, point(4, '2026-09-01', null, 68.08)]), 'hours');
    expect(some.plotted).toHaveLength(3);
    expect(some.without).toBe(1);
  });
});

describe('what is said', () => {
  const words = (points: HistoryPoint[], axis: 'hours' | 'dates' = 'hours') =>
    trendSentences(placeTrend(place(points), axis), 'mm', (date) => date)
      .join(' ')
      .replaceAll('\u00a0', ' ');

  it('slope, what is left and when, with the scatter', () => {
    const said = words(THREE);
    expect(said).toContain('up by 0.01 mm per 100 running hours, by 3 readings');
    expect(said).toContain('0.03 mm are left to the wear limit');
    expect(said).toContain('reached at 820 running hours');
    expect(said).toContain('scatter');
  });

  it('two readings show no scatter', () => {
    expect(words(THREE.slice(0, 2))).toContain('Two readings only: no scatter is known');
  });

  it('over dates the end is a date', () => {
    expect(words(THREE, 'dates')).toContain('reached at 2027-09-0');
  });

  it('one time tells nothing', () => {
    expect(words(THREE.slice(0, 1))).toContain('one time only');
    expect(words([])).toContain('No reading');
  });
});
