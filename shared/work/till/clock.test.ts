import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { byDay, forgottenBecause, hoursOf, overlap, spanLasted, wholeMinute } from './clock.ts';

const CHICAGO = 'America/Chicago';
const NOW = '2026-03-10T18:00:00.000Z';

describe('time as hours of a bill', () => {
  test.each([
    [0, 0],
    [1, 17],
    [3, 50],
    [20, 333],
    [40, 667],
    [60, 1000],
    [90, 1500],
  ])('%i minutes are %i thousandths of an hour', (minutes, hours) => {
    expect(hoursOf(minutes, 'half-up')).toBe(hours);
  });

  test('a sum is rounded once, so that three times twenty minutes are one hour', () => {
    expect(hoursOf(20 * 3, 'half-up')).toBe(1000);
    expect(hoursOf(20, 'half-up') * 3).toBe(999);
  });

  test('never lies further from the true hours than half a thousandth', () => {
    fc.assert(
      fc.property(
        fc.nat(1_000_000),
        fc.constantFrom('half-up', 'half-even'),
        (minutes, rounding) => {
          const error = BigInt(hoursOf(minutes, rounding)) * 60n - BigInt(minutes) * 1000n;
          expect(error <= 30n && error >= -30n).toBe(true);
        },
      ),
    );
  });

  test.each([-1, 0.5, Number.NaN])('%d is refused', (minutes) => {
    expect(() => hoursOf(minutes, 'half-up')).toThrow(RangeError);
  });
});

describe('a span', () => {
  test('runs to now until it is stopped', () => {
    const span = { startedAt: '2026-03-10T17:15:00.000Z', endedAt: null };
    expect(spanLasted(span, NOW)).toBe(45);
    expect(spanLasted({ ...span, endedAt: '2026-03-10T17:20:00.000Z' }, NOW)).toBe(5);
  });

  test('over the beginning of summer time has the hours that were worked', () => {
    // Common practice, no source: 1:00 to 4:00 on the wall of that night are two hours.
    const night = { startedAt: '2026-03-08T07:00:00.000Z', endedAt: '2026-03-08T09:00:00.000Z' };
    expect(spanLasted(night, NOW)).toBe(120);
  });

  test('begins at its whole minute', () => {
    expect(wholeMinute('2026-03-10T17:15:59.999Z')).toBe('2026-03-10T17:15:00.000Z');
    expect(wholeMinute('2026-03-10T17:15Z')).toBe('2026-03-10T17:15:00.000Z');
  });

  test('shares no moment with the one that begins as it ends', () => {
    const at = (hour: number) => `2026-03-10T${hour}:00:00.000Z`;
    const morning = { startedAt: at(14), endedAt: at(16) };
    expect(overlap(morning, { startedAt: at(16), endedAt: at(17) })).toBe(false);
    expect(overlap(morning, { startedAt: at(15), endedAt: at(17) })).toBe(true);
    expect(overlap(morning, { startedAt: at(10), endedAt: null })).toBe(true);
    expect(overlap(morning, { startedAt: at(16), endedAt: null })).toBe(false);
  });
});

describe('by day', () => {
  test('work over midnight stands on both days, as the wall of the shop has them', () => {
    // 22:30 to 1:15 in Chicago, six hours behind in winter.
    const span = { startedAt: '2026-02-10T04:30:00.000Z', endedAt: '2026-02-10T07:15:00.000Z' };
    expect(byDay(span, NOW, CHICAGO)).toEqual([
      { date: '2026-02-09', minutes: 90 },
      { date: '2026-02-10', minutes: 75 },
    ]);
  });

  test.each([
    ['begins', '2026-03-08T06:00:00.000Z', 23],
    ['ends', '2026-11-01T05:00:00.000Z', 25],
  ])('the day on which summer time %s has another length', (_what, midnight, hours) => {
    const span = {
      startedAt: new Date(Date.parse(midnight) - 3_600_000).toISOString(),
      endedAt: new Date(Date.parse(midnight) + 26 * 3_600_000).toISOString(),
    };
    expect(byDay(span, NOW, CHICAGO).map(({ minutes }) => minutes / 60)).toEqual([
      1,
      hours,
      26 - hours,
    ]);
  });

  test('the days always make up the whole', () => {
    const minute = fc.integer({ min: 0, max: 60 * 24 * 365 });
    const zone = fc.constantFrom(CHICAGO, 'Asia/Kolkata', 'Australia/Lord_Howe', 'UTC');
    fc.assert(
      fc.property(minute, fc.nat(60 * 24 * 3), zone, (start, lasts, timeZone) => {
        const at = (minutes: number) =>
          new Date(Date.UTC(2026, 0, 1) + minutes * 60_000).toISOString();
        const span = { startedAt: at(start), endedAt: at(start + lasts) };
        const days = byDay(span, NOW, timeZone);
        expect(days.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(lasts);
        expect(days.map(({ date }) => date)).toEqual(
          [...new Set(days.map(({ date }) => date))].sort(),
        );
        expect(days.every(({ minutes }) => minutes > 0)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});

describe('a clock that was probably forgotten', () => {
  const asked = { now: NOW, timeZone: CHICAGO, afterHours: 10 };
  const running = (startedAt: string) => ({ startedAt, endedAt: null });

  test('runs since an earlier day', () => {
    // 23:50 of the day before, in Chicago.
    expect(forgottenBecause(running('2026-03-10T04:50:00.000Z'), asked)).toBe('earlier-day');
    expect(forgottenBecause(running('2026-03-10T13:00:00.000Z'), asked)).toBeNull();
  });

  test('or for longer than the shop allows', () => {
    const late = { ...asked, now: '2026-03-11T02:00:00.000Z' };
    expect(forgottenBecause(running('2026-03-10T15:59:00.000Z'), late)).toBe('too-long');
    expect(forgottenBecause(running('2026-03-10T16:00:00.000Z'), late)).toBeNull();
  });

  test('is none once it is stopped', () => {
    const span = { startedAt: '2026-03-08T13:00:00.000Z', endedAt: '2026-03-08T14:00:00.000Z' };
    expect(forgottenBecause(span, asked)).toBeNull();
  });
});
