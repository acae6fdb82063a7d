import type { Span } from '../../../../db/queries/till/books/span.ts';
import { addDays } from '../../../../shared/work/calendar.ts';
import { dayBegins } from '../../../../shared/work/clock.ts';

/** As the store keeps instants. */
const begins = (timeZone: string, day: string): string =>
  new Date(dayBegins(day, timeZone)).toISOString();

/** From the beginning of one day to the end of another, as the shop's wall shows them. */
export const spanOfDays = (timeZone: string, from: string, to: string) => ({
  from: begins(timeZone, from),
  until: begins(timeZone, addDays(to, 1)),
});

/** All up to the end of a day. */
export const spanUntil = (timeZone: string, day: string): Span => ({
  from: null,
  until: begins(timeZone, addDays(day, 1)),
});
