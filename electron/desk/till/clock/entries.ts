import { type ClockRow, clockHistory } from '../../../../db/queries/till/clock.ts';
import type { ReadStore } from '../../../../db/store.ts';
import { ClockEntryId, JobId, jobCode, StaffId } from '../../../../shared/contract/ids.ts';
import type { ClockEntry } from '../../../../shared/contract/till/index.ts';
import { forgottenBecause, spanLasted } from '../../../../shared/work/till/clock.ts';

/** What it takes to say how a clock stands. */
export interface ClockRules {
  now: string;
  timeZone: string;
  afterHours: number;
}

/** Entries as the contract tells of them, with all that became of them, in the order of `rows`. */
export function entriesOf(
  store: ReadStore,
  rows: readonly ClockRow[],
  rules: ClockRules,
): ClockEntry[] {
  const history = Map.groupBy(
    clockHistory(
      store,
      rows.map(({ entryId }) => entryId),
    ),
    ({ event }) => event.entryId,
  );
  return rows.flatMap((row) => {
    const events = history.get(row.entryId) ?? [];
    const last = events.at(-1);
    if (last === undefined) return [];
    const struckOut = row.what === 'struck-out';
    return [
      {
        id: ClockEntryId.parse(row.entryId),
        staffId: StaffId.parse(row.staffId),
        staffName: last.staffName,
        jobId: JobId.parse(row.jobId),
        jobCode: jobCode(last.jobNumber),
        customerName: last.customerName,
        machine: last.machine,
        workKind: row.workKind,
        startedAt: row.startedAt,
        endedAt: row.endedAt,
        minutes: spanLasted(row, rules.now),
        struckOut,
        forgotten: struckOut ? null : forgottenBecause(row, rules),
        changes: events.map(({ event, byName, jobNumber }) => ({
          what: event.what,
          jobCode: jobCode(jobNumber),
          workKind: event.workKind,
          startedAt: event.startedAt,
          endedAt: event.endedAt,
          reason: event.reason,
          by: byName,
          at: event.at,
        })),
      },
    ];
  });
}
