import { z } from 'zod';
import { FORGOTTEN_BECAUSE, wholeMinute } from '../../work/till/clock.ts';
import { CLOCK_EVENTS } from '../../work/vocabulary.ts';
import { reads, writes } from '../base.ts';
import { CalendarDate, Instant, maybeText, text } from '../fields.ts';
import { ClockEntryId, JobCode, JobId, StaffId } from '../ids.ts';
import { LineInput } from './lines.ts';
import { JOB_CLOSED, OVER_APPROVAL } from './refusals.ts';

/** Time: who worked on which job, when, and at what kind of work. One job at a time for a person. */

/** A clock counts whole minutes. */
const ToTheMinute = Instant.transform(wholeMinute);

/** How an entry stood once; the first one is how it began. */
export const ClockChange = z.object({
  what: z.enum(CLOCK_EVENTS),
  jobCode: JobCode,
  workKind: z.string(),
  startedAt: Instant,
  endedAt: Instant.nullable(),
  reason: z.string(),
  by: z.string(),
  at: Instant,
});
export type ClockChange = z.infer<typeof ClockChange>;

/** A person's time on a job, from clocking on to clocking off, as it stands. */
export const ClockEntry = z.object({
  id: ClockEntryId,
  staffId: StaffId,
  staffName: z.string(),
  jobId: JobId,
  jobCode: JobCode,
  customerName: z.string(),
  /** Kind, make and model in one line. */
  machine: z.string(),
  /** One of the shop's kinds of work; empty for work at the shop's one rate. */
  workKind: z.string(),
  startedAt: Instant,
  /** Null while it runs. */
  endedAt: Instant.nullable(),
  /** From the start to the end, or to now; clocks count whole minutes. */
  minutes: z.int(),
  struckOut: z.boolean(),
  /** Why somebody should be asked about it; null when it is not running or nothing is odd. */
  forgotten: z.enum(FORGOTTEN_BECAUSE).nullable(),
  /** What became of it, oldest first. */
  changes: z.array(ClockChange),
});
export type ClockEntry = z.infer<typeof ClockEntry>;

const ClockedKind = z.object({
  workKind: z.string(),
  minutes: z.int(),
  /** Thousandths of an hour, rounded once for all of it. */
  hours: z.int(),
});

export const ClockedOnJob = z.object({
  /** Struck-out ones too, oldest first. */
  entries: z.array(ClockEntry),
  byKind: z.array(ClockedKind),
  minutes: z.int(),
  /** Thousandths of an hour of labour that the latest estimate or the invoice holds. */
  billedHours: z.int(),
  /** The clocked time as lines, one for each kind of work, at its rate; running clocks are not in it. */
  lines: z.array(LineInput),
});
export type ClockedOnJob = z.infer<typeof ClockedOnJob>;

const Day = z.object({ date: CalendarDate, minutes: z.int() });

export const ClockedHours = z.object({
  from: CalendarDate,
  until: CalendarDate,
  people: z.array(
    z.object({
      staffId: StaffId,
      name: z.string(),
      minutes: z.int(),
      /** Every day of the period; time over midnight stands on the day it was worked. */
      days: z.array(Day),
    }),
  ),
  /** Every entry that touches the period, struck-out ones too, oldest first. */
  entries: z.array(ClockEntry),
});
export type ClockedHours = z.infer<typeof ClockedHours>;

const CLOCK_RUNS = {
  status: 409,
  message:
    'This person’s clock runs on another job or kind of work. Say that they go over, and it is stopped there.',
  data: z.object({ entryId: ClockEntryId, jobCode: JobCode, since: Instant }),
} as const;

const CLOCK_FORGOTTEN = {
  status: 409,
  message:
    'This clock has run for too long: it was probably forgotten. Ask when the work stopped, and enter that time.',
  data: z.object({ entryId: ClockEntryId, jobCode: JobCode, since: Instant }),
} as const;

const CLOCKED_TWICE = {
  status: 409,
  message:
    'That time overlaps with other time of the same person. Correct the other entry first, or choose other times.',
  data: z.object({ jobCode: JobCode, startedAt: Instant, endedAt: Instant.nullable() }),
} as const;

const STRUCK_OUT = {
  status: 409,
  message: 'This entry is struck out. Enter the hours anew instead.',
} as const;

/** The longest time that one entry may hold, hours. */
export const LONGEST_ENTRY_HOURS = 24;

export const clock = {
  /** Clocks that run now. */
  runningClocks: reads.input(z.strictObject({})).output(z.array(ClockEntry)),

  clockedOnJob: reads.input(z.strictObject({ jobId: JobId })).output(ClockedOnJob),

  /** Hours by person and day; at most a year. */
  clockedHours: reads
    .input(z.strictObject({ from: CalendarDate, until: CalendarDate }))
    .output(ClockedHours),

  clockOn: writes
    .errors({
      JOB_CLOSED,
      OVER_APPROVAL,
      CLOCK_RUNS,
      CLOCK_FORGOTTEN,
      CLOCKED_ON_ALREADY: {
        status: 409,
        message: 'This person is clocked on to that job already. Nothing needs doing.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        /** Whose clock it is. */
        staffId: StaffId,
        jobId: JobId,
        workKind: maybeText(60),
        /** Stops the clock that runs elsewhere. */
        goesOver: z.boolean().default(false),
      }),
    )
    .output(ClockEntry),

  clockOff: writes
    .errors({
      CLOCK_FORGOTTEN,
      CLOCK_STOPPED: {
        status: 409,
        message: 'This clock is stopped already. Correct the entry if its times are wrong.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        entryId: ClockEntryId,
        /** When the work really stopped, for a clock that was forgotten; null for now. */
        endedAt: ToTheMinute.nullable().default(null),
      }),
    )
    .output(ClockEntry),

  /** Hours that nobody clocked, entered afterwards. */
  enterHours: writes
    .errors({ CLOCKED_TWICE })
    .input(
      z.strictObject({
        by: StaffId,
        staffId: StaffId,
        jobId: JobId,
        workKind: maybeText(60),
        startedAt: ToTheMinute,
        endedAt: ToTheMinute,
        reason: text(300),
      }),
    )
    .output(ClockEntry),

  /** How it was before stays on record. */
  correctHours: writes
    .errors({ CLOCKED_TWICE, STRUCK_OUT })
    .input(
      z.strictObject({
        by: StaffId,
        entryId: ClockEntryId,
        jobId: JobId,
        workKind: maybeText(60),
        startedAt: ToTheMinute,
        /** Null only while the clock runs. */
        endedAt: ToTheMinute.nullable(),
        reason: text(300),
      }),
    )
    .output(ClockEntry),

  /** It counts no more, and stays on record. */
  strikeOutHours: writes
    .errors({ STRUCK_OUT })
    .input(z.strictObject({ by: StaffId, entryId: ClockEntryId, reason: text(300) }))
    .output(ClockEntry),
};
