import { Temporal } from 'temporal-polyfill';

/** Times of the day as people type them, read to the minute: `9`, `930`, `9:30`, `9.30`, `2:15 pm`, `14h15`. */

const FORMS = /^(\d{1,2})(?:[:.h]?(\d{2}))?\s*(?:([ap])\.?\s?m?\.?)?$/;

interface Read {
  time: Temporal.PlainTime;
  /** Whether it says which half of the day is meant. */
  whole: boolean;
}

function read(text: string): Read | null {
  const parts = FORMS.exec(text.trim().toLowerCase());
  if (parts === null) return null;
  const [, hours = '', minutes = '0', half] = parts;
  const typed = Number(hours);
  if (Number(minutes) > 59 || typed > 23 || (half !== undefined && (typed < 1 || typed > 12)))
    return null;
  const hour = half === undefined ? typed : (typed % 12) + (half === 'p' ? 12 : 0);
  const whole = half !== undefined || typed === 0 || typed > 12 || hours.startsWith('0');
  return { time: Temporal.PlainTime.from({ hour, minute: Number(minutes) }), whole };
}

const shown = (time: Temporal.PlainTime): string => time.toString({ smallestUnit: 'minute' });

/** The time that a text says, `09:30`; null for what is no time. */
export function readTime(text: string): string | null {
  const found = read(text);
  return found === null ? null : shown(found.time);
}

/**
 * The time at which something ended that began at `from` (`13:00`): `5` after one o'clock is five in the
 * afternoon, unless the text says otherwise. A time that lies before the beginning is one of the next day.
 */
export function readEnd(text: string, from: string | null): string | null {
  const found = read(text);
  if (found === null) return null;
  const { time, whole } = found;
  if (from === null || whole || Temporal.PlainTime.compare(time, from) > 0) return shown(time);
  const later = time.add({ hours: 12 });
  return shown(Temporal.PlainTime.compare(later, from) > 0 ? later : time);
}

/**
 * The instant at which the shop's wall shows a time. An hour that comes twice as summer time ends is the first
 * of the two; one that it leaves out is the one after it.
 */
export const instantAt = (date: string, time: string, timeZone: string): string =>
  new Date(
    Temporal.PlainDate.from(date).toZonedDateTime({ timeZone, plainTime: time }).epochMilliseconds,
  ).toISOString();

/** From a time of a day to another, which lies on the next day when it is not later. */
export function spanAt(
  { date, from, to }: { date: string; from: string; to: string },
  timeZone: string,
): { startedAt: string; endedAt: string } {
  const overnight = Temporal.PlainTime.compare(to, from) <= 0;
  const last = Temporal.PlainDate.from(date).add({ days: overnight ? 1 : 0 });
  return {
    startedAt: instantAt(date, from, timeZone),
    endedAt: instantAt(last.toString(), to, timeZone),
  };
}

/** Date and time of an instant as the shop's wall shows it. */
export function wallAt(iso: string, timeZone: string): { date: string; time: string } {
  const wall = Temporal.Instant.from(iso).toZonedDateTimeISO(timeZone);
  return { date: wall.toPlainDate().toString(), time: shown(wall.toPlainTime()) };
}

/** How long something lasted: `2 h 05 min`, `40 min`. */
export function lastedWords(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  return hours === 0 ? `${rest} min` : `${hours} h ${String(rest).padStart(2, '0')} min`;
}

/** The same in a table: `2:05`; a dash for nothing. */
export const lastedFigure = (minutes: number): string =>
  minutes === 0 ? '–' : `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
