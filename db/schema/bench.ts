import {
  blob,
  index,
  integer,
  real,
  sqliteTable,
  text,
  uniqueIndex,
} from 'drizzle-orm/sqlite-core';
import type { Verdict } from '../../shared/contract/bench/index.ts';
import type { SPECIFICATION_UNITS } from '../../shared/contract/specbook.ts';
import type { BuildStep } from '../../shared/work/bench/build-steps.ts';
import type {
  DecisionChoice,
  DecisionSubject,
} from '../../shared/work/bench/deciding/decisions.ts';
import type { Check, CheckFigure, Found, WorkWanted } from '../../shared/work/bench/diagnosis.ts';
import type { HoldPointEvent } from '../../shared/work/bench/hold-points.ts';
import type { KeptTestRun } from '../../shared/work/bench/test-run.ts';
import type { WorkArea, WorkKind } from '../../shared/work/bench/work/kinds-of-work.ts';
import type { MeasuredFeature } from '../../shared/work/features.ts';
import type { GaugeKind, Phase } from '../../shared/work/vocabulary.ts';
import { date, flag, id, instant, json } from './columns.ts';
import { engine, job } from './counter.ts';
import { staff } from './office.ts';
import { engineModel, specification } from './specbook.ts';

type Unit = (typeof SPECIFICATION_UNITS)[number];

export const gauge = sqliteTable(
  'gauge',
  {
    id: id(),
    name: text('name').notNull(),
    kind: text('kind').$type<GaugeKind>().notNull(),
    unit: text('unit').$type<Unit>().notNull(),
    rangeLow: real('range_low').notNull(),
    rangeHigh: real('range_high').notNull(),
    resolution: real('resolution').notNull(),
    maxError: real('max_error').notNull(),
    calibratedOn: date('calibrated_on'),
    calibrationDue: date('calibration_due'),
    certificate: text('certificate').notNull(),
    /** Of a torque wrench: from the square drive to the mark on the grip, mm. */
    length: real('length'),
  },
  (table) => [uniqueIndex('gauge_name').on(table.name)],
);

/** Append-only: a correction is a new reading that names the one it supersedes. */
export const reading = sqliteTable(
  'reading',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    engineId: text('engine_id')
      .notNull()
      .references(() => engine.id),
    feature: text('feature').$type<MeasuredFeature>().notNull(),
    place: text('place').notNull(),
    placeLabel: text('place_label').notNull(),
    phase: text('phase').$type<Phase>().notNull(),
    /** As typed. */
    text: text('text').notNull(),
    unit: text('unit').$type<Unit>().notNull(),
    value: real('value').notNull(),
    valueBase: real('value_base').notNull(),
    gaugeId: text('gauge_id').references(() => gauge.id),
    gaugeRemark: text('gauge_remark').notNull(),
    uncertaintyBase: real('uncertainty_base').notNull(),
    temperature: real('temperature'),
    /** Where the engine stood: for valve lash, the compression stroke at or just past top dead centre. */
    position: text('position'),
    /** The revision it was held against, and the band of the place at that moment, base unit. */
    specificationId: text('specification_id').references(() => specification.id),
    low: real('low'),
    high: real('high'),
    verdict: text('verdict').$type<Verdict>().notNull(),
    conformance: real('conformance'),
    slipKind: text('slip_kind').$type<'decimal' | 'inch' | 'foot-inch'>(),
    slipLikely: real('slip_likely'),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
    supersedes: text('supersedes'),
  },
  (table) => [
    index('reading_job').on(table.jobId),
    index('reading_engine').on(table.engineId, table.feature),
    uniqueIndex('reading_supersedes').on(table.supersedes),
  ],
);

/** Append-only: passed, overridden, reopened; the last one decides. */
export const holdPointEvent = sqliteTable(
  'hold_point_event',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    key: text('key').notNull(),
    outcome: text('outcome').$type<HoldPointEvent['outcome']>().notNull(),
    reason: text('reason').notNull(),
    /** What the step asked for besides a tick: a quantity, the colours of a wire, a photo's id. */
    detail: text('detail').notNull().default(''),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('hold_point_event_job').on(table.jobId)],
);

/** Append-only: a gauge was checked. After a bad one it is out of use until a good one. */
export const gaugeCheck = sqliteTable(
  'gauge_check',
  {
    id: id(),
    gaugeId: text('gauge_id')
      .notNull()
      .references(() => gauge.id),
    on: date('checked_on').notNull(),
    good: flag('good').notNull(),
    certificate: text('certificate').notNull(),
    dueOn: date('due_on'),
    note: text('note').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('gauge_check_gauge').on(table.gaugeId)],
);

/** Append-only: what is to become of a part, and who said so; a changed mind supersedes. */
export const decision = sqliteTable(
  'decision',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    subject: text('subject').$type<DecisionSubject>().notNull(),
    cylinder: integer('cylinder').notNull(),
    choice: text('choice').$type<DecisionChoice>().notNull(),
    /** Over or under the nominal size, mm; for the next oversize and undersize only. */
    step: real('step'),
    /** What the machine shop is to bring it to, mm. */
    machineToLow: real('machine_to_low'),
    machineToHigh: real('machine_to_high'),
    reason: text('reason').notNull(),
    supersedes: text('supersedes'),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [
    index('decision_job').on(table.jobId),
    uniqueIndex('decision_supersedes').on(table.supersedes),
  ],
);

/** Append-only: a build sheet of an engine model (or of every engine, without one), by revision. */
export const buildSheet = sqliteTable(
  'build_sheet',
  {
    id: id(),
    engineModelId: text('engine_model_id').references(() => engineModel.id),
    revision: integer('revision').notNull(),
    steps: json<BuildStep[]>('steps').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('build_sheet_model').on(table.engineModelId, table.revision)],
);

/** The steps that a job is built by: taken over once, so that a later revision changes no job. */
export const jobBuild = sqliteTable('job_build', {
  jobId: text('job_id')
    .primaryKey()
    .references(() => job.id),
  buildSheetId: text('build_sheet_id').references(() => buildSheet.id),
  steps: json<BuildStep[]>('steps').notNull(),
  /** Null while nobody said: it is held for a rebuild then, so that no step is lost. */
  work: text('work').$type<WorkKind>(),
  /** What a repair touches. */
  touched: json<WorkArea[]>('touched').notNull().default([]),
  /** Why it became another kind of work after the first step was done. */
  workReason: text('work_reason').notNull().default(''),
  at: instant('at').notNull(),
});

/** Append-only: one bolt pulled to one stage, with which wrench and which setting. */
export const torquePull = sqliteTable(
  'torque_pull',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    feature: text('feature').$type<MeasuredFeature>().notNull(),
    /** Counts up when a sequence is begun anew. */
    round: integer('round').notNull(),
    stage: integer('stage').notNull(),
    bolt: integer('bolt').notNull(),
    gaugeId: text('gauge_id').references(() => gauge.id),
    /** What the wrench was set to, in its own unit, and the extension on it (mm, degrees). */
    setting: real('setting').notNull(),
    settingUnit: text('setting_unit').$type<Unit>().notNull(),
    extension: real('extension').notNull(),
    angle: real('angle').notNull(),
    /** The wrench's own lever that the setting was worked out with, mm; null without an extension. */
    wrenchLength: real('wrench_length'),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('torque_pull_job').on(table.jobId)],
);

/** Append-only: what a test run showed, signed off by whoever ran it. */
export const testRun = sqliteTable(
  'test_run',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    findings: json<KeptTestRun>('findings').notNull(),
    passed: flag('passed').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('test_run_job').on(table.jobId)],
);

/** Append-only: what a check of the diagnosis found; a correction supersedes. */
export const finding = sqliteTable(
  'finding',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    check: text('checked').$type<Check>().notNull(),
    found: text('found').$type<Found>().notNull(),
    figures: json<CheckFigure[]>('figures').notNull(),
    words: text('words').notNull(),
    work: json<WorkWanted[]>('work').notNull(),
    supersedes: text('supersedes'),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [
    index('finding_job').on(table.jobId),
    uniqueIndex('finding_supersedes').on(table.supersedes),
  ],
);

/** Append-only: a photo of a job, byte for byte. */
export const photo = sqliteTable(
  'photo',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    /** What it shows: a feature, a step's key, or the machine as it came. */
    subject: text('subject').notNull(),
    caption: text('caption').notNull(),
    mediaType: text('media_type').notNull(),
    bytes: blob('bytes', { mode: 'buffer' }).notNull(),
    sha256: text('sha256').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('photo_job').on(table.jobId)],
);
