import { and, asc, eq, ne, or } from 'drizzle-orm';
import { alias } from 'drizzle-orm/sqlite-core';
import { JobId, jobCode } from '../../../shared/contract/ids.ts';
import { Line, type WarrantyWork } from '../../../shared/contract/till/index.ts';
import { lineAmount, type Rounding } from '../../../shared/money/index.ts';
import { invoice, job } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { creditedWhole } from './credited-whole.ts';
import { invoiceNumber } from './invoices.ts';

const origin = alias(job, 'origin');

/**
 * Warranty work that was done on a job, and that which goes back to it; oldest first. What was credited whole
 * turned out to be no warranty work, or stands on another bill.
 */
export function warrantyWorkOf(
  store: ReadStore,
  jobId: string,
  rounding: Rounding,
): WarrantyWork[] {
  const bills = store
    .select({ invoice, done: job.number, origin: origin.number })
    .from(invoice)
    .innerJoin(job, eq(job.id, invoice.jobId))
    .innerJoin(origin, eq(origin.id, invoice.warrantyOf))
    .where(
      and(
        eq(invoice.sort, 'warranty'),
        or(eq(invoice.jobId, jobId), eq(invoice.warrantyOf, jobId)),
        ne(invoice.jobId, invoice.warrantyOf),
      ),
    )
    .orderBy(asc(invoice.number))
    .all();
  const gone = creditedWhole(
    store,
    bills.map(({ invoice: { id } }) => id),
  );
  return bills
    .filter(({ invoice: { id } }) => !gone.has(id))
    .map(({ invoice: row, ...numbers }) => ({
      jobId: JobId.parse(row.jobId),
      jobCode: jobCode(numbers.done),
      warrantyOf: jobCode(numbers.origin),
      invoiceNumber: invoiceNumber(row.number),
      reason: row.reason,
      ...costOf(
        row.lines.map((line) => Line.parse(line)),
        rounding,
      ),
      at: row.at,
    }));
}

/** A core is security for an old part and costs the shop nothing. */
function costOf(lines: readonly Line[], rounding: Rounding): { cost: number; unknown: number } {
  const bought = lines.filter(({ kind }) => kind !== 'core-charge' && kind !== 'core-credit');
  const known = bought.flatMap(({ quantity, unitCost }) =>
    unitCost === null ? [] : [lineAmount({ quantity, unitPrice: unitCost }, rounding)],
  );
  return {
    cost: known.reduce((sum, amount) => sum + amount, 0),
    unknown: bought.length - known.length,
  };
}
