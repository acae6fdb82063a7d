import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import type {
  Account,
  Discount,
  Line,
  LineInput,
  Totals,
} from '../../../shared/contract/till/index.ts';
import { workToBill } from '../../../shared/work/till/work-to-bill.ts';
import type { InvoiceSort } from '../../../shared/work/vocabulary.ts';
import { badInput, found } from '../refuse.ts';
import type { Writing } from '../writing.ts';
import { openAccount } from './open-account.ts';
import { storageOf } from './storage.ts';

/** The account that an invoice is issued on: storage is billed beside the work, as long as the machine is here. */
export function accountToBill(
  writing: Writing,
  { jobId, sort }: { jobId: string; sort: InvoiceSort },
  errors: Parameters<typeof openAccount>[2],
): Account {
  if (sort !== 'storage') return openAccount(writing, jobId, errors);
  const account = found(accountOf(writing.store, jobId), 'job');
  if (jobRowById(writing.store, jobId)?.state === 'handed-over') throw errors.JOB_CLOSED();
  return account;
}

/** The job that warranty work goes back to. */
export function workItGoesBackTo(
  { store }: Writing,
  { jobId, warrantyOf, reason }: { jobId: string; warrantyOf: string | null; reason: string },
  errors: { WARRANTY_UNEXPLAINED: () => Error },
) {
  if (warrantyOf === null || warrantyOf === jobId || reason === '')
    throw errors.WARRANTY_UNEXPLAINED();
  return found(jobRowById(store, warrantyOf), 'job that the warranty work goes back to');
}

/**
 * Lets a storage invoice hold storage only, and no more of it than is due: what was approved of the work does
 * not bound it.
 * @throws the declared BAD_INPUT for other lines, NO_STORAGE and OVER_STORAGE for more than is due
 */
export function demandStorage(
  { store, shop, today }: Writing,
  account: Account,
  { lines, totals }: { lines: readonly Line[]; totals: Totals },
  errors: {
    NO_STORAGE: () => Error;
    OVER_STORAGE: (more: { data: { due: number; over: number } }) => Error;
  },
): void {
  const other = lines.findIndex(({ kind }) => kind !== 'fee');
  if (other >= 0)
    throw badInput([
      {
        path: `lines.${other}.kind`,
        message:
          'A storage invoice holds fees for storage only. Bill work by an invoice of its own.',
      },
    ]);
  const due = storageOf(store, account, { today, timeZone: shop.timeZone })?.toBill ?? 0;
  if (due === 0) throw errors.NO_STORAGE();
  const over = totals.subtotal - totals.discount - due;
  if (over > 0) throw errors.OVER_STORAGE({ data: { due, over } });
}

/** What is billed when nobody says otherwise: the storage that is due, or the work as it was estimated. */
export function dueToBill(
  { store, shop, today }: Writing,
  account: Account,
  sort: InvoiceSort,
  errors: { NO_STORAGE: () => Error; NOTHING_ESTIMATED: () => Error },
): { lines: readonly LineInput[]; discount: Discount | null } {
  if (sort === 'storage') {
    const line = storageOf(store, account, { today, timeZone: shop.timeZone })?.line;
    if (line === null || line === undefined) throw errors.NO_STORAGE();
    return { lines: [line], discount: null };
  }
  const work = workToBill(account);
  if (work === null) throw errors.NOTHING_ESTIMATED();
  return { lines: work.lines, discount: work.option.discount };
}
