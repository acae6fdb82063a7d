import { shopOf, staffList } from '../../../../db/queries/office.ts';
import { accountOf } from '../../../../db/queries/till/account.ts';
import {
  type ClockRow,
  clockedBetween,
  clockedOn,
  hourlyCosts,
  runningClocks as runningRows,
} from '../../../../db/queries/till/clock.ts';
import { tillRulesOf } from '../../../../db/queries/till/rules.ts';
import type { Account } from '../../../../shared/contract/till/index.ts';
import { addDays, dayBegins } from '../../../../shared/work/calendar.ts';
import { byDay, spanLasted } from '../../../../shared/work/till/clock.ts';
import { labourLines, timeByKind } from '../../../../shared/work/till/clock-lines.ts';
import { workToBill } from '../../../../shared/work/till/work-to-bill.ts';
import type { DeskContext } from '../../context.ts';
import { os } from '../../implementer.ts';
import { badInput, found } from '../../refuse.ts';
import { type ClockRules, entriesOf } from './entries.ts';

/** The longest period that is told of at once, days. */
const LONGEST_PERIOD = 366;

const clockRules = ({ store, now }: DeskContext): ClockRules => ({
  now: now().toISOString(),
  timeZone: shopOf(store.read).timeZone,
  afterHours: tillRulesOf(store.read).forgottenAfterHours,
});

const counts = ({ what }: ClockRow): boolean => what !== 'struck-out';

export const runningClocks = os.till.runningClocks.handler(({ context }) =>
  entriesOf(context.store.read, runningRows(context.store.read), clockRules(context)),
);

export const clockedOnJob = os.till.clockedOnJob.handler(({ input: { jobId }, context }) => {
  const store = context.store.read;
  const account = found(accountOf(store, jobId), 'job');
  const { rounding, labourRate } = shopOf(store);
  const rules = clockRules(context);
  const rows = clockedOn(store, jobId);
  const costs = hourlyCosts(store);
  const { labourRates, labourCost } = tillRulesOf(store);
  const worked = (row: ClockRow) => ({
    workKind: row.workKind,
    minutes: spanLasted(row, rules.now),
    hourlyCost: costs.get(row.staffId) || (labourCost ?? 0),
  });
  const all = rows.filter(counts).map(worked);
  const done = rows.filter((row) => counts(row) && row.endedAt !== null).map(worked);
  return {
    entries: entriesOf(store, rows, rules),
    byKind: timeByKind(all, rounding),
    minutes: all.reduce((sum, { minutes }) => sum + minutes, 0),
    billedHours: billedHours(account),
    lines: labourLines(done, {
      labourRates,
      labourRate,
      rounding,
    }),
  };
});

/** Hours of labour that the customer has been told of: the invoice's, else those that are to be billed. */
const billedHours = (account: Account): number =>
  (account.invoice?.lines ?? workToBill(account)?.lines ?? [])
    .filter(({ kind, unit }) => kind === 'labour' && unit === 'h')
    .reduce((sum, { quantity }) => sum + quantity, 0);

export const clockedHours = os.till.clockedHours.handler(({ input: { from, until }, context }) => {
  const store = context.store.read;
  if (until < from)
    throw badInput([{ path: 'until', message: 'The last day is not before the first.' }]);
  if (until > addDays(from, LONGEST_PERIOD))
    throw badInput([{ path: 'until', message: 'Choose a period of a year at most.' }]);
  const rules = clockRules(context);
  const { timeZone, now } = rules;
  const rows = clockedBetween(store, {
    from: dayBegins(timeZone, from),
    until: dayBegins(timeZone, addDays(until, 1)),
  });
  const dates = daysOf(from, until);
  const people = staffList(store).flatMap(({ id, name, active }) => {
    const theirs = rows.filter((row) => counts(row) && row.staffId === id);
    if (!active && theirs.length === 0) return [];
    const worked = Map.groupBy(
      theirs.flatMap((row) => byDay(row, now, timeZone)),
      ({ date }) => date,
    );
    const days = dates.map((date) => ({
      date,
      minutes: (worked.get(date) ?? []).reduce((sum, each) => sum + each.minutes, 0),
    }));
    return [
      {
        staffId: id,
        name,
        minutes: days.reduce((sum, { minutes }) => sum + minutes, 0),
        days,
      },
    ];
  });
  return { from, until, people, entries: entriesOf(store, rows, rules) };
});

const daysOf = (from: string, until: string): string[] => {
  const days: string[] = [];
  for (let day = from; day <= until; day = addDays(day, 1)) days.push(day);
  return days;
};
