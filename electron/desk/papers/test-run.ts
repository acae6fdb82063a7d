import { testRunsOf } from '../../../db/queries/test-runs.ts';
import type { ReadStore } from '../../../db/store.ts';
import { testRunFacts } from '../../../shared/work/bench/test-run-words.ts';
import type { TestRunRecord } from '../../paper/content.ts';

/** What is tried and not measured has one line on paper. */
const TRIED = ['Stop switch', 'Safety interlocks', 'Governor', 'Chain brake', 'Fuel system'];

/** The last run of a job as it stands on the work order; null when it was not run. */
export function lastTestRun(store: ReadStore, jobId: string): TestRunRecord | null {
  const [run] = testRunsOf(store, jobId);
  if (run === undefined) return null;
  const { passed, by, at, findings, speeds, against } = run;
  const facts = testRunFacts(findings, speeds, against);
  const tried = facts.filter(([name]) => TRIED.includes(name));
  const found: [string, string][] = [
    ['Tried', tried.map(([name, words]) => `${name}: ${words.toLowerCase()}`).join(', ')],
    ...facts.filter(([name]) => !TRIED.includes(name)),
  ];
  return {
    passed,
    by,
    at,
    // Ordinary spaces on paper: a program that looks for `1750 rpm` finds it.
    facts: found.map(([name, words]) => ({
      name,
      value: words.replaceAll('\u00a0', ' '),
    })),
  };
}
