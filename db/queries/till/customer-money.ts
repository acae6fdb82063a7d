import { asc, eq, sum } from 'drizzle-orm';
import { InvoiceId, JobId, jobCode } from '../../../shared/contract/ids.ts';
import type { CustomerMoney, UnpaidInvoice } from '../../../shared/contract/till/index.ts';
import { application, creditNote, invoice, job, payment } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { creditedWhole } from './credited-whole.ts';
import { invoiceNumber } from './invoices.ts';

/** What a customer owes over all their jobs, and what of their money is set against no invoice. */
export function customerMoney(store: ReadStore, customerId: string): CustomerMoney {
  const ofCustomer = eq(job.customerId, customerId);
  const credited = amounts(
    store
      .select({ of: creditNote.invoiceId, amount: sum(creditNote.total).mapWith(Number) })
      .from(creditNote)
      .innerJoin(job, eq(job.id, creditNote.jobId))
      .where(ofCustomer)
      .groupBy(creditNote.invoiceId)
      .all(),
  );
  const applied = amounts(
    store
      .select({ of: application.invoiceId, amount: sum(application.amount).mapWith(Number) })
      .from(application)
      .innerJoin(invoice, eq(invoice.id, application.invoiceId))
      .innerJoin(job, eq(job.id, invoice.jobId))
      .where(ofCustomer)
      .groupBy(application.invoiceId)
      .all(),
  );
  const appliedFrom = amounts(
    store
      .select({ of: application.jobId, amount: sum(application.amount).mapWith(Number) })
      .from(application)
      .innerJoin(job, eq(job.id, application.jobId))
      .where(ofCustomer)
      .groupBy(application.jobId)
      .all(),
  );
  const invoices = store
    .select({ invoice, jobNumber: job.number })
    .from(invoice)
    .innerJoin(job, eq(job.id, invoice.jobId))
    .where(ofCustomer)
    .orderBy(asc(invoice.number))
    .all();
  const gone = creditedWhole(
    store,
    invoices.map(({ invoice: { id } }) => id),
  );
  const billed = new Set(
    invoices.flatMap(({ invoice: { id, jobId, sort } }) =>
      sort === 'storage' || gone.has(id) ? [] : [jobId],
    ),
  );
  const open = invoices
    .map(
      ({ invoice: row, jobNumber }): UnpaidInvoice => ({
        id: InvoiceId.parse(row.id),
        number: invoiceNumber(row.number),
        jobId: JobId.parse(row.jobId),
        jobCode: jobCode(jobNumber),
        issuedAt: row.at,
        dueOn: row.dueOn,
        total: row.total,
        open: row.total - (credited.get(row.id) ?? 0) - (applied.get(row.id) ?? 0),
      }),
    )
    .filter((each) => each.open !== 0);
  const paid = paidBy(store, customerId);
  // A bill that came to less than nothing holds money of the customer on a job that nobody paid for.
  const held = store
    .select({ id: job.id, number: job.number })
    .from(job)
    .where(ofCustomer)
    .orderBy(asc(job.number))
    .all()
    .map(({ id, number }) => ({
      jobId: JobId.parse(id),
      jobCode: jobCode(number),
      amount: (paid.get(id) ?? 0) - (appliedFrom.get(id) ?? 0),
      billed: billed.has(id),
    }))
    .filter(({ amount }) => amount !== 0);
  return {
    open,
    held,
    owed: open.reduce((total, each) => total + each.open, 0),
    unapplied: held.reduce((total, { amount }) => total + amount, 0),
  };
}

const amounts = (rows: readonly { of: string; amount: number }[]): Map<string, number> =>
  new Map(rows.map(({ of, amount }) => [of, amount]));

/** Money in less money out, by job. */
function paidBy(store: ReadStore, customerId: string): Map<string, number> {
  const byJob = new Map<string, number>();
  const rows = store
    .select({ payment })
    .from(payment)
    .innerJoin(job, eq(job.id, payment.jobId))
    .where(eq(job.customerId, customerId))
    .all();
  for (const { payment: row } of rows)
    byJob.set(
      row.jobId,
      (byJob.get(row.jobId) ?? 0) + (row.kind === 'refund' ? -row.amount : row.amount),
    );
  return byJob;
}
