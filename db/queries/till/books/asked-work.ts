import { and, asc, desc, eq, notInArray } from 'drizzle-orm';
import { type JobCode, jobCode } from '../../../../shared/contract/ids.ts';
import {
  type DeclinedLine,
  EstimateOption,
  Totals,
} from '../../../../shared/contract/till/index.ts';
import { approval, customer, estimate, job } from '../../../schema/index.ts';
import type { ReadStore } from '../../../store.ts';
import { type Span, within } from './span.ts';

/** What was offered to customers, and what they said to it. */

interface Offered {
  jobId: string;
  jobCode: JobCode;
  customerName: string;
  phone: string;
}

const party = {
  jobId: job.id,
  jobNumber: job.number,
  customerName: customer.name,
  phone: customer.phone,
};

export interface LatestEstimate extends Offered {
  number: string;
  writtenAt: string;
  validUntil: string | null;
  options: { key: string; label: string; total: number }[];
  /** What was approved of it; null when nothing was yet. */
  approved: { option: string; amount: number } | null;
}

/** The newest estimate of each job that is in the shop, the oldest first. */
export function latestEstimates(store: ReadStore): LatestEstimate[] {
  const rows = store
    .select({ estimate, ...party })
    .from(estimate)
    .innerJoin(job, eq(job.id, estimate.jobId))
    .innerJoin(customer, eq(customer.id, job.customerId))
    .where(notInArray(job.state, ['handed-over', 'stopped']))
    .orderBy(asc(estimate.revision))
    .all();
  const newest = [...new Map(rows.map((row) => [row.jobId, row])).values()];
  return newest
    .map(({ estimate: row, jobNumber, ...rest }) => {
      const options = row.options.map((option) => EstimateOption.parse(option));
      const approved = store
        .select({ option: approval.option, amount: approval.amount })
        .from(approval)
        .where(eq(approval.estimateId, row.id))
        .orderBy(desc(approval.at), desc(approval.id))
        .limit(1)
        .get();
      return {
        ...rest,
        jobCode: jobCode(jobNumber),
        number: row.number,
        writtenAt: row.at,
        validUntil: row.validUntil,
        options:
          options.length === 0
            ? [{ key: 'a', label: '', total: Totals.parse(row.totals).total }]
            : options.map(({ key, label, totals }) => ({ key, label, total: totals.total })),
        approved: approved ?? null,
      };
    })
    .sort((a, b) => (a.writtenAt < b.writtenAt ? -1 : 1));
}

export interface DeclinedWork extends Offered, DeclinedLine {
  at: string;
}

/** What customers declined in the last approval of a job, where that was given in a span; oldest first. */
export function declinedWork(store: ReadStore, span: Span): DeclinedWork[] {
  const rows = store
    .select({ approval, ...party })
    .from(approval)
    .innerJoin(job, eq(job.id, approval.jobId))
    .innerJoin(customer, eq(customer.id, job.customerId))
    .where(and(within(approval.at, span)))
    .orderBy(asc(approval.at), asc(approval.id))
    .all();
  const last = [...new Map(rows.map((row) => [row.jobId, row])).values()];
  return last.flatMap(({ approval: { declined, at }, jobNumber, ...rest }) =>
    declined.map((line) => ({ ...rest, ...line, jobCode: jobCode(jobNumber), at })),
  );
}
