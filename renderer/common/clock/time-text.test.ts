import { describe, expect, test } from 'vitest';
import {
  instantAt,
  lastedFigure,
  lastedWords,
  readEnd,
  readTime,
  spanAt,
  wallAt,
} from './time-text.ts';

describe('a time of the day', () => {
  test.each([
    ['9', '09:00'],
    ['930', '09:30'],
    ['0930', '09:30'],
    ['9:30', '09:30'],
    ['9.30', '09:30'],
    ['14h15', '14:15'],
    ['2:15 pm', '14:15'],
    ['2p', '14:00'],
    ['12 am', '00:00'],
    ['12 p.m.', '12:00'],
    [' 23:59 ', '23:59'],
  ])('%j is %s', (text, time) => {
    expect(readTime(text)).toBe(time);
  });

  test.each(['', 'noon', '24', '9:60', '13 pm', '0 am', '9:5', '123456'])('%j is none', (text) => {
    expect(readTime(text)).toBeNull();
  });
});

describe('the end of work', () => {
  test.each([
    ['5', '13:00', '17:00'],
    ['5', '08:00', '17:00'],
    ['9', '08:00', '09:00'],
    ['05:00', '08:00', '05:00'],
    ['5 am', '08:00', '05:00'],
    ['1:15', '22:30', '01:15'],
    ['12', '08:00', '12:00'],
    ['5', null, '05:00'],
  ])('%j after %s is %s', (text, from, end) => {
    expect(readEnd(text, from)).toBe(end);
  });
});

describe('on the wall of the shop', () => {
  const CHICAGO = 'America/Chicago';

  test('a span that ends before it begins ends on the next day', () => {
    expect(spanAt({ date: '2026-02-09', from: '22:30', to: '01:15' }, CHICAGO)).toEqual({
      startedAt: '2026-02-10T04:30:00.000Z',
      endedAt: '2026-02-10T07:15:00.000Z',
    });
  });

  test('an hour that comes twice is the first, one that is left out the one after it', () => {
    expect(instantAt('2026-11-01', '01:30', CHICAGO)).toBe('2026-11-01T06:30:00.000Z');
    expect(instantAt('2026-03-08', '02:30', CHICAGO)).toBe('2026-03-08T08:30:00.000Z');
  });

  test('an instant comes back as it was typed', () => {
    const at = instantAt('2026-07-04', '16:05', CHICAGO);
    expect(wallAt(at, CHICAGO)).toEqual({ date: '2026-07-04', time: '16:05' });
  });
});

test('how long it lasted', () => {
  expect([0, 40, 65, 600].map(lastedWords)).toEqual([
    '0 min',
    '40 min',
    '1 h 05 min',
    '10 h 00 min',
  ]);
  expect([0, 40, 65, 600].map(lastedFigure)).toEqual(['–', '0:40', '1:05', '10:00']);
});
