import { movedSince, openJobs, takenInSince } from '../../../db/queries/counter/jobs.ts';
import { shopOf } from '../../../db/queries/office.ts';
import { partsTooLate } from '../../../db/queries/parts/too-late.ts';
import type { JobCard } from '../../../shared/contract/counter/index.ts';
import { addDays, dateIn, weekBegins } from '../../../shared/work/calendar.ts';
import { isOwed, WAITS_ON } from '../../../shared/work/counter/job-state.ts';
import { os } from '../implementer.ts';

/** How far 'soon' reaches, in days. */
const SOON = 7;

/** Whoever has waited longest comes first. */
const byWaiting = (a: JobCard, b: JobCard): number => (a.stateSince < b.stateSince ? -1 : 1);

export const day = os.counter.day.handler(({ input, context }) => {
  const store = context.store.read;
  const date = input.date ?? dateIn(shopOf(store).timeZone, context.now());
  const open = openJobs(store);
  const owed = open.filter(({ state }) => isOwed(state));
  const promised = (from: string, to: string) =>
    owed.filter(
      ({ promisedFor }) => promisedFor !== null && promisedFor >= from && promisedFor <= to,
    );
  const monday = weekBegins(date);
  return {
    date,
    late: promised('0000-01-01', addDays(date, -1)),
    today: promised(date, date),
    soon: promised(addDays(date, 1), addDays(date, SOON)),
    toTell: open.filter(({ customerToTell }) => customerToTell),
    partsTooLate: partsTooLate(store, owed),
    waiting: WAITS_ON.filter((who) => who !== 'nobody').map((on) => ({
      on,
      jobs: open.filter((job) => job.waitsOn === on).sort(byWaiting),
    })),
    figures: {
      open: open.length,
      ready: open.filter(({ state }) => state === 'ready').length,
      takenInThisWeek: takenInSince(store, monday),
      handedOverThisWeek: movedSince(store, 'handed-over', monday),
    },
  };
});
