import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import type { Account } from '../../../shared/contract/till/index.ts';
import { found } from '../refuse.ts';
import type { Writing } from '../writing.ts';

interface Refusals {
  JOB_CLOSED: () => Error;
  ALREADY_INVOICED: () => Error;
}

/** The account of a job whose bill is still open. */
export function openAccount({ store }: Writing, jobId: string, errors: Refusals): Account {
  const account = found(accountOf(store, jobId), 'job');
  if (jobRowById(store, jobId)?.state === 'handed-over') throw errors.JOB_CLOSED();
  if (account.invoice !== null) throw errors.ALREADY_INVOICED();
  return account;
}
