import { jobRowById, openJobs } from '../../../db/queries/counter/jobs.ts';
import { shopOf } from '../../../db/queries/office.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { tillRulesOf } from '../../../db/queries/till/rules.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { Account, Storage } from '../../../shared/contract/till/index.ts';
import { dateIn } from '../../../shared/work/calendar.ts';
import {
  COLLECTABLE,
  daysLeft,
  storageFee,
  storageLine,
} from '../../../shared/work/till/storage-fee.ts';
import type { DeskContext } from '../context.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';

/** From so many days on a machine is told of as not collected, whatever the rule charges. */
const LONG = 14;

/**
 * What of the storage since an instant stands on invoices of since then, less what was credited of those. What
 * is credited of an earlier wait is not to be charged again with this one.
 */
const billedSince = ({ invoices }: Account, since: string): number =>
  invoices
    .filter(({ issuedAt }) => issuedAt >= since)
    .flatMap(({ sort, lines, lineCredits }) =>
      lines.flatMap(({ priceFrom, amount }, index) =>
        sort === 'storage' || priceFrom === 'storage-rule'
          ? [amount - (lineCredits[index] ?? 0)]
          : [],
      ),
    )
    .reduce((sum, amount) => sum + amount, 0);

/** What a machine costs that waits to be collected; null when it doesn't wait. */
export function storageOf(
  store: ReadStore,
  account: Account,
  { today, timeZone }: { today: string; timeZone: string },
): Storage | null {
  const job = jobRowById(store, account.jobId);
  if (job === undefined || !COLLECTABLE.includes(job.state)) return null;
  const since = dateIn(timeZone, job.stateSince);
  const rule = tillRulesOf(store).storage;
  if (rule === null)
    return {
      since,
      waited: daysLeft(since, today),
      charged: 0,
      amount: 0,
      toBill: 0,
      line: null,
    };
  const billed = billedSince(account, job.stateSince);
  const fee = storageFee({ since, today, billed }, rule);
  return { since, ...fee, line: storageLine(fee, rule) };
}

const wall = ({ store, now }: DeskContext) => {
  const { timeZone } = shopOf(store.read);
  return { timeZone, today: dateIn(timeZone, now()) };
};

const ofJob = os.till.storage.handler(({ input, context }) => {
  const store = context.store.read;
  return storageOf(store, found(accountOf(store, input.jobId), 'job'), wall(context));
});

const uncollected = os.till.uncollected.handler(({ context }) => {
  const store = context.store.read;
  const day = wall(context);
  return openJobs(store)
    .filter(({ state }) => COLLECTABLE.includes(state))
    .flatMap((job) => {
      const account = accountOf(store, job.id);
      const storage = account === undefined ? null : storageOf(store, account, day);
      return storage === null || (storage.waited < LONG && storage.charged === 0)
        ? []
        : [{ job, storage }];
    })
    .sort((a, b) => b.storage.waited - a.storage.waited);
});

export const storage = { storage: ofJob, uncollected };
