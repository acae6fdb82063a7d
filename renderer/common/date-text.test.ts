import { expect, test } from 'vitest';
import { readDate } from './date-text.ts';

/** A Wednesday. */
const today = '2026-11-25';
const us = (typed: string) => readDate(typed, today, 'en-US');
const uk = (typed: string) => readDate(typed, today, 'en-GB');

test('days from today', () => {
  expect(['today', 'tomorrow', '+0', '+3', '+2w', '+1m'].map(us)).toEqual([
    '2026-11-25',
    '2026-11-26',
    '2026-11-25',
    '2026-11-28',
    '2026-12-09',
    '2026-12-25',
  ]);
});

test('a weekday is the next one after today', () => {
  expect(['fri', 'Friday', 'we', 'mon', 'tue'].map(us)).toEqual([
    '2026-11-27',
    '2026-11-27',
    '2026-12-02',
    '2026-11-30',
    '2026-12-01',
  ]);
  expect(readDate('śro', today, 'pl-PL')).toBe('2026-12-02');
});

test('a day of the month that is past means the next month that has it', () => {
  expect(['25', '26', '12', '31', '32', '0'].map(us)).toEqual([
    '2026-11-25',
    '2026-11-26',
    '2026-12-12',
    '2026-12-31',
    null,
    null,
  ]);
});

test('day and month stand in the order of the locale', () => {
  expect(us('12/4')).toBe('2026-12-04');
  expect(uk('4/12')).toBe('2026-12-04');
  expect(us('3/1')).toBe('2027-03-01');
  expect(us('3/1/28')).toBe('2028-03-01');
  expect(['4 dec', 'dec 4', 'December 4, 2027', '4. dec'].map(us)).toEqual([
    '2026-12-04',
    '2026-12-04',
    '2027-12-04',
    '2026-12-04',
  ]);
});

test('ISO dates, and what is no date', () => {
  expect(us('2027-02-28')).toBe('2027-02-28');
  const refused = ['', '2027-02-29', '13/13', 'soon', 'x', '+', '4 foo', '99'];
  expect(refused.map(us)).toEqual(refused.map(() => null));
});
