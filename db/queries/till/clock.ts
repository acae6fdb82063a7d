import { and, asc, eq, gt, gte, inArray, isNull, lt, ne, or, type SQL, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/sqlite-core';
import { LONGEST_ENTRY_HOURS } from '../../../shared/contract/till/index.ts';
import { clockEvent, customer, job, machine, staff } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { machineInWords } from '../counter/jobs.ts';

/** Clocked time. An entry stands as its last event says. */

export type ClockRow = typeof clockEvent.$inferSelect;

/** No later event of the same entry is there. Ids sort as they were made. */
const stands = sql`NOT EXISTS (SELECT 1 FROM clock_event later WHERE later.entry_id = ${clockEvent.entryId} AND later.id > ${clockEvent.id})`;

const standing = (store: ReadStore, where: SQL | undefined): ClockRow[] =>
  store
    .select()
    .from(clockEvent)
    .where(and(where, stands))
    .orderBy(asc(clockEvent.startedAt), asc(clockEvent.id))
    .all();

/** Clocks that run now. */
export const runningClocks = (store: ReadStore): ClockRow[] =>
  standing(store, and(isNull(clockEvent.endedAt), ne(clockEvent.what, 'struck-out')));

export const clockEntry = (store: ReadStore, entryId: string): ClockRow | undefined =>
  standing(store, eq(clockEvent.entryId, entryId))[0];

/** All entries of a job, struck-out ones too, oldest first. */
export const clockedOn = (store: ReadStore, jobId: string): ClockRow[] =>
  standing(store, eq(clockEvent.jobId, jobId));

/**
 * All entries that share a moment with a period, struck-out ones too, oldest first; those of one person when
 * one is given.
 * @param period UTC instants, ISO 8601
 */
export function clockedBetween(
  store: ReadStore,
  { from, until, staffId }: { from: string; until: string; staffId?: string },
): ClockRow[] {
  // No entry is longer than that, but for the hour by which summer time ends.
  const earliest = new Date(Date.parse(from) - (LONGEST_ENTRY_HOURS + 1) * 3_600_000).toISOString();
  return standing(
    store,
    and(
      staffId === undefined ? undefined : eq(clockEvent.staffId, staffId),
      lt(clockEvent.startedAt, until),
      or(
        isNull(clockEvent.endedAt),
        and(gte(clockEvent.startedAt, earliest), gt(clockEvent.endedAt, from)),
      ),
    ),
  );
}

const worker = alias(staff, 'worker');
const writer = alias(staff, 'writer');

/** Every event of some entries with the names of who and what it is about, oldest first. */
export const clockHistory = (store: ReadStore, entryIds: readonly string[]) =>
  store
    .select({
      event: clockEvent,
      staffName: worker.name,
      byName: writer.name,
      jobNumber: job.number,
      customerName: customer.name,
      machineKind: machine.kind,
      make: machine.make,
      model: machine.model,
    })
    .from(clockEvent)
    .innerJoin(worker, eq(worker.id, clockEvent.staffId))
    .innerJoin(writer, eq(writer.id, clockEvent.by))
    .innerJoin(job, eq(job.id, clockEvent.jobId))
    .innerJoin(customer, eq(customer.id, job.customerId))
    .innerJoin(machine, eq(machine.id, job.machineId))
    .where(inArray(clockEvent.entryId, [...entryIds]))
    .orderBy(asc(clockEvent.id))
    .all()
    .map(({ machineKind, make, model, ...row }) => ({
      ...row,
      machine: machineInWords(machineKind, { make, model }),
    }));

/** What an hour of each person costs the shop, by their id; zero when nobody has said. */
export const hourlyCosts = (store: ReadStore): ReadonlyMap<string, number> =>
  new Map(
    store
      .select({ id: staff.id, hourlyCost: staff.hourlyCost })
      .from(staff)
      .all()
      .map((row) => [row.id, row.hourlyCost]),
  );
