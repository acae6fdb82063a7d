import { jobRowById } from '../../../../db/queries/counter/jobs.ts';
import { staffById } from '../../../../db/queries/office.ts';
import {
  type ClockRow,
  clockEntry,
  clockHistory,
  runningClocks,
} from '../../../../db/queries/till/clock.ts';
import { tillRulesOf } from '../../../../db/queries/till/rules.ts';
import { clockEvent } from '../../../../db/schema/index.ts';
import { ClockEntryId, jobCode } from '../../../../shared/contract/ids.ts';
import { type ClockEntry, LONGEST_ENTRY_HOURS } from '../../../../shared/contract/till/index.ts';
import { forgottenBecause, wholeMinute } from '../../../../shared/work/till/clock.ts';
import { os } from '../../implementer.ts';
import { badInput, found } from '../../refuse.ts';
import { type Writing, write } from '../../writing.ts';
import { demandApproval } from '../limit/bill-ahead.ts';
import { entriesOf } from './entries.ts';

/** How this shop asks about clocks, now. */
const rulesOf = ({ store, shop, at }: Writing) => ({
  now: at,
  timeZone: shop.timeZone,
  afterHours: tillRulesOf(store).forgottenAfterHours,
});

/** One more event of an entry. */
export function enterEvent(
  { store, staff, at, newId }: Writing,
  event: Omit<ClockRow, 'id' | 'by' | 'at'>,
): void {
  store
    .insert(clockEvent)
    .values({ ...event, id: newId(), by: staff.id, at })
    .run();
}

/** An entry as it stands after what was just written. */
export function entryNow(writing: Writing, entryId: string): ClockEntry {
  const row = found(clockEntry(writing.store, entryId), 'clocked time');
  return found(entriesOf(writing.store, [row], rulesOf(writing))[0], 'clocked time');
}

/** @throws the declared BAD_INPUT for a kind of work that the shop doesn't have */
export function demandWorkKind({ store }: Writing, workKind: string): void {
  const kinds = tillRulesOf(store).labourRates.map(({ name }) => name);
  if (workKind !== '' && !kinds.includes(workKind))
    throw badInput([
      {
        path: 'workKind',
        message: 'The shop has no such kind of work. Choose one of those it has.',
      },
    ]);
}

/** @throws the declared BAD_INPUT for an end that is not after the start, too late, or too far from it */
export function demandSpan(at: string, startedAt: string, endedAt: string | null): void {
  if (startedAt > at)
    throw badInput([
      { path: 'startedAt', message: 'The start lies ahead. Enter a time that is past.' },
    ]);
  if (endedAt === null) return;
  if (endedAt > at)
    throw badInput([
      { path: 'endedAt', message: 'The end lies ahead. Enter a time that is past.' },
    ]);
  if (endedAt <= startedAt)
    throw badInput([
      { path: 'endedAt', message: 'The end comes after the start. Mend one of them.' },
    ]);
  if (Date.parse(endedAt) - Date.parse(startedAt) > LONGEST_ENTRY_HOURS * 3_600_000)
    throw badInput([
      {
        path: 'endedAt',
        message: 'Nobody works for more than a day at a stretch. Mend the start or the end.',
      },
    ]);
}

/** What a refusal says of an entry that is in the way. */
function inTheWay({ store }: Writing, { entryId, startedAt }: ClockRow) {
  const jobNumber = clockHistory(store, [entryId]).at(-1)?.jobNumber ?? 0;
  return { entryId: ClockEntryId.parse(entryId), jobCode: jobCode(jobNumber), since: startedAt };
}

export const clockOn = os.till.clockOn.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, at, newId, note } = writing;
    const { staffId, jobId, workKind, goesOver } = input;
    const job = found(jobRowById(store, jobId), 'job');
    const person = found(staffById(store, staffId), 'person');
    if (!person.active) throw badInput([{ path: 'staffId', message: 'They no longer work here.' }]);
    if (job.state === 'handed-over') throw errors.JOB_CLOSED();
    demandWorkKind(writing, workKind);
    demandApproval(writing, jobId, errors);
    const running = runningClocks(store).find((clock) => clock.staffId === staffId);
    if (running !== undefined) {
      if (running.jobId === jobId && running.workKind === workKind)
        throw errors.CLOCKED_ON_ALREADY();
      const data = inTheWay(writing, running);
      if (forgottenBecause(running, rulesOf(writing)) !== null)
        throw errors.CLOCK_FORGOTTEN({ data });
      if (!goesOver) throw errors.CLOCK_RUNS({ data });
      enterEvent(writing, { ...running, what: 'off', endedAt: wholeMinute(at), reason: '' });
    }
    const entryId = newId();
    enterEvent(writing, {
      entryId,
      what: 'on',
      staffId,
      jobId,
      workKind,
      startedAt: wholeMinute(at),
      endedAt: null,
      reason: '',
    });
    note({ job: jobId, person: person.name, workKind, left: running?.jobId ?? null });
    return entryNow(writing, entryId);
  }),
);

export const clockOff = os.till.clockOff.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, at, note } = writing;
    const running = found(clockEntry(store, input.entryId), 'clocked time');
    if (running.endedAt !== null || running.what === 'struck-out') throw errors.CLOCK_STOPPED();
    if (input.endedAt === null) {
      if (forgottenBecause(running, rulesOf(writing)) !== null)
        throw errors.CLOCK_FORGOTTEN({ data: inTheWay(writing, running) });
    } else demandSpan(at, running.startedAt, input.endedAt);
    enterEvent(writing, {
      ...running,
      what: 'off',
      endedAt: input.endedAt ?? wholeMinute(at),
      reason: '',
    });
    const entry = entryNow(writing, input.entryId);
    note({ job: entry.jobId, person: entry.staffName, stopped: entry.endedAt });
    return entry;
  }),
);
