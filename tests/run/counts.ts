import { readFileSync } from 'node:fs';
import { z } from 'zod';

export type Counts = { passed: number; failed: number; skipped: number };

const VitestReport = z.object({
  numPassedTests: z.int(),
  numFailedTests: z.int(),
  numPendingTests: z.int(),
  numTodoTests: z.int(),
});

const PlaywrightReport = z.object({
  stats: z.object({
    expected: z.int(),
    unexpected: z.int(),
    flaky: z.int(),
    skipped: z.int(),
  }),
});

/** Counts from vitest's JSON report. */
export function vitestCounts(report: unknown): Counts {
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } =
    VitestReport.parse(report);
  return {
    passed: numPassedTests,
    failed: numFailedTests,
    skipped: numPendingTests + numTodoTests,
  };
}

/** Counts from Playwright's JSON report. A test that passed only on a second try has failed. */
export function playwrightCounts(report: unknown): Counts {
  const { expected, unexpected, flaky, skipped } = PlaywrightReport.parse(report).stats;
  return { passed: expected, failed: unexpected + flaky, skipped };
}

/**
 * Counts for a step that ended. A step that failed without a failed test (it never got that far, or
 * left no report) counts as one failure, so that the last line can't look better than the run was.
 */
export function countsOf(
  file: string,
  read: (report: unknown) => Counts,
  stepPassed: boolean,
): Counts {
  let counts: Counts = { passed: 0, failed: 0, skipped: 0 };
  let wasRead = false;
  try {
    counts = read(JSON.parse(readFileSync(file, 'utf8')));
    wasRead = true;
  } catch {
    // Told by the failure that follows.
  }
  const failedOtherwise = (!stepPassed || !wasRead) && counts.failed === 0;
  return failedOtherwise ? { ...counts, failed: 1 } : counts;
}

export function addCounts(all: readonly Counts[]): Counts {
  return all.reduce(
    (sum, one) => ({
      passed: sum.passed + one.passed,
      failed: sum.failed + one.failed,
      skipped: sum.skipped + one.skipped,
    }),
    { passed: 0, failed: 0, skipped: 0 },
  );
}

/** The last line of a test run. */
export function closingLine({ passed, failed, skipped }: Counts): string {
  const line = `${passed} passed, ${failed} failed`;
  return skipped > 0 ? `${line}, ${skipped} skipped` : line;
}
