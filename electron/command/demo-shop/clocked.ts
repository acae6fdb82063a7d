import type { StoryLine } from '../../../db/demo/jobs/index.ts';
import { BENCH_WORK } from '../../../db/demo/prices.ts';
import { scatter } from '../../../db/demo/random.ts';
import type { StaffKey } from '../../../db/demo/staff.ts';
import { idOf, type OpenShop } from './set-up.ts';

/** On a job's last day: when its build is told of, and the earliest that anybody comes in. */
export const BUILT_AT = '13:30';
const OPENS_AT = 8 * 60 + 5;

/** Room that a job must have left for somebody to be found at work on it, minutes. */
const ROOM = 120;

const minutesOf = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));

/**
 * When work begins on the last day; null when no labour is sold. It takes less than was sold: whoever needs
 * longer asks the customer first, which is another story.
 */
export function workBegins(lines: readonly StoryLine[], seed: string): string | null {
  const sold = lines.reduce((sum, line) => sum + (line.kind === 'labour' ? line.hours : 0), 0);
  if (sold === 0) return null;
  const takes = Math.round(sold * 60 * (0.55 + scatter(`${seed} clock`)() * 0.4));
  const at = Math.max(OPENS_AT, minutesOf(BUILT_AT) - takes);
  return `${String(Math.floor(at / 60)).padStart(2, '0')}:${String(at % 60).padStart(2, '0')}`;
}

interface Worker {
  jobId: string;
  by: string;
}

/** Clocks somebody on to a job; whoever is on another one goes over. */
export async function clockOn({ desk }: OpenShop, { jobId, by }: Worker): Promise<void> {
  await desk.till.clockOn({ by, staffId: by, jobId, workKind: BENCH_WORK, goesOver: true });
}

/** Clocks somebody off a job as of a time of that day, unless they have gone over to another one. */
export async function clockOff(
  { desk, clock }: OpenShop,
  { jobId, by }: Worker,
  stopped: Date,
): Promise<void> {
  const running = await desk.till.runningClocks({});
  const theirs = running.find((clock) => clock.staffId === by && clock.jobId === jobId);
  if (theirs === undefined) return;
  const known = stopped > new Date(theirs.startedAt) && stopped < clock.now();
  await desk.till.clockOff({
    by,
    entryId: theirs.id,
    endedAt: known ? stopped.toISOString() : null,
  });
}

/** Whoever opens the invented shop finds somebody at work. */
export async function someoneAtWork(shop: OpenShop, who: StaffKey): Promise<void> {
  const by = idOf(shop.staff, who);
  for (const { id: jobId } of await shop.desk.counter.jobs({ states: ['on-the-bench'] })) {
    const { billedHours, minutes } = await shop.desk.till.clockedOnJob({ jobId });
    if ((billedHours * 60) / 1000 - minutes < ROOM) continue;
    await clockOn(shop, { jobId, by });
    return;
  }
}
