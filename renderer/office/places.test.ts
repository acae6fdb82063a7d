import { expect, test } from 'vitest';
import { CURRENCIES, placeOf, TIME_ZONES } from './places.ts';

test('a new shop is offered what is usual where its machine says that it is', () => {
  expect(placeOf('en-US', 'America/Chicago')).toEqual({
    locale: 'en-US',
    timeZone: 'America/Chicago',
    country: 'US',
    currency: 'USD',
    paperSize: 'Letter',
  });
  expect(placeOf('de', 'Europe/Vienna')).toMatchObject({
    country: 'DE',
    currency: 'EUR',
    paperSize: 'A4',
  });
  expect(placeOf('pl-PL', 'Europe/Warsaw')).toMatchObject({ currency: 'PLN', paperSize: 'A4' });
});

test('the lists to choose from hold what is offered', () => {
  for (const currency of ['USD', 'EUR', 'PLN', 'JPY']) expect(CURRENCIES).toContain(currency);
  for (const zone of ['America/Chicago', 'Europe/London', 'UTC'])
    expect(TIME_ZONES).toContain(zone);
});
