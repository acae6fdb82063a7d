import { asc, eq, sql } from 'drizzle-orm';
import { PaymentId, ReceiptId } from '../../../shared/contract/ids.ts';
import type { Payment, Receipt } from '../../../shared/contract/till/index.ts';
import { prepared } from '../../prepared.ts';
import { application, payment, receipt, staff } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { paperCard } from '../office.ts';

/** What people read on a receipt: `R-000042`. */
export const receiptNumber = (number: number): string => `R-${String(number).padStart(6, '0')}`;

const paymentsOfJob = prepared((store) =>
  store
    .select({ payment, receipt, byName: staff.name })
    .from(payment)
    .innerJoin(staff, eq(staff.id, payment.by))
    .leftJoin(receipt, eq(receipt.id, payment.receiptId))
    .where(eq(payment.jobId, sql.placeholder('jobId')))
    .orderBy(asc(payment.at), asc(payment.id))
    .prepare(),
);

/** Payments of a job, oldest first. */
export const paymentsOf = (store: ReadStore, jobId: string): Payment[] =>
  paymentsOfJob(store)
    .all({ jobId })
    .map(({ payment: row, receipt: slip, byName }) => ({
      id: PaymentId.parse(row.id),
      kind: row.kind,
      method: row.method,
      amount: row.amount,
      reference: row.reference,
      receipt: slip === null ? null : receiptIn(store, slip),
      by: byName,
      at: row.at,
    }));

export function receiptById(store: ReadStore, id: string): Receipt | undefined {
  const row = store.select().from(receipt).where(eq(receipt.id, id)).get();
  return row && receiptIn(store, row);
}

function receiptIn(store: ReadStore, row: typeof receipt.$inferSelect): Receipt {
  // A receipt over several jobs is filed with one of them only.
  const paper = paperCard(store, row.paperId);
  if (paper === undefined) throw new Error(`The paper ${row.paperId} is missing from the store.`);
  return {
    id: ReceiptId.parse(row.id),
    number: receiptNumber(row.number),
    amount: row.amount,
    given: row.given,
    change: row.change,
    paper,
  };
}

const appliedOfJob = prepared((store) =>
  store
    .select({ amount: application.amount })
    .from(application)
    .where(eq(application.jobId, sql.placeholder('jobId')))
    .prepare(),
);

/** What of a job's money is set against invoices, of this job or of another. */
export const appliedFrom = (store: ReadStore, jobId: string): number =>
  appliedOfJob(store)
    .all({ jobId })
    .reduce((sum, { amount }) => sum + amount, 0);
