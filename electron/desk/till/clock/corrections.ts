import { jobRowById } from '../../../../db/queries/counter/jobs.ts';
import { staffById } from '../../../../db/queries/office.ts';
import { clockEntry, clockedBetween, clockHistory } from '../../../../db/queries/till/clock.ts';
import { type JobCode, jobCode } from '../../../../shared/contract/ids.ts';
import { overlap, wholeMinute } from '../../../../shared/work/till/clock.ts';
import { os } from '../../implementer.ts';
import { badInput, found } from '../../refuse.ts';
import { type Writing, write } from '../../writing.ts';
import { demandSpan, demandWorkKind, enterEvent, entryNow } from './clocking.ts';

interface Clash {
  jobCode: JobCode;
  startedAt: string;
  endedAt: string | null;
}

/** Other time of a person that shares a moment with a span: nobody works on two jobs at once. */
function clashOf(
  { store, at }: Writing,
  {
    entryId,
    ...span
  }: { entryId: string; staffId: string; startedAt: string; endedAt: string | null },
): Clash | undefined {
  const { staffId, startedAt, endedAt } = span;
  // A clock that runs goes on: nothing that begins before now may stand after its start.
  const others = clockedBetween(store, { staffId, from: startedAt, until: endedAt ?? at });
  const other = others.find(
    (each) => each.entryId !== entryId && each.what !== 'struck-out' && overlap(each, span),
  );
  if (other === undefined) return undefined;
  const number = clockHistory(store, [other.entryId]).at(-1)?.jobNumber ?? 0;
  return { jobCode: jobCode(number), startedAt: other.startedAt, endedAt: other.endedAt };
}

export const enterHours = os.till.enterHours.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, at, newId, note } = writing;
    const { staffId, jobId, workKind, startedAt, endedAt, reason } = input;
    const person = found(staffById(store, staffId), 'person');
    found(jobRowById(store, jobId), 'job');
    demandWorkKind(writing, workKind);
    demandSpan(at, startedAt, endedAt);
    const entryId = newId();
    const clash = clashOf(writing, { entryId, staffId, startedAt, endedAt });
    if (clash !== undefined) throw errors.CLOCKED_TWICE({ data: clash });
    enterEvent(writing, {
      entryId,
      what: 'on',
      staffId,
      jobId,
      workKind,
      startedAt,
      endedAt,
      reason,
    });
    note({ job: jobId, person: person.name, startedAt, endedAt, reason });
    return entryNow(writing, entryId);
  }),
);

export const correctHours = os.till.correctHours.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, at, note } = writing;
    const { entryId, jobId, workKind, startedAt, endedAt, reason } = input;
    const before = found(clockEntry(store, entryId), 'clocked time');
    if (before.what === 'struck-out') throw errors.STRUCK_OUT();
    found(jobRowById(store, jobId), 'job');
    if (workKind !== before.workKind) demandWorkKind(writing, workKind);
    demandSpan(at, startedAt, endedAt);
    if (endedAt === null && before.endedAt !== null)
      throw badInput([
        { path: 'endedAt', message: 'This clock is stopped. Enter when, or clock on anew.' },
      ]);
    const { staffId } = before;
    const clash = clashOf(writing, { entryId, staffId, startedAt, endedAt });
    if (clash !== undefined) throw errors.CLOCKED_TWICE({ data: clash });
    enterEvent(writing, {
      ...before,
      what: 'corrected',
      jobId,
      workKind,
      startedAt,
      endedAt,
      reason,
    });
    const entry = entryNow(writing, entryId);
    note({ job: jobId, person: entry.staffName, startedAt, endedAt, reason });
    return entry;
  }),
);

export const strikeOutHours = os.till.strikeOutHours.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, at, note } = writing;
    const before = found(clockEntry(store, input.entryId), 'clocked time');
    if (before.what === 'struck-out') throw errors.STRUCK_OUT();
    // A clock that runs is stopped with it.
    const endedAt = before.endedAt ?? wholeMinute(at);
    enterEvent(writing, { ...before, what: 'struck-out', endedAt, reason: input.reason });
    const entry = entryNow(writing, input.entryId);
    note({ job: entry.jobId, person: entry.staffName, reason: input.reason });
    return entry;
  }),
);
