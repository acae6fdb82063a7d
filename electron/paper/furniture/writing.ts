import { formatMoney } from '../../../shared/money/format.ts';
import type { Shop } from '../content.ts';

/** Amounts, dates and instants as the shop writes them, whatever the machine's own settings are. */
export interface Writing {
  money(minor: number): string;
  /** A calendar date, e.g. `Mar 14, 2026`. */
  date(date: string): string;
  /** An instant, in the shop's time zone. */
  instant(instant: string): string;
  /** The day of an instant, and its time of day, in the shop's time zone. */
  day(instant: string): string;
  time(instant: string): string;
}

export function writingOf(shop: Shop): Writing {
  const dates = new Intl.DateTimeFormat(shop.locale, { dateStyle: 'medium', timeZone: 'UTC' });
  const instants = new Intl.DateTimeFormat(shop.locale, {
    dateStyle: 'medium',
    timeStyle: 'short',
    timeZone: shop.timeZone,
  });
  const { locale, timeZone } = shop;
  const days = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone });
  const times = new Intl.DateTimeFormat(locale, { timeStyle: 'short', timeZone });
  return {
    money: (minor) => formatMoney(minor, shop.currency, shop.locale),
    // A calendar date has no zone: it is midnight UTC written in UTC.
    date: (date) => dates.format(new Date(`${date}T00:00:00Z`)),
    instant: (instant) => instants.format(new Date(instant)),
    day: (instant) => days.format(new Date(instant)),
    time: (instant) => times.format(new Date(instant)),
  };
}
