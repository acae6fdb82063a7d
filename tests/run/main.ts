import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { addCounts, closingLine, countsOf, playwrightCounts, vitestCounts } from './counts.ts';
import { provide } from './provisions.ts';
import { playwrightTimes, slowestLine, vitestTimes } from './slowest.ts';
import { root, runLane, runStep, type Step, type StepOutcome } from './step.ts';

const reports = join(root, 'test-results');
const vitestReport = join(reports, 'vitest.json');
const browserReport = join(reports, 'browser.json');

const checks: Step[] = [
  { name: 'format and lint', command: 'biome', args: ['check', '--error-on-warnings', '.'] },
  {
    name: 'who may import whom',
    command: 'biome',
    args: ['lint', '--only=style/noRestrictedImports', '.'],
  },
  { name: 'types', command: 'tsc', args: ['--noEmit'] },
  { name: 'dead code', command: 'knip', args: [] },
  { name: 'build', command: process.execPath, args: ['electron/launch/build-all.ts'] },
];

const tests: Step = {
  name: 'tests',
  command: 'vitest',
  args: ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${vitestReport}`],
};

const browserTests: Step = {
  name: 'browser tests',
  command: 'playwright',
  args: ['test'],
  environment: { PLAYWRIGHT_JSON_OUTPUT_FILE: browserReport },
};

function tell({ name, passed, seconds, output }: StepOutcome): void {
  process.stdout.write(`${passed ? 'passed' : 'FAILED'}  ${name} (${seconds.toFixed(1)} s)\n`);
  if (!passed) process.stdout.write(`${output.trimEnd()}\n\n`);
}

async function runEverything(): Promise<void> {
  const begun = Date.now();
  rmSync(reports, { recursive: true, force: true });
  mkdirSync(reports, { recursive: true });
  for (const sentence of await provide()) process.stdout.write(`${sentence}\n`);

  // Two at a time, then the browser tests alone: they have two workers of their own.
  const [checked, [tested]] = await Promise.all([runLane(checks, tell), runLane([tests], tell)]);
  process.stdout.write(slowestLine(vitestReport, vitestTimes));
  const browsed = await runStep(browserTests);
  tell(browsed);
  process.stdout.write(slowestLine(browserReport, playwrightTimes));

  const counts = addCounts([
    countsOf(vitestReport, vitestCounts, tested?.passed ?? false),
    countsOf(browserReport, playwrightCounts, browsed.passed),
    { passed: 0, failed: checked.filter(({ passed }) => !passed).length, skipped: 0 },
  ]);
  process.stdout.write(`\nIt took ${Math.round((Date.now() - begun) / 1000)} s.\n`);
  process.stdout.write(`${closingLine(counts)}\n`);
  process.exitCode = counts.failed === 0 && counts.passed > 0 ? 0 : 1;
}

await runEverything();
