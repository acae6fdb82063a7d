import { Temporal } from 'temporal-polyfill';
import { useShop, useToday } from './shop.tsx';

/** Dates and instants as this shop writes them. */
export interface Format {
  /** A calendar date: `Wed, Nov 25, 2026`. */
  date: (isoDate: string) => string;
  /** A calendar date without its year: `Wed, Nov 25`. */
  shortDate: (isoDate: string) => string;
  /** An instant in the shop's time zone: `Nov 25, 2026, 3:20 AM`. */
  instant: (iso: string) => string;
  /** The day of an instant in the shop's time zone: `Nov 25, 2026`. */
  day: (iso: string) => string;
  /** The time of an instant in the shop's time zone: `3:20 AM`. */
  time: (iso: string) => string;
  /** A time of the day, `15:20`, as the locale writes it: `3:20 PM`. */
  wallTime: (time: string) => string;
  /** How long ago an instant was, in the largest unit that fits: `3 days ago`. */
  ago: (iso: string) => string;
  /** How long something has lasted since an instant, in words: `3 days`. */
  since: (iso: string) => string;
  /** A calendar date seen from today: `today`, `tomorrow`, `in 3 days`, `2 days ago`. */
  fromToday: (isoDate: string) => string;
}

type Step = readonly [unit: 'day' | 'week' | 'month' | 'hour' | 'minute', seconds: number];
const STEPS: readonly Step[] = [
  ['month', 60 * 86_400],
  ['week', 21 * 86_400],
  ['day', 86_400],
  ['hour', 3_600],
  ['minute', 60],
];
const LENGTH = { month: 30.44 * 86_400, week: 7 * 86_400, day: 86_400, hour: 3_600, minute: 60 };

function lasted(iso: string): { unit: Step[0]; count: number } {
  const seconds = Math.max(0, (Date.now() - Date.parse(iso)) / 1000);
  const unit = STEPS.find(([, from]) => seconds >= from)?.[0] ?? 'minute';
  return { unit, count: Math.floor(seconds / LENGTH[unit]) };
}

/** Whole days from one calendar date to another; negative when the second is earlier. */
export function daysBetween(from: string, to: string): number {
  return Temporal.PlainDate.from(from).until(to, { largestUnit: 'day' }).days;
}

/** Made when it is first asked for: each takes milliseconds, and a page needs one or two. */
function dateTime(locale: string, options: Intl.DateTimeFormatOptions): (date: Date) => string {
  let made: Intl.DateTimeFormat | undefined;
  return (date) => {
    made ??= new Intl.DateTimeFormat(locale, options);
    return made.format(date);
  };
}

export function makeFormat(locale: string, timeZone: string, today: string): Format {
  const parts = { weekday: 'short', month: 'short', day: 'numeric', timeZone: 'UTC' } as const;
  const long = dateTime(locale, { ...parts, year: 'numeric' });
  const short = dateTime(locale, parts);
  const day = dateTime(locale, { dateStyle: 'medium', timeZone });
  const moment = dateTime(locale, { dateStyle: 'medium', timeStyle: 'short', timeZone });
  const time = dateTime(locale, { timeStyle: 'short', timeZone });
  const wallTime = dateTime(locale, { timeStyle: 'short', timeZone: 'UTC' });
  // The sentences around these words are English, so they are, too.
  const relative = new Intl.RelativeTimeFormat('en', { numeric: 'auto' });
  const noon = (isoDate: string): Date => new Date(`${isoDate}T12:00:00Z`);
  return {
    date: (isoDate) => long(noon(isoDate)),
    shortDate: (isoDate) => short(noon(isoDate)),
    instant: (iso) => moment(new Date(iso)),
    day: (iso) => day(new Date(iso)),
    time: (iso) => time(new Date(iso)),
    wallTime: (text) => wallTime(new Date(`2000-01-01T${text}:00Z`)),
    ago: (iso) => {
      const { unit, count } = lasted(iso);
      return unit === 'minute' && count < 1 ? 'just now' : relative.format(-count, unit);
    },
    since: (iso) => {
      const { unit, count } = lasted(iso);
      if (unit === 'minute' && count < 1) return 'a moment';
      return `${count} ${unit}${count === 1 ? '' : 's'}`;
    },
    fromToday: (isoDate) => relative.format(daysBetween(today, isoDate), 'day'),
  };
}

const kept = new Map<string, Format>();

/** One for all that is on the page. */
function formatFor(locale: string, timeZone: string, today: string): Format {
  const key = [locale, timeZone, today].join(' ');
  const format = kept.get(key) ?? makeFormat(locale, timeZone, today);
  kept.set(key, format);
  return format;
}

/** Dates and instants in the shop's locale and time zone. */
export function useFormat(): Format {
  const { locale, timeZone } = useShop();
  return formatFor(locale, timeZone, useToday());
}
