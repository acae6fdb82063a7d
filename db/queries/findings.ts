import { asc, eq } from 'drizzle-orm';
import type { Finding } from '../../shared/contract/bench/index.ts';
import { FindingId } from '../../shared/contract/ids.ts';
import { CHECKS } from '../../shared/work/bench/diagnosis.ts';
import { finding, staff } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';

export interface JobFindings {
  /** In the order of the checks. */
  standing: Finding[];
  /** Those that were corrected since, the latest first. */
  superseded: Finding[];
}

/** What the diagnosis of a job found. */
export function findingsOf(store: ReadStore, jobId: string): JobFindings {
  const rows = store
    .select({ finding, byName: staff.name })
    .from(finding)
    .innerJoin(staff, eq(staff.id, finding.by))
    .where(eq(finding.jobId, jobId))
    .orderBy(asc(finding.at), asc(finding.id))
    .all();
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
