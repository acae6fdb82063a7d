/** A step of the build that is passed by a test run, and how the runs of the job stand towards it. */

/** Nothing was run yet; the last run was not passed; it was before the step was reopened; it passes. */
export const RUN_STANDINGS = ['not-run', 'not-passed', 'before-reopening', 'passed'] as const;
export type RunStanding = (typeof RUN_STANDINGS)[number];

/**
 * Whether the runs pass the step. The latest speaks: one that failed afterwards takes back an earlier pass,
 * and a step that was reopened wants a run of its own.
 * @param runs the latest first
 * @param reopenedAt when the step was last reopened, ISO instant; null when it never was
 */
export function runStanding(
  runs: readonly { passed: boolean; at: string }[],
  reopenedAt: string | null,
): RunStanding {
  const [latest] = runs;
  if (latest === undefined) return 'not-run';
  if (!latest.passed) return 'not-passed';
  // A run and a reopening of one instant: the shop's clock can't tell, and the run is there.
  return reopenedAt !== null && latest.at < reopenedAt ? 'before-reopening' : 'passed';
}

/** What the screen says of it. */
export const RUN_STANDING_WORDS: Record<RunStanding, string> = {
  'not-run':
    'It was not run yet. Once a run is signed off as passed, this step can be passed, too.',
  'not-passed': 'The last run was not passed. Mend what it showed, and run it again.',
  'before-reopening': 'This step was reopened after the last run. Run it again.',
  passed: 'The last run was signed off as passed.',
};
