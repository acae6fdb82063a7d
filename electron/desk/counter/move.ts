import { eq } from 'drizzle-orm';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { jobMove, job as jobTable } from '../../../db/schema/index.ts';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import { canMove, type JobState, MOVES_BY_ACTION } from '../../../shared/work/counter/job-state.ts';
import { openPointsOf } from '../bench/build-state.ts';
import { takeStepsOnBench } from '../bench/job-steps.ts';
import { os } from '../implementer.ts';
import { tagAnew } from '../papers/intake-anew.ts';
import { settleJob } from '../parts/promises.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';

/** Moves a job within a transaction, and keeps that it was moved; the rules are the caller's. */
export function moveTo(writing: Writing, jobId: string, to: JobState, note = ''): void {
  const { store, staff, at, newId } = writing;
  store
    .update(jobTable)
    .set({ state: to, stateSince: at, stateNote: note })
    .where(eq(jobTable.id, jobId))
    .run();
  store.insert(jobMove).values({ id: newId(), jobId, to, at, by: staff.id, note }).run();
  // A job that stops lets go of the parts that were promised to it, but for what it was billed.
  settleJob(writing, jobId);
}

/** A job that waits or stops says for what. */
const NEEDS_A_REASON: readonly JobState[] = ['stopped', 'waits-for-parts'];

/** Back to the bench from ready: something was found, and the next reader wants to know what. */
const needsReason = (job: JobDossier, to: JobState): boolean =>
  NEEDS_A_REASON.includes(to) || (job.state === 'ready' && to === 'on-the-bench');

export const moveJob = os.counter.moveJob.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { jobId, to, note } = input;
    const doNotRun = to === 'stopped' && input.doNotRun ? note : '';
    const job = found(dossierOf(writing.store, jobId), 'job');
    if (!canMove(job.state, to) || (MOVES_BY_ACTION.includes(to) && !isReturn(job.state, to)))
      throw errors.MOVE_REFUSED({ data: { from: job.state, to } });
    if (needsReason(job, to) && note === '') throw errors.REASON_WANTED();
    if (to === 'ready') {
      const open = openPointsOf(writing.store, job);
      if (open.length > 0)
        throw errors.HOLD_POINT_OPEN({ data: { open: open.map(({ label }) => label) } });
    }
    moveTo(writing, jobId, to, note);
    if (to === 'on-the-bench') takeStepsOnBench(writing, job);
    writing.note({ job: jobId, from: job.state, to, reason: note, doNotRun });
    if (doNotRun !== job.doNotRun) warnOnTag(writing, jobId, doNotRun);
    return found(dossierOf(writing.store, jobId), 'job');
  }),
);

/** The tag on the machine says that nobody may run it, or no longer says so. */
function warnOnTag(writing: Writing, jobId: string, doNotRun: string): void {
  writing.store.update(jobTable).set({ doNotRun }).where(eq(jobTable.id, jobId)).run();
  const job = found(dossierOf(writing.store, jobId), 'job');
  tagAnew(writing, job, doNotRun === '' ? 'It may be run again' : 'Not to be run');
}

/** Once the parts are in, the go-ahead stands as it was given. */
const isReturn = (from: JobState, to: JobState): boolean =>
  from === 'waits-for-parts' && to === 'go-ahead';
