import { sql } from 'drizzle-orm';
import { index, integer, real, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { Signature } from '../../shared/contract/fields.ts';
import type { PassableMatter } from '../../shared/work/counter/handover-matters.ts';
import type { IntakeFacts } from '../../shared/work/counter/intake-facts.ts';
import type { JobState } from '../../shared/work/counter/job-state.ts';
import type { ApprovalWay, MachineKind, ReachBy, Symptom } from '../../shared/work/vocabulary.ts';
import { date, flag, id, instant, json, minor } from './columns.ts';
import { issuedPaper, staff } from './office.ts';
import { engineModel } from './specbook.ts';

export const customer = sqliteTable(
  'customer',
  {
    id: id(),
    number: integer('number').notNull(),
    name: text('name').notNull(),
    phone: text('phone').notNull(),
    phoneInternational: text('phone_international').notNull(),
    email: text('email').notNull(),
    address: text('address').notNull(),
    reachBy: text('reach_by').$type<ReachBy>().notNull(),
    note: text('note').notNull(),
    since: instant('since').notNull(),
    /** Name, number, telephone and e-mail folded for search. */
    searchText: text('search_text').notNull(),
  },
  (table) => [uniqueIndex('customer_number').on(table.number)],
);

export const machine = sqliteTable(
  'machine',
  {
    id: id(),
    customerId: text('customer_id')
      .notNull()
      .references(() => customer.id),
    kind: text('kind').$type<MachineKind>().notNull(),
    make: text('make').notNull(),
    model: text('model').notNull(),
    serial: text('serial').notNull(),
    /** Make and serial folded, or null without a serial: two machines can't share one. */
    serialKey: text('serial_key'),
    searchText: text('search_text').notNull(),
  },
  (table) => [
    index('machine_customer').on(table.customerId),
    uniqueIndex('machine_serial').on(table.serialKey),
  ],
);

export const engine = sqliteTable(
  'engine',
  {
    id: id(),
    machineId: text('machine_id')
      .notNull()
      .references(() => machine.id),
    make: text('make').notNull(),
    model: text('model').notNull(),
    typeCode: text('type_code').notNull(),
    serial: text('serial').notNull(),
    dateCode: text('date_code').notNull(),
    engineModelId: text('engine_model_id').references(() => engineModel.id),
  },
  (table) => [uniqueIndex('engine_machine').on(table.machineId)],
);

export const job = sqliteTable(
  'job',
  {
    id: id(),
    number: integer('number').notNull(),
    customerId: text('customer_id')
      .notNull()
      .references(() => customer.id),
    machineId: text('machine_id')
      .notNull()
      .references(() => machine.id),
    engineId: text('engine_id')
      .notNull()
      .references(() => engine.id),
    state: text('state').$type<JobState>().notNull(),
    stateSince: instant('state_since').notNull(),
    stateNote: text('state_note').notNull(),
    complaint: text('complaint').notNull(),
    symptoms: json<Symptom[]>('symptoms').notNull(),
    condition: text('condition').notNull(),
    leftWith: json<string[]>('left_with').notNull(),
    fuel: text('fuel').notNull(),
    lastService: text('last_service').notNull(),
    reachBy: text('reach_by').$type<ReachBy>().notNull(),
    diagnosisFee: minor('diagnosis_fee'),
    spendingLimit: minor('spending_limit'),
    depositAgreed: minor('deposit_agreed'),
    /** As it is promised now: `job_promise` says how it came to that. */
    promisedFor: date('promised_for'),
    /** Running hours of the engine when it came in, from its meter or the customer; null when nobody knows. */
    engineHours: real('engine_hours'),
    takenInAt: instant('taken_in_at').notNull(),
    /** The same day in the shop's time zone, as the customer remembers it. */
    takenInOn: date('taken_in_on').notNull(),
    takenInBy: text('taken_in_by')
      .notNull()
      .references(() => staff.id),
    intakeSignature: json<Signature>('intake_signature').notNull(),
    workDone: text('work_done').notNull(),
    /** Why nobody may run the machine as it stands; empty for one that may be run. */
    doNotRun: text('do_not_run').notNull().default(''),
    /** Where to look for parts that are billed and not issued; how many of which, the bill and the ledger say. */
    partsToIssue: flag('parts_to_issue').notNull().default(false),
    searchText: text('search_text').notNull(),
  },
  (table) => [
    uniqueIndex('job_number').on(table.number),
    index('job_customer').on(table.customerId),
    index('job_machine').on(table.machineId),
    index('job_state').on(table.state, table.promisedFor),
    index('job_parts_to_issue').on(table.id).where(sql`${table.partsToIssue} = 1`),
  ],
);

/** Append-only: every move of a job from state to state. */
export const jobMove = sqliteTable(
  'job_move',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    to: text('to_state').$type<JobState>().notNull(),
    at: instant('at').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    note: text('note').notNull(),
  },
  (table) => [index('job_move_job').on(table.jobId)],
);

/** Append-only: a promise that was given after intake, in place of the one before. */
export const jobPromise = sqliteTable(
  'job_promise',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    promisedFor: date('promised_for').notNull(),
    /** What was promised before; null for no date. */
    former: date('former'),
    reason: text('reason').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('job_promise_job').on(table.jobId)],
);

/** Append-only: the customer was told of a new promise. One that has none here is still to be told. */
export const promiseTold = sqliteTable(
  'promise_told',
  {
    id: id(),
    promiseId: text('promise_id')
      .notNull()
      .references(() => jobPromise.id),
    how: text('how').$type<ApprovalWay>().notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [uniqueIndex('promise_told_promise').on(table.promiseId)],
);

/** Append-only: what was written at intake and was mended since. */
export const intakeAmendment = sqliteTable(
  'intake_amendment',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    reason: text('reason').notNull(),
    /** As it was before. */
    former: json<IntakeFacts>('former').notNull(),
    /** The claim ticket that says it anew; null when nothing that stands on it changed. */
    paperId: text('paper_id').references(() => issuedPaper.id),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('intake_amendment_job').on(table.jobId)],
);

/** Append-only: what was not settled when a machine went out, and why it went out nevertheless. */
export const handoverMatter = sqliteTable(
  'handover_matter',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    matter: text('matter').$type<PassableMatter>().notNull(),
    /** As whoever handed over read it. */
    says: text('says').notNull(),
    items: json<string[]>('items').notNull(),
    reason: text('reason').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('handover_matter_job').on(table.jobId)],
);
