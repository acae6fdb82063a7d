import type { Span } from '../../../../db/queries/till/books/span.ts';
import { addDays, dayBegins } from '../../../../shared/work/calendar.ts';

/** From the beginning of one day to the end of another, as the shop's wall shows them. */
export const spanOfDays = (timeZone: string, from: string, to: string) => ({
  from: dayBegins(timeZone, from),
  until: dayBegins(timeZone, addDays(to, 1)),
});

/** All up to the end of a day. */
export const spanUntil = (timeZone: string, day: string): Span => ({
  from: null,
  until: dayBegins(timeZone, addDays(day, 1)),
});
