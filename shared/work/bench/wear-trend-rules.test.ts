import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sinceLastChange, type WearPoint, wearTrend } from './wear-trend-rules.ts';

const at = (x: number, value: number, more: Partial<WearPoint> = {}): WearPoint => ({
  job: `job ${x}`,
  phase: 'as-received',
  x,
  value,
  uncertainty: 0,
  ...more,
});

const BORE = { low: 68, high: 68.025, wearLimit: 68.1 };
const PIN = { low: 25.98, high: 26, wearLimit: 25.94 };

describe('the trend of a bore', () => {
  // Worked by hand: 0.02 mm in 200 h is 0.01 mm per 100 h; 0.04 mm are left, which is 400 h more.
  it('gives slope, distance and where the limit would be reached', () => {
    expect(wearTrend([at(100, 68.04), at(300, 68.06)], BORE, 'hours')).toMatchObject({
      kind: 'line',
      slope: expect.closeTo(0.01, 9),
      distance: expect.closeTo(0.04, 9),
      scatter: null,
      reach: { kind: 'at', x: expect.closeTo(700, 6), spread: null },
    });
  });

  it('says with the scatter how early and how late', () => {
    const trend = wearTrend(
      [at(0, 68.02), at(100, 68.034), at(200, 68.036), at(300, 68.05)],
      BORE,
      'hours',
    );
    if (trend.kind !== 'line' || trend.reach.kind !== 'at') throw new Error('no line');
    const { x, spread } = trend.reach;
    // By hand: 0.000092 mm an hour from 68.0212; residuals −1.2, 3.6, −3.6 and 1.2 µm about it, two to spare.
    expect(trend.scatter).toBeCloseTo(Math.sqrt(14.4e-6), 9);
    expect(x).toBeCloseTo(0.0788 / 0.000_092, 3);
    // Two standard deviations either way.
    expect(spread?.earliest).toBeCloseTo((0.0788 - 2 * Math.sqrt(14.4e-6)) / 0.000_092, 3);
    expect(spread?.latest).toBeCloseTo((0.0788 + 2 * Math.sqrt(14.4e-6)) / 0.000_092, 3);
  });

  it('is told per year over dates', () => {
    const trend = wearTrend([at(0, 68.02), at(730.5, 68.06)], BORE, 'dates');
    expect(trend).toMatchObject({ slope: expect.closeTo(0.02, 9) });
  });
});

describe('a shaft', () => {
  it('wears down towards a limit below its band', () => {
    expect(wearTrend([at(0, 25.99), at(100, 25.97)], PIN, 'hours')).toMatchObject({
      slope: expect.closeTo(-0.02, 9),
      distance: expect.closeTo(0.03, 9),
      reach: { kind: 'at', x: expect.closeTo(250, 6) },
    });
  });
});

describe('what can’t be said', () => {
  it.each([
    ['nothing of one time', [at(5, 68.03), at(5, 68.04)], BORE, { kind: 'too-few' }],
    ['nothing of no reading', [], BORE, { kind: 'too-few' }],
    [
      'no end without a limit',
      [at(0, 68.03), at(9, 68.04)],
      { ...BORE, wearLimit: null },
      { distance: null, reach: { kind: 'no-limit' } },
    ],
    ['an end that is past', [at(0, 68.09), at(9, 68.12)], BORE, { reach: { kind: 'passed' } }],
    [
      'an end that doesn’t come nearer',
      [at(0, 68.05), at(9, 68.04)],
      BORE,
      { reach: { kind: 'never' } },
    ],
    [
      'a change within the error of the gauges',
      [at(0, 68.04, { uncertainty: 0.01 }), at(9, 68.05, { uncertainty: 0.01 })],
      BORE,
      { reach: { kind: 'not-told' } },
    ],
    [
      'an end beyond what was observed',
      [at(0, 68.03), at(9, 68.031)],
      BORE,
      { reach: { kind: 'far' } },
    ],
  ])('%s', (_, points, limits, wanted) => {
    expect(wearTrend(points, limits, 'hours')).toMatchObject(wanted);
  });
});

describe('since the part was changed', () => {
  const worn = at(0, 68.09, { job: 'a' });
  const bored = at(0, 68.26, { job: 'a', phase: 'after-machining' });
  const later = at(300, 68.28, { job: 'b' });

  it('a machined part begins anew', () => {
    expect(sinceLastChange([worn, bored, later])).toEqual([bored, later]);
  });

  it('so does one that was replaced or set, and not one that was only measured again', () => {
    const set = at(0, 0.1, { job: 'a' });
    const anew = at(0, 0.15, { job: 'a', phase: 'final', uncertainty: 0.01 });
    const again = at(0, 0.105, { job: 'a', phase: 'final', uncertainty: 0.01 });
    expect(sinceLastChange([set, anew])).toEqual([anew]);
    expect(sinceLastChange([set, again])).toEqual([set, again]);
  });

  it('wear between two jobs is no change, however much', () => {
    const points = [at(0, 68.02), at(300, 68.2)];
    expect(sinceLastChange(points)).toEqual(points);
  });
});

it('never promises an end before the last reading, nor a spread that leaves the end out', () => {
  const point = fc.record({
    x: fc.integer({ min: 0, max: 2000 }),
    value: fc.integer({ min: 68_000, max: 68_120 }).map((micrometres) => micrometres / 1000),
  });
  fc.assert(
    fc.property(fc.array(point, { minLength: 2, maxLength: 8 }), (points) => {
      const sorted = points.toSorted((a, b) => a.x - b.x).map(({ x, value }) => at(x, value));
      const trend = wearTrend(sorted, BORE, 'hours');
      if (trend.kind !== 'line' || trend.reach.kind !== 'at') return;
      const { x, spread } = trend.reach;
      const last = Math.max(...sorted.map((each) => each.x));
      expect(x).toBeGreaterThanOrEqual(last - 1e-6);
      if (spread === null) return;
      expect(spread.earliest).toBeLessThanOrEqual(x + 1e-6);
      expect(spread.latest).toBeGreaterThanOrEqual(x - 1e-6);
    }),
  );
});
