import { asc, eq, inArray, type SQL } from 'drizzle-orm';
import { lineCreditsOf } from '../../../shared/money/index.ts';
import type { JobState } from '../../../shared/work/counter/job-state.ts';
import { type StandingBill, stands } from '../../../shared/work/parts/part-needs.ts';
import { creditNote, invoice, job } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

interface BilledJob {
  state: JobState;
  bills: StandingBill[];
}

/** The invoices that stand, with what was credited of them, by job; the one billed first at the head. */
export function standingBills(store: ReadStore, where: SQL | undefined): Map<string, BilledJob> {
  const rows = store
    .select({ id: invoice.id, jobId: job.id, state: job.state, lines: invoice.lines })
    .from(job)
    .innerJoin(invoice, eq(invoice.jobId, job.id))
    .where(where)
    .orderBy(asc(invoice.number))
    .all();
  const notes = creditsOf(
    store,
    rows.map(({ id }) => id),
  );
  const jobs = new Map<string, BilledJob>();
  for (const { id, jobId, state, lines } of rows) {
    const bill = { lines, ...lineCreditsOf(lines, notes.get(id) ?? []) };
    if (!stands(bill)) continue;
    const { bills } = jobs.get(jobId) ?? { bills: [] };
    jobs.set(jobId, { state, bills: [...bills, bill] });
  }
  return jobs;
}

function creditsOf(store: ReadStore, invoiceIds: readonly string[]) {
  if (invoiceIds.length === 0) return new Map<string, never[]>();
  const rows = store
    .select({
      invoiceId: creditNote.invoiceId,
      lines: creditNote.lines,
      lineIndexes: creditNote.lineIndexes,
    })
    .from(creditNote)
    .where(inArray(creditNote.invoiceId, [...invoiceIds]))
    .all();
  return Map.groupBy(rows, ({ invoiceId }) => invoiceId);
}
