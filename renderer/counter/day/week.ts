import { Temporal } from 'temporal-polyfill';
import type { JobCard } from '../../../shared/contract/counter/index.ts';
import type { Day } from './types.ts';

/** How many days the strip shows: today and seven ahead, as far as the desk's 'soon' reaches. */
const SHOWN = 8;

/** The jobs that are promised for each day from today on. */
export function promisedByDay(
  day: Pick<Day, 'date' | 'today' | 'soon'>,
): { date: string; jobs: JobCard[] }[] {
  const first = Temporal.PlainDate.from(day.date);
  const promised = [...day.today, ...day.soon];
  return Array.from({ length: SHOWN }, (_, ahead) => {
    const date = first.add({ days: ahead }).toString();
    return { date, jobs: promised.filter((job) => job.promisedFor === date) };
  });
}
