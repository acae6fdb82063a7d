import { formatMoney } from '../../../shared/money/format.ts';
import type { Shop } from '../content.ts';

/** Amounts, dates and instants as the shop writes them, whatever the machine's own settings are. */
export interface Writing {
  money(minor: number): string;
  /** A calendar date, e.g. `14 March 2026`. */
  date(date: string): string;
  /** An instant, in the shop's time zone. */
  instant(instant: string): string;
}

export function writingOf(shop: Shop): Writing {
  const dates = new Intl.DateTimeFormat(shop.locale, { dateStyle: 'long', timeZone: 'UTC' });
  const instants = new Intl.DateTimeFormat(shop.locale, {
    dateStyle: 'medium',
    timeStyle: 'short',
    timeZone: shop.timeZone,
  });
  return {
    money: (minor) => formatMoney(minor, shop.currency, shop.locale),
    // A calendar date has no zone: it is midnight UTC written in UTC.
    date: (date) => dates.format(new Date(`${date}T00:00:00Z`)),
    instant: (instant) => instants.format(new Date(instant)),
  };
}
