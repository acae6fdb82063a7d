import { expect, test } from 'vitest';
import { beside, periodOf, searchOf } from './hours-period.ts';

const TODAY = '2026-03-04';
const period = (search: string) => periodOf(new URLSearchParams(search), TODAY);

test('the address says the week or the day; without one it is this week', () => {
  const week = { span: 'week', from: '2026-03-02', until: '2026-03-08' };
  expect(period('')).toEqual(week);
  expect(period('on=2026-03-08')).toEqual(week);
  expect(period('on=2026-13-08')).toEqual(week);
  expect(period(searchOf('day', '2026-02-28'))).toEqual({
    span: 'day',
    from: '2026-02-28',
    until: '2026-02-28',
  });
  expect(period(searchOf('week', '2026-02-28')).from).toBe('2026-02-23');
});

test('one goes on by a week or by a day', () => {
  expect(beside(period(''), 1)).toBe('2026-03-09');
  expect(beside(period('span=day&on=2026-03-01'), -1)).toBe('2026-02-28');
});
