import { expect, test } from 'vitest';
import { addDays, dateIn, dayBegins, daysFrom, weekBegins } from './calendar.ts';
import { internationalPhone } from './counter/phone.ts';

test('the date is the one on the shop’s wall', () => {
  const late = '2026-03-02T04:30:00.000Z';
  expect(dateIn('America/Chicago', late)).toBe('2026-03-01');
  expect(dateIn('Europe/Warsaw', late)).toBe('2026-03-02');
  expect(dateIn('Asia/Tokyo', new Date('2026-03-02T15:00:00Z'))).toBe('2026-03-03');
});

test('days run over months and leap years, and a week begins on Monday', () => {
  expect(addDays('2028-02-28', 2)).toBe('2028-03-01');
  expect(addDays('2026-03-01', -1)).toBe('2026-02-28');
  expect(weekBegins('2026-03-01')).toBe('2026-02-23');
  expect(weekBegins('2026-02-23')).toBe('2026-02-23');
});

test('a telephone number is read in the shop’s country, and what is none is left alone', () => {
  expect(internationalPhone('(312) 555-0142', 'US')).toBe('+13125550142');
  expect(internationalPhone('+47 22 12 34 56', 'US')).toBe('+4722123456');
  expect(internationalPhone('ask for Ruth', 'US')).toBe('');
  expect(internationalPhone('312 555 0142', 'XX')).toBe('');
});

test('counts days over a leap day and back', () => {
  expect(daysFrom('2028-02-28', '2028-03-01')).toBe(2);
  expect(daysFrom('2026-03-01', '2026-02-27')).toBe(-2);
});

test('a day begins at midnight of the wall, or at one o’clock where the clock skips midnight', () => {
  expect(dayBegins('America/Chicago', '2026-03-08')).toBe('2026-03-08T06:00:00.000Z');
  expect(dayBegins('America/Chicago', '2026-03-09')).toBe('2026-03-09T05:00:00.000Z');
  // Africa/Cairo, 24 April 2026: summer time begins at midnight, which is one o'clock at once.
  expect(dateIn('Africa/Cairo', dayBegins('Africa/Cairo', '2026-04-24'))).toBe('2026-04-24');
});
