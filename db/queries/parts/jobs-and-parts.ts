import type { JobPartsCard } from '../../../shared/contract/parts/index.ts';
import type { ReadStore } from '../../store.ts';
import { openJobs } from '../counter/jobs.ts';
import { jobPartsOf } from './job-parts.ts';
import { openNeeds } from './needs.ts';

const SOME_DAY = '9999-99-99';

/** A job that waits though all is there comes first, then by the day on which the slowest part is expected. */
const rank = ({ state, missing, expectedOn }: JobPartsCard): string => {
  if (missing.length > 0) return `1 ${expectedOn ?? SOME_DAY}`;
  return state === 'waits-for-parts' ? '0' : '2';
};

/** Open jobs that need parts which they have not all had yet. */
export function jobsAndParts(store: ReadStore): JobPartsCard[] {
  const needing = new Set(openNeeds(store).map(({ jobId }) => jobId));
  return openJobs(store)
    .filter(({ id }) => needing.has(id))
    .flatMap(({ id, code, customerName, machine, state }) => {
      const job = jobPartsOf(store, id);
      if (job === undefined) return [];
      return [
        {
          jobId: id,
          jobCode: code,
          customerName,
          machine,
          state,
          missing: job.parts
            .filter(({ missing }) => missing > 0)
            .map(({ part }) => `${part.description} (${part.number})`),
          expectedOn: job.expectedOn,
          toIssue: job.parts.filter(({ open, missing }) => open > missing).length,
        },
      ];
    })
    .filter(
      ({ missing, toIssue, state }) =>
        missing.length > 0 || toIssue > 0 || state === 'waits-for-parts',
    )
    .toSorted((a, b) => (rank(a) < rank(b) ? -1 : Number(rank(a) > rank(b))));
}
