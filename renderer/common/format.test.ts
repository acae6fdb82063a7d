import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { daysBetween, makeFormat } from './format.ts';

beforeEach(() => {
  vi.useFakeTimers({ now: new Date('2026-11-25T12:00:00Z') });
});
afterEach(() => {
  vi.useRealTimers();
});

const chicago = makeFormat('en-US', 'America/Chicago', '2026-11-25');

test('dates and instants stand in the shop’s locale and time zone', () => {
  expect(chicago.date('2026-12-04')).toBe('Fri, Dec 4, 2026');
  expect(chicago.shortDate('2026-12-04')).toBe('Fri, Dec 4');
  // Half past one in the night in London is the evening before in Chicago.
  expect(chicago.instant('2026-11-25T01:30:00Z').replace(/\s/g, ' ')).toBe('Nov 24, 2026, 7:30 PM');
  expect(chicago.day('2026-11-25T01:30:00Z')).toBe('Nov 24, 2026');
  const london = makeFormat('en-GB', 'Europe/London', '2026-11-25');
  expect(london.instant('2026-11-25T01:30:00Z')).toBe('25 Nov 2026, 01:30');
});

test('how long it lasted is said in the largest unit that fits', () => {
  const since = (iso: string) => chicago.since(iso);
  expect(since('2026-11-25T11:59:40Z')).toBe('a moment');
  expect(since('2026-11-25T11:59:00Z')).toBe('1 minute');
  expect(since('2026-11-25T09:00:00Z')).toBe('3 hours');
  expect(since('2026-11-22T12:00:00Z')).toBe('3 days');
  expect(since('2026-11-05T12:00:00Z')).toBe('20 days');
  expect(since('2026-11-04T12:00:00Z')).toBe('3 weeks');
  expect(since('2026-08-25T12:00:00Z')).toBe('3 months');
  expect(since('2026-11-26T12:00:00Z')).toBe('a moment');
  expect(chicago.ago('2026-11-22T12:00:00Z')).toBe('3 days ago');
  expect(chicago.ago('2026-11-25T12:00:00Z')).toBe('just now');
});

test('a date is seen from today', () => {
  expect(['2026-11-25', '2026-11-26', '2026-11-28', '2026-11-23'].map(chicago.fromToday)).toEqual([
    'today',
    'tomorrow',
    'in 3 days',
    '2 days ago',
  ]);
});

test('days between dates count over a change of the clocks', () => {
  expect(daysBetween('2026-10-31', '2026-11-02')).toBe(2);
  expect(daysBetween('2026-11-02', '2026-10-31')).toBe(-2);
});
