import { accountOf } from '../../../db/queries/till/account.ts';
import { application } from '../../../db/schema/index.ts';
import { settle } from '../../../shared/money/index.ts';
import { found } from '../refuse.ts';
import type { Writing } from '../writing.ts';

/** Sets a job's free money against its open bills, and frees what a bill has too much. */
export function settleBills({ store, staff, at, newId }: Writing, jobId: string): void {
  const { invoices, unapplied } = found(accountOf(store, jobId), 'job');
  const set = settle(
    invoices.map(({ open }) => open),
    unapplied,
  );
  invoices.forEach(({ id }, index) => {
    const amount = set[index] ?? 0;
    if (amount === 0) return;
    store
      .insert(application)
      .values({ id: newId(), jobId, invoiceId: id, amount, by: staff.id, at })
      .run();
  });
}
