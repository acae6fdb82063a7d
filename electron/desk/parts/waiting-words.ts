import { eq } from 'drizzle-orm';
import { openJobs } from '../../../db/queries/counter/jobs.ts';
import { jobPartsOf } from '../../../db/queries/parts/job-parts.ts';
import { job as jobTable } from '../../../db/schema/index.ts';
import type { JobParts } from '../../../shared/contract/parts/index.ts';
import { found } from '../refuse.ts';
import type { Writing } from '../writing.ts';

/** A note on a job is so long at most. */
const LONGEST_NOTE = 300;

/** What the job waits for, in words: `Piston +0.50 (HV 740-50), expected Dec 3, 2026`. */
export function missingInWords({ shop }: Writing, { parts }: JobParts): string {
  const dates = new Intl.DateTimeFormat(shop.locale, { dateStyle: 'medium', timeZone: 'UTC' });
  const words = parts
    .filter(({ missing }) => missing > 0)
    .map(({ part, onOrder, missing, expectedOn }) => {
      const name = `${part.description} (${part.number})`;
      if (expectedOn !== null) return `${name}, expected ${dates.format(new Date(expectedOn))}`;
      return onOrder < missing ? `${name}, not ordered yet` : `${name}, on order`;
    })
    .join('; ');
  return words.length <= LONGEST_NOTE ? words : `${words.slice(0, LONGEST_NOTE - 1)}…`;
}

const wordsNow = (writing: Writing, jobId: string): string =>
  missingInWords(writing, found(jobPartsOf(writing.store, jobId), 'job'));

/**
 * Does something that changes which parts are missing or when they are expected, and lets the jobs that
 * wait for them say so. What a person wrote beside a job stays as they wrote it.
 */
export function keepWaitingWords<T>(writing: Writing, work: () => T): T {
  const { store } = writing;
  const waiting = openJobs(store).filter(
    ({ id, state, stateNote }) =>
      state === 'waits-for-parts' && stateNote === wordsNow(writing, id),
  );
  const done = work();
  for (const { id, stateNote: said } of waiting) {
    const stateNote = wordsNow(writing, id);
    if (stateNote !== said)
      store.update(jobTable).set({ stateNote }).where(eq(jobTable.id, id)).run();
  }
  return done;
}
