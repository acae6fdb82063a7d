import { asc, desc, eq, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/sqlite-core';
import type { MovedPromise } from '../../../shared/contract/counter/index.ts';
import { PromiseId } from '../../../shared/contract/ids.ts';
import { prepared } from '../../prepared.ts';
import { job, jobPromise, promiseTold, staff } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/** Days that were promised after intake, in place of the one before. */

/** Of a job among others: how often it was promised anew. */
export const timesMoved = sql<number>`(SELECT count(*) FROM ${jobPromise} WHERE ${jobPromise.jobId} = ${job.id})`;

/** Of a job among others: the promise that stands was given after intake, and the customer was not told. */
export const untold = sql<number>`coalesce((
  SELECT ${promiseTold.id} IS NULL FROM ${jobPromise}
  LEFT JOIN ${promiseTold} ON ${promiseTold.promiseId} = ${jobPromise.id}
  WHERE ${jobPromise.jobId} = ${job.id} ORDER BY ${jobPromise.id} DESC LIMIT 1
), 0)`;

const teller = alias(staff, 'teller');

const rows = (store: ReadStore) =>
  store
    .select({ promise: jobPromise, by: staff.name, told: promiseTold, toldBy: teller.name })
    .from(jobPromise)
    .innerJoin(staff, eq(staff.id, jobPromise.by))
    .leftJoin(promiseTold, eq(promiseTold.promiseId, jobPromise.id))
    .leftJoin(teller, eq(teller.id, promiseTold.by));

type Row = ReturnType<ReturnType<typeof rows>['all']>[number];

const asPromise = ({ promise, by, told, toldBy }: Row): MovedPromise => ({
  id: PromiseId.parse(promise.id),
  promisedFor: promise.promisedFor,
  former: promise.former,
  reason: promise.reason,
  by,
  at: promise.at,
  told: told === null ? null : { how: told.how, by: toldBy ?? '', at: told.at },
});

const rowsOfJob = prepared((store) =>
  rows(store)
    .where(eq(jobPromise.jobId, sql.placeholder('jobId')))
    .orderBy(asc(jobPromise.id))
    .prepare(),
);

/** The first at the head. */
export const promisesOf = (store: ReadStore, jobId: string): MovedPromise[] =>
  rowsOfJob(store).all({ jobId }).map(asPromise);

/** A promise, and the one that stands for its job. */
export function promiseById(store: ReadStore, id: string) {
  const row = rows(store).where(eq(jobPromise.id, id)).get();
  if (row === undefined) return undefined;
  const { jobId } = row.promise;
  const last = store
    .select({ id: jobPromise.id })
    .from(jobPromise)
    .where(eq(jobPromise.jobId, jobId))
    .orderBy(desc(jobPromise.id))
    .get();
  return { ...asPromise(row), jobId, stands: last?.id === id };
}
