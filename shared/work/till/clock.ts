import { divideRounded, type Rounding } from '../../money/index.ts';
import { addDays, dateIn, dayBegins } from '../calendar.ts';

/** Clocked time: spans of instants, with a start and an end that is later. */

export interface ClockSpan {
  /** UTC, ISO 8601. */
  readonly startedAt: string;
  /** Null while the clock runs. */
  readonly endedAt: string | null;
}

const MINUTE = 60_000;

/** An instant brought down to its whole minute: a clock counts those, so that what is shown adds up. */
export const wholeMinute = (instant: string): string =>
  new Date(Math.floor(Date.parse(instant) / MINUTE) * MINUTE).toISOString();

/**
 * From the start of a span to its end, or to `now` while it runs. An hour lasts an hour: what the wall clock
 * does when summer time begins or ends does not matter.
 * @returns whole minutes, zero when the end is not later than the start
 */
export const spanLasted = ({ startedAt, endedAt }: ClockSpan, now: string): number =>
  Math.max(0, Math.floor((Date.parse(endedAt ?? now) - Date.parse(startedAt)) / MINUTE));

/**
 * Time as hours of a bill, in whole thousandths: 90 minutes are 1500, one and a half hours. Rounded once:
 * hand in the sum of several spans, and not each of them.
 * @throws RangeError when it is no whole number of minutes, zero or more
 */
export function hoursOf(minutes: number, rounding: Rounding): number {
  if (!Number.isSafeInteger(minutes) || minutes < 0)
    throw new RangeError('A time is a whole number of minutes, zero or more.');
  return Number(divideRounded(BigInt(minutes) * 1000n, 60n, rounding));
}

/** Whether two spans share a moment; one that ends as the other begins does not. */
export const overlap = (a: ClockSpan, b: ClockSpan): boolean =>
  Date.parse(a.startedAt) < endOf(b) && Date.parse(b.startedAt) < endOf(a);

const endOf = ({ endedAt }: ClockSpan): number =>
  endedAt === null ? Number.POSITIVE_INFINITY : Date.parse(endedAt);

/** A day of a span, as the wall of the shop shows it. */
export interface ClockedDay {
  date: string;
  minutes: number;
}

/**
 * What of a span lies on which day, in the shop's time zone. The parts always make up the whole; a day on
 * which summer time begins or ends has 23 or 25 hours.
 */
export function byDay(span: ClockSpan, now: string, timeZone: string): ClockedDay[] {
  const end = Date.parse(span.startedAt) + spanLasted(span, now) * MINUTE;
  const days: ClockedDay[] = [];
  let from = Date.parse(span.startedAt);
  while (from < end) {
    const date = dateIn(timeZone, new Date(from));
    const until = Math.min(end, Date.parse(dayBegins(timeZone, addDays(date, 1))));
    days.push({ date, minutes: (until - from) / MINUTE });
    from = until;
  }
  return days;
}

export const FORGOTTEN_BECAUSE = ['earlier-day', 'too-long'] as const;
export type ForgottenBecause = (typeof FORGOTTEN_BECAUSE)[number];

/**
 * Why a clock that runs was probably forgotten: it is from an earlier day, or runs for longer than the shop
 * allows. Null when it is stopped or nothing is odd. Work over midnight is asked about: a wrong question
 * costs a word, a wrong night costs eight hours.
 */
export function forgottenBecause(
  span: ClockSpan,
  { now, timeZone, afterHours }: { now: string; timeZone: string; afterHours: number },
): ForgottenBecause | null {
  if (span.endedAt !== null) return null;
  if (dateIn(timeZone, span.startedAt) < dateIn(timeZone, now)) return 'earlier-day';
  return spanLasted(span, now) > afterHours * 60 ? 'too-long' : null;
}
