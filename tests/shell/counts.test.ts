import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { addCounts, closingLine, countsOf, playwrightCounts, vitestCounts } from '../run/counts.ts';
import { playwrightTimes, slowestLine, vitestTimes } from '../run/slowest.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-counts-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function report(content: string): string {
  const file = join(folder, 'report.json');
  writeFileSync(file, content);
  return file;
}

const vitest = { numPassedTests: 5, numFailedTests: 1, numPendingTests: 1, numTodoTests: 1 };

test('both reports are read', () => {
  expect(vitestCounts(vitest)).toEqual({ passed: 5, failed: 1, skipped: 2 });
  const stats = { expected: 4, unexpected: 1, flaky: 1, skipped: 1 };
  expect(playwrightCounts({ stats })).toEqual({ passed: 4, failed: 2, skipped: 1 });
});

test('a step that failed can never count as none failed', () => {
  const green = report(JSON.stringify({ ...vitest, numFailedTests: 0 }));
  expect(countsOf(green, vitestCounts, true).failed).toBe(0);
  expect(countsOf(green, vitestCounts, false).failed).toBe(1);
  expect(countsOf(join(folder, 'absent.json'), vitestCounts, true).failed).toBe(1);
  expect(countsOf(report('{}'), vitestCounts, true).failed).toBe(1);
  expect(countsOf(report(JSON.stringify(vitest)), vitestCounts, false).failed).toBe(1);
});

test('the closing line', () => {
  const sum = addCounts([
    { passed: 5, failed: 0, skipped: 0 },
    { passed: 3, failed: 1, skipped: 0 },
  ]);
  expect(closingLine(sum)).toBe('8 passed, 1 failed');
  expect(closingLine({ ...sum, skipped: 2 })).toBe('8 passed, 1 failed, 2 skipped');
});

test('the files that took longest come first', () => {
  const line = slowestLine(
    report(
      JSON.stringify({
        testResults: [
          { name: '/shop/short.test.ts', startTime: 1_000, endTime: 2_000 },
          { name: '/shop/long.test.ts', startTime: 1_000, endTime: 13_400 },
        ],
      }),
    ),
    vitestTimes,
  );
  expect(line.trim()).toBe('longest: long.test.ts 12 s, short.test.ts 1 s');
  const specs = [{ tests: [{ results: [{ duration: 1_500 }] }] }];
  const browser = { suites: [{ file: 'till.spec.ts', specs, suites: [{ file: '', specs }] }] };
  expect(playwrightTimes(browser)).toEqual([{ file: 'till.spec.ts', seconds: 3 }]);
  expect(slowestLine(join(folder, 'absent.json'), playwrightTimes)).toBe('');
});
