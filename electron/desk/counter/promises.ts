import { eq } from 'drizzle-orm';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { promiseById } from '../../../db/queries/counter/promises.ts';
import { jobPromise, job as jobTable, promiseTold } from '../../../db/schema/index.ts';
import type { ApprovalWay } from '../../../shared/work/vocabulary.ts';
import { os } from '../implementer.ts';
import { tagAnew } from '../papers/intake-anew.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';

const keepTold = ({ store, staff, at, newId }: Writing, promiseId: string, how: ApprovalWay) =>
  store.insert(promiseTold).values({ id: newId(), promiseId, how, by: staff.id, at }).run();

const movePromise = os.counter.movePromise.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, staff, at, today, newId, note } = writing;
    const { jobId, promisedFor, reason, told } = input;
    const { state, promisedFor: former } = found(dossierOf(store, jobId), 'job');
    if (state === 'handed-over') throw errors.JOB_CLOSED();
    if (promisedFor < today) throw errors.PROMISED_IN_THE_PAST();
    if (promisedFor === former) throw errors.SAME_DAY();
    const id = newId();
    store
      .insert(jobPromise)
      .values({ id, jobId, promisedFor, former, reason, by: staff.id, at })
      .run();
    if (told !== null) keepTold(writing, id, told);
    store.update(jobTable).set({ promisedFor }).where(eq(jobTable.id, jobId)).run();
    const job = found(dossierOf(store, jobId), 'job');
    const tag = tagAnew(writing, job, reason);
    note({ job: jobId, promisedFor, former, reason, told: told ?? 'not yet' });
    return { job: found(dossierOf(store, jobId), 'job'), tag };
  }),
);

const tellPromise = os.counter.tellPromise.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, note } = writing;
    const promise = found(promiseById(store, input.promiseId), 'promise');
    if (promise.told !== null) throw errors.TOLD_ALREADY();
    if (!promise.stands) throw errors.PROMISE_MOVED_SINCE();
    keepTold(writing, promise.id, input.how);
    note({ job: promise.jobId, promisedFor: promise.promisedFor, told: input.how });
    return found(dossierOf(store, promise.jobId), 'job');
  }),
);

export const promises = { movePromise, tellPromise };
