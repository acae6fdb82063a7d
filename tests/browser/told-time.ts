import type { BrowserContext } from '@playwright/test';
import { Temporal } from 'temporal-polyfill';

/**
 * Tests run at a told time, whatever the clock of the machine shows: it begins there with each worker and
 * runs on from there, for the desk, the page and the test alike.
 */

/** Of the shop of the tests, and of the browser that looks at it. */
export const TIME_ZONE = 'America/Chicago';

/** An ordinary Tuesday morning. */
const USUAL = '2026-10-20T10:20';

function momentTold(told: string): number {
  try {
    const hasOffset = /(?:Z|[+-]\d\d:\d\d)$/.test(told);
    return hasOffset
      ? Temporal.Instant.from(told).epochMilliseconds
      : Temporal.PlainDateTime.from(told).toZonedDateTime(TIME_ZONE).epochMilliseconds;
  } catch {
    throw new Error(
      `TOLD_TIME is “${told}”. It is a date and a time in ${TIME_ZONE}: 2026-11-30T23:58, or with its offset where a clock change makes it two: 2026-11-01T01:30-06:00.`,
    );
  }
}

/** When the time of the tests begins, milliseconds since 1970. */
export const toldStart = momentTold(process.env.TOLD_TIME || USUAL);

/** How far the told time is ahead of the machine's clock, milliseconds; below zero when it is behind. */
export const toldAhead = toldStart - Date.now();

/** How far ahead a clock is that begins anew at this moment. */
export const toldAheadAnew = (): number => toldStart - Date.now();

/** The time it is for the tests. */
export const toldNow = (): Date => new Date(Date.now() + toldAhead);

/**
 * Tells the time to every page of a context, by the browser’s own clock. Only dates are told: timers, frames and the stamps of events
 * stay the browser's own, which a clock that stands in for all of them would take the place of.
 */
export async function tellTime(context: BrowserContext): Promise<void> {
  const page = await context.newPage();
  const told = toldNow().getTime();
  const browsers = await page.evaluate(() => Date.now());
  await page.close();
  await context.addInitScript((ahead) => {
    const now = (): number => machine.now() + ahead;
    const machine = window.Date;
    window.Date = new Proxy(machine, {
      construct: (target, given, called) =>
        Reflect.construct(target, given.length === 0 ? [now()] : given, called),
      apply: () => new machine(now()).toString(),
      get: (target, name) => (name === 'now' ? now : Reflect.get(target, name)),
    });
  }, told - browsers);
}
