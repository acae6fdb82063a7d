import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { z } from 'zod';

export type Took = { file: string; seconds: number };

const VitestTimes = z.object({
  testResults: z.array(z.object({ name: z.string(), startTime: z.number(), endTime: z.number() })),
});

/** How long each file took by vitest's JSON report, preparing and all. */
export const vitestTimes = (report: unknown): Took[] =>
  VitestTimes.parse(report).testResults.map(({ name, startTime, endTime }) => ({
    file: basename(name),
    seconds: (endTime - startTime) / 1000,
  }));

const Suite = z.object({
  file: z.string(),
  specs: z.array(
    z.object({
      tests: z.array(z.object({ results: z.array(z.object({ duration: z.number() })) })),
    }),
  ),
  get suites() {
    return z.array(Suite).optional();
  },
});

const PlaywrightTimes = z.object({ suites: z.array(Suite) });

const secondsOf = ({ specs, suites = [] }: z.infer<typeof Suite>): number =>
  specs
    .flatMap(({ tests }) => tests.flatMap(({ results }) => results))
    .reduce((sum, { duration }) => sum + duration / 1000, 0) +
  suites.reduce((sum, suite) => sum + secondsOf(suite), 0);

/** How long the tests of each file took by Playwright's JSON report, one after another. */
export const playwrightTimes = (report: unknown): Took[] =>
  PlaywrightTimes.parse(report).suites.map((suite) => ({
    file: basename(suite.file),
    seconds: secondsOf(suite),
  }));

/** The files that took longest, in one line; empty when there is no report. */
export function slowestLine(file: string, read: (report: unknown) => Took[]): string {
  try {
    const slowest = read(JSON.parse(readFileSync(file, 'utf8')))
      .sort((a, b) => b.seconds - a.seconds)
      .slice(0, 6)
      .map(({ file: name, seconds }) => `${name} ${seconds.toFixed(0)} s`);
    return slowest.length === 0 ? '' : `        longest: ${slowest.join(', ')}\n`;
  } catch {
    return '';
  }
}
