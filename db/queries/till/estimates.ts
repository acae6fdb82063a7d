import { asc, eq, sql } from 'drizzle-orm';
import type { PaperCard } from '../../../shared/contract/counter/index.ts';
import { EstimateId } from '../../../shared/contract/ids.ts';
import {
  type Approval,
  type Estimate,
  EstimateOption,
  type LimitOverride,
  Line,
  Totals,
} from '../../../shared/contract/till/index.ts';
import { isTypedName } from '../../../shared/work/typed-name.ts';
import { prepared } from '../../prepared.ts';
import { approval, estimate, limitOverride, staff } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { paperIn } from './paper-in.ts';

const estimatesOfJob = prepared((store) =>
  store
    .select({ estimate, byName: staff.name })
    .from(estimate)
    .innerJoin(staff, eq(staff.id, estimate.by))
    .where(eq(estimate.jobId, sql.placeholder('jobId')))
    .orderBy(asc(estimate.revision))
    .prepare(),
);

/** All revisions of a job's estimate, oldest first. */
export const estimatesOf = (
  store: ReadStore,
  jobId: string,
  papers: readonly PaperCard[],
): Estimate[] =>
  estimatesOfJob(store)
    .all({ jobId })
    .map(({ estimate: row, byName }) => {
      const lines = row.lines.map((line) => Line.parse(line));
      const totals = Totals.parse(row.totals);
      const only = { key: 'a', label: '', lines, discount: null, totals };
      return {
        id: EstimateId.parse(row.id),
        number: row.number,
        revision: row.revision,
        options:
          row.options.length === 0 ? [only] : row.options.map((each) => EstimateOption.parse(each)),
        lines,
        totals,
        note: row.note,
        validUntil: row.validUntil,
        writtenBy: byName,
        writtenAt: row.at,
        paper: paperIn(papers, row.paperId),
      };
    });

const approvalsOfJob = prepared((store) =>
  store
    .select({ approval, byName: staff.name, estimateNumber: estimate.number })
    .from(approval)
    .innerJoin(staff, eq(staff.id, approval.by))
    .innerJoin(estimate, eq(estimate.id, approval.estimateId))
    .where(eq(approval.jobId, sql.placeholder('jobId')))
    .orderBy(asc(approval.at), asc(approval.id))
    .prepare(),
);

/** Oldest first. */
export const approvalsOf = (store: ReadStore, jobId: string): Approval[] =>
  approvalsOfJob(store)
    .all({ jobId })
    .map(({ approval: row, byName, estimateNumber }) => ({
      estimateId: EstimateId.parse(row.estimateId),
      estimateNumber,
      option: row.option,
      how: row.how,
      approvedBy: row.approvedBy,
      amount: row.amount,
      declined: row.declined,
      note: row.note,
      takenBy: byName,
      typedBy: row.signature !== null && isTypedName(row.signature) ? byName : null,
      at: row.at,
    }));

const overridesOfJob = prepared((store) =>
  store
    .select({ override: limitOverride, byName: staff.name })
    .from(limitOverride)
    .innerJoin(staff, eq(staff.id, limitOverride.by))
    .where(eq(limitOverride.jobId, sql.placeholder('jobId')))
    .orderBy(asc(limitOverride.at), asc(limitOverride.id))
    .prepare(),
);

/** Oldest first. */
export const overridesOf = (store: ReadStore, jobId: string): LimitOverride[] =>
  overridesOfJob(store)
    .all({ jobId })
    .map(({ override: { amount, reason, at }, byName }) => ({ amount, reason, by: byName, at }));
