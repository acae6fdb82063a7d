import { Temporal } from 'temporal-polyfill';
import { addDays, dateIn } from '../../../shared/work/calendar.ts';

/**
 * The clock of a story that ends today. It only goes forward: each look at it is a little later than the
 * one before, and it never passes the real clock. A day of the story is a day of the calendar, Sundays and
 * holidays among them: whatever day it is told on, what lies five days apart in the story lies five days
 * apart in the shop, so that nothing overtakes what comes before it.
 */
export class StoryClock {
  readonly today: string;
  readonly #timeZone: string;
  readonly #end: number;
  #at: number;
  #pace = 0;

  /** @param begins days before today on which the story begins */
  constructor(now: Date, timeZone: string, begins: number) {
    this.#timeZone = timeZone;
    this.today = dateIn(timeZone, now);
    this.#end = now.getTime();
    this.#at = this.instant(-begins, '07:30').getTime();
  }

  /** The date so many days from today; negative for the past. */
  date(days: number): string {
    return addDays(this.today, days);
  }

  /** The instant when the shop's wall shows that time on that day. */
  instant(days: number, time: string): Date {
    return new Date(
      Temporal.PlainDateTime.from(`${this.date(days)}T${time}`).toZonedDateTime(this.#timeZone)
        .epochMilliseconds,
    );
  }

  /** Goes to an instant, unless it is past that already; each look then takes `pace` seconds. */
  goTo(instant: Date, pace = 20): void {
    this.#at = Math.max(this.#at, instant.getTime());
    this.#pace = pace * 1000;
  }

  readonly now = (): Date => {
    this.#at = Math.min(this.#end, this.#at + this.#pace);
    return new Date(this.#at);
  };
}
