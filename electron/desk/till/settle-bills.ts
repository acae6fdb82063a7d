import { accountOf } from '../../../db/queries/till/account.ts';
import { application } from '../../../db/schema/index.ts';
import { settle } from '../../../shared/money/index.ts';
import { found } from '../refuse.ts';
import type { Writing } from '../writing.ts';

/**
 * Sets money of a job against an invoice, of this job or of another of the customer; below zero frees it.
 * @param amount minor units, not zero
 */
export function setAgainst(
  { store, staff, at, newId }: Writing,
  jobId: string,
  { invoiceId, amount }: { invoiceId: string; amount: number },
): void {
  store
    .insert(application)
    .values({ id: newId(), jobId, invoiceId, amount, by: staff.id, at })
    .run();
}

/** Sets a job's free money against its open bills, and frees what a bill has too much. */
export function settleBills(writing: Writing, jobId: string): void {
  const { invoices, unapplied } = found(accountOf(writing.store, jobId), 'job');
  const set = settle(
    invoices.map(({ open }) => open),
    unapplied,
  );
  invoices.forEach(({ id }, index) => {
    const amount = set[index] ?? 0;
    if (amount !== 0) setAgainst(writing, jobId, { invoiceId: id, amount });
  });
}
