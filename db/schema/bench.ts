import { index, real, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { Verdict } from '../../shared/contract/bench.ts';
import type { SPECIFICATION_UNITS } from '../../shared/contract/specbook.ts';
import type { MeasuredFeature } from '../../shared/work/features.ts';
import type { HoldPointEvent } from '../../shared/work/hold-points.ts';
import type { GaugeKind, Phase } from '../../shared/work/vocabulary.ts';
import { date, id, instant } from './columns.ts';
import { engine, job } from './counter.ts';
import { staff } from './office.ts';
import { specification } from './specbook.ts';

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
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('hold_point_event_job').on(table.jobId)],
);
