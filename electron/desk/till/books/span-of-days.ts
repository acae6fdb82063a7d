import type { Span } from '../../../../db/queries/till/books/span.ts';
import { addDays, dayBegins } from '../../../../shared/work/calendar.ts';

/** From the beginning of one day, or from ever, to the end of another, as the shop's wall shows them. */
export const spanOfDays = (timeZone: string, from: string | null, to: string): Span => ({
  from: from === null ? null : dayBegins(timeZone, from),
  until: dayBegins(timeZone, addDays(to, 1)),
});

/** All that was before a day. */
export const spanBefore = (timeZone: string, day: string): Span => ({
  from: null,
  until: dayBegins(timeZone, day),
});
