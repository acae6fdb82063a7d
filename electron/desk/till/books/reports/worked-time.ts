import {
  type ClockRow,
  clockedBetween,
  clockedOn,
  hourlyCosts,
} from '../../../../../db/queries/till/clock.ts';
import { tillRulesOf } from '../../../../../db/queries/till/rules.ts';
import type { ReadStore } from '../../../../../db/store.ts';
import { byDay, spanLasted } from '../../../../../shared/work/till/clock.ts';
import { spanOfDays } from '../span-of-days.ts';

/** Time that somebody worked and that is over. */
export interface WorkedTime {
  jobId: string;
  staffId: string;
  workKind: string;
  minutes: number;
}

const isOver = ({ what, endedAt }: ClockRow): boolean => what !== 'struck-out' && endedAt !== null;

/** What was worked on some days; a clock that runs over midnight counts for both of its days. */
export const workedBetween = (
  store: ReadStore,
  { timeZone, from, to }: { timeZone: string; from: string; to: string },
): WorkedTime[] =>
  clockedBetween(store, spanOfDays(timeZone, from, to))
    .filter(isOver)
    .flatMap((row) =>
      byDay(row, row.startedAt, timeZone)
        .filter(({ date }) => from <= date && date <= to)
        .map(({ minutes }) => ({
          jobId: row.jobId,
          staffId: row.staffId,
          workKind: row.workKind,
          minutes,
        })),
    );

/** What was worked on a job, with what an hour of it costs the shop; time of no known cost is left out. */
export function costedTime(
  store: ReadStore,
  jobId: string,
): (WorkedTime & { hourlyCost: number })[] {
  const costs = hourlyCosts(store);
  const { labourCost } = tillRulesOf(store);
  return clockedOn(store, jobId)
    .filter(isOver)
    .map((row) => ({
      jobId,
      staffId: row.staffId,
      workKind: row.workKind,
      minutes: spanLasted(row, row.startedAt),
      hourlyCost: costs.get(row.staffId) || (labourCost ?? 0),
    }))
    .filter(({ hourlyCost }) => hourlyCost > 0);
}
