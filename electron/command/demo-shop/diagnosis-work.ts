import type { StoryFinding } from '../../../db/demo/jobs/findings.ts';
import type { OpenShop } from './set-up.ts';

/** Notes what a diagnosis found, check by check. */
export async function noteFindings(
  { desk }: OpenShop,
  { jobId, by }: { jobId: string; by: string },
  findings: readonly StoryFinding[],
): Promise<void> {
  for (const { figures = [], work = [], ...finding } of findings)
    await desk.bench.noteFinding({
      by,
      jobId,
      ...finding,
      figures: figures.map((figure, index) => ({ cylinder: index + 1, ...figure })),
      work: [...work],
    });
}
