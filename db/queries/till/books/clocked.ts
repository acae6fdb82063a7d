import { asc, eq } from 'drizzle-orm';
import { clockEvent, job, staff } from '../../../schema/index.ts';
import type { ReadStore } from '../../../store.ts';

/** Time that somebody worked on a job and that is over. */
export interface ClockedSpan {
  jobId: string;
  person: string;
  /** What an hour of theirs costs the shop, minor units; zero when nobody has said. */
  hourlyCost: number;
  workKind: string;
  startedAt: string;
  milliseconds: number;
}

/** Clock entries as they stand, by their last event; those that run or were struck out are left out. */
export function clockedSpans(store: ReadStore): ClockedSpan[] {
  const rows = store
    .select({ event: clockEvent, person: staff.name, hourlyCost: staff.hourlyCost })
    .from(clockEvent)
    .innerJoin(staff, eq(staff.id, clockEvent.staffId))
    .innerJoin(job, eq(job.id, clockEvent.jobId))
    .orderBy(asc(clockEvent.id))
    .all();
  const last = new Map(rows.map((row) => [row.event.entryId, row]));
  return [...last.values()].flatMap(({ event, person, hourlyCost }) => {
    const { jobId, workKind, startedAt, endedAt, what } = event;
    if (what === 'struck-out' || endedAt === null) return [];
    const milliseconds = Math.max(0, Date.parse(endedAt) - Date.parse(startedAt));
    return [{ jobId, person, hourlyCost, workKind, startedAt, milliseconds }];
  });
}
