import { Temporal } from 'temporal-polyfill';

/** Calendar dates as the shop's wall shows them. */

/** The date of an instant in a time zone, ISO 8601. */
export const dateIn = (timeZone: string, instant: Date | string): string =>
  Temporal.Instant.from(typeof instant === 'string' ? instant : instant.toISOString())
    .toZonedDateTimeISO(timeZone)
    .toPlainDate()
    .toString();

/** The date so many days later, or earlier when `days` is negative. */
export const addDays = (date: string, days: number): string =>
  Temporal.PlainDate.from(date).add({ days }).toString();

/** The Monday of the week that a date lies in. */
export const weekBegins = (date: string): string =>
  addDays(date, 1 - Temporal.PlainDate.from(date).dayOfWeek);

/** Whole days from one date to another; negative when the second is earlier. */
export const daysFrom = (from: string, to: string): number =>
  Temporal.PlainDate.from(from).until(to, { largestUnit: 'day' }).days;

/** The instant at which a date begins in a time zone: UTC, ISO 8601 with milliseconds, as the store keeps them. */
export const dayBegins = (timeZone: string, date: string): string =>
  new Date(
    Temporal.PlainDate.from(date).toZonedDateTime({ timeZone }).epochMilliseconds,
  ).toISOString();
