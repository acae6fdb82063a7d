import { Temporal } from 'temporal-polyfill';

const ENGLISH_DAYS = ['mo', 'tu', 'we', 'th', 'fr', 'sa', 'su'];
const ENGLISH_MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');

/** Whether a locale writes the day before the month. */
function dayFirst(locale: string): boolean {
  const parts = new Intl.DateTimeFormat(locale).formatToParts(new Date(2000, 10, 25));
  const order = parts.map((part) => part.type);
  return order.indexOf('day') < order.indexOf('month');
}

/** A weekday by its first letters, in English or in the shop's language; 1 is Monday. */
function weekday(word: string, locale: string): number | null {
  const english = ENGLISH_DAYS.findIndex((day) => word.startsWith(day));
  if (english >= 0) return english + 1;
  const names = new Intl.DateTimeFormat(locale, { weekday: 'long', timeZone: 'UTC' });
  for (let day = 1; day <= 7; day++) {
    // 1 January 2024 is a Monday.
    const name = names.format(Date.UTC(2024, 0, day)).toLowerCase();
    if (word.length >= 2 && name.startsWith(word)) return day;
  }
  return null;
}

function monthOf(word: string): number | null {
  const index = ENGLISH_MONTHS.findIndex((month) => word.startsWith(month));
  return index < 0 ? null : index + 1;
}

function plainDate(year: number, month: number, day: number): Temporal.PlainDate | null {
  try {
    return Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' });
  } catch {
    return null;
  }
}

/** The next such day from today on. */
function nextOn(today: Temporal.PlainDate, month: number, day: number): Temporal.PlainDate | null {
  const thisYear = plainDate(today.year, month, day);
  if (thisYear !== null && Temporal.PlainDate.compare(thisYear, today) >= 0) return thisYear;
  return plainDate(today.year + 1, month, day);
}

function dayOfMonth(today: Temporal.PlainDate, day: number): Temporal.PlainDate | null {
  for (let ahead = 0; ahead <= 12; ahead++) {
    const month = today.with({ day: 1 }).add({ months: ahead });
    const date = plainDate(month.year, month.month, day);
    if (date !== null && Temporal.PlainDate.compare(date, today) >= 0) return date;
  }
  return null;
}

function fullYear(typed: string): number {
  return typed.length === 2 ? 2000 + Number(typed) : Number(typed);
}

/**
 * What somebody typed as a date, as an ISO calendar date; null when it is none. Reads `+3` (days from
 * today), `+2w`, `today`, `tomorrow`, `fri` (the next one after today), `12` (the next twelfth), `12/4`
 * and `4 dec` (the next such day), `12/4/26` and ISO. Day and month stand in the order of the locale.
 */
export function readDate(typed: string, todayIso: string, locale: string): string | null {
  const today = Temporal.PlainDate.from(todayIso);
  const bare = typed.trim().toLowerCase();
  return understood(bare, today, locale)?.toString() ?? null;
}

function understood(
  bare: string,
  today: Temporal.PlainDate,
  locale: string,
): Temporal.PlainDate | null {
  if (bare === 'today' || bare === '+0') return today;
  if (/^tom(orrow)?$/.test(bare)) return today.add({ days: 1 });

  const ahead = /^\+(\d{1,3})\s*([dwm]?)$/.exec(bare);
  if (ahead !== null) {
    const count = Number(ahead[1]);
    if (ahead[2] === 'w') return today.add({ weeks: count });
    return ahead[2] === 'm' ? today.add({ months: count }) : today.add({ days: count });
  }

  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(bare);
  if (iso !== null) return plainDate(Number(iso[1]), Number(iso[2]), Number(iso[3]));

  if (/^\d{1,2}\.?$/.test(bare)) return dayOfMonth(today, Number.parseInt(bare, 10));

  const numbers = /^(\d{1,2})[/.\s-](\d{1,2})\.?(?:[/.\s-](\d{4}|\d{2}))?$/.exec(bare);
  if (numbers !== null) {
    const pair = [Number(numbers[1]), Number(numbers[2])] as const;
    const [day, month] = dayFirst(locale) ? pair : [pair[1], pair[0]];
    const year = numbers[3];
    return year === undefined ? nextOn(today, month, day) : plainDate(fullYear(year), month, day);
  }

  const named =
    /^(?:(\d{1,2})\.?\s*(\p{L}{3,})|(\p{L}{3,})\.?\s*(\d{1,2}))\.?,?(?:\s+(\d{4}|\d{2}))?$/u.exec(
      bare,
    );
  const month = named === null ? null : monthOf(named[2] ?? named[3] ?? '');
  if (named !== null && month !== null) {
    const day = Number(named[1] ?? named[4]);
    const year = named[5];
    return year === undefined ? nextOn(today, month, day) : plainDate(fullYear(year), month, day);
  }

  const on = /^\p{L}{2,}$/u.test(bare) ? weekday(bare, locale) : null;
  if (on === null) return null;
  return today.add({ days: ((on - today.dayOfWeek + 6) % 7) + 1 });
}
