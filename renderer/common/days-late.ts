import { isOwed, type JobState } from '../../shared/work/counter/job-state.ts';
import { daysBetween } from './format.ts';

/** A job that is ready, stopped or gone is no longer owed by a date; any other is late after it. */
export function daysLate(
  job: { promisedFor: string | null; state: JobState },
  today: string,
): number {
  if (!isOwed(job.state) || job.promisedFor === null) return 0;
  return Math.max(0, daysBetween(job.promisedFor, today));
}
