import { testRunsOf } from '../../../db/queries/test-runs.ts';
import type { ReadStore } from '../../../db/store.ts';
import { testRunFacts } from '../../../shared/work/test-run-words.ts';
import type { TestRunRecord } from '../../paper/content.ts';

/** The last run of a job as it stands on the work order; null when it was not run. */
export function lastTestRun(store: ReadStore, jobId: string): TestRunRecord | null {
  const [run] = testRunsOf(store, jobId);
  if (run === undefined) return null;
  const { passed, by, at, findings, speeds } = run;
  return {
    passed,
    by,
    at,
    // Ordinary spaces on paper: a program that looks for `1750 rpm` finds it.
    facts: testRunFacts(findings, speeds).map(([name, words]) => ({
      name,
      value: words.replaceAll('\u00a0', ' '),
    })),
  };
}
