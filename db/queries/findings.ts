import { asc, eq, sql } from 'drizzle-orm';
import type { Finding } from '../../shared/contract/bench/index.ts';
import { FindingId } from '../../shared/contract/ids.ts';
import { CHECKS } from '../../shared/work/bench/diagnosis.ts';
import { prepared } from '../prepared.ts';
import { finding, staff } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';

export interface JobFindings {
  /** In the order of the checks. */
  standing: Finding[];
  /** Those that were corrected since, the latest first. */
  superseded: Finding[];
}

const rowsOfJob = prepared((store) =>
  store
    .select({ finding, byName: staff.name })
    .from(finding)
    .innerJoin(staff, eq(staff.id, finding.by))
    .where(eq(finding.jobId, sql.placeholder('jobId')))
    .orderBy(asc(finding.at), asc(finding.id))
    .prepare(),
);

/** What the diagnosis of a job found. */
export function findingsOf(store: ReadStore, jobId: string): JobFindings {
  const rows = rowsOfJob(store).all({ jobId });
  const gone = new Set(rows.map(({ finding: { supersedes } }) => supersedes));
  const all = rows.map(({ finding: { id, jobId: _job, supersedes: _gone, ...row }, byName }) => ({
    ...row,
    id: FindingId.parse(id),
    by: byName,
  }));
  return {
    standing: all
      .filter(({ id }) => !gone.has(id))
      .sort((a, b) => CHECKS.indexOf(a.check) - CHECKS.indexOf(b.check)),
    superseded: all.filter(({ id }) => gone.has(id)).reverse(),
  };
}
