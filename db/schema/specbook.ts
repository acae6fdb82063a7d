import {
  type AnySQLiteColumn,
  blob,
  index,
  integer,
  real,
  sqliteTable,
  text,
  uniqueIndex,
} from 'drizzle-orm/sqlite-core';
import type { Fastener, SPECIFICATION_UNITS } from '../../shared/contract/specbook.ts';
import type { Feature } from '../../shared/work/features.ts';
import type { Cycle, SourceKind, ValveLayout } from '../../shared/work/vocabulary.ts';
import { date, id, instant, json } from './columns.ts';
import { staff } from './office.ts';

/** As it is kept: those from before the source's own designation was written down have none. */
type KeptFastener = Omit<Fastener, 'designation'> & { designation?: string };

export const engineModel = sqliteTable(
  'engine_model',
  {
    id: id(),
    make: text('make').notNull(),
    model: text('model').notNull(),
    cycle: text('cycle').$type<Cycle>().notNull(),
    cylinders: integer('cylinders').notNull(),
    bore: real('bore'),
    stroke: real('stroke'),
    /** Null for an engine without valves, and where nobody said. */
    valves: text('valves').$type<ValveLayout>(),
    /** What the crankcase holds to the mark, ml. */
    oilAmount: real('oil_amount'),
    /** As the manual names it, `SAE 30`; of a two-stroke, the oil for its fuel. */
    oilGrade: text('oil_grade').notNull().default(''),
    /** Parts of fuel to one part of oil; null for what is lubricated by its sump. */
    fuelRatio: real('fuel_ratio'),
    /** Designation of the spark plug. */
    plug: text('plug').notNull().default(''),
    note: text('note').notNull(),
    /** The family's entry: what this one does not state itself, it takes from there. */
    variantOf: text('variant_of').references((): AnySQLiteColumn => engineModel.id),
    /** Make and model folded: one entry for one engine. */
    modelKey: text('model_key').notNull(),
    searchText: text('search_text').notNull(),
  },
  (table) => [uniqueIndex('engine_model_key').on(table.modelKey)],
);

export const source = sqliteTable('source', {
  id: id(),
  kind: text('kind').$type<SourceKind>().notNull(),
  title: text('title').notNull(),
  edition: text('edition').notNull(),
  date: date('date'),
});

/** Append-only: a changed specification is a new revision; a reading keeps the one it was held against. */
export const specification = sqliteTable(
  'specification',
  {
    id: id(),
    engineModelId: text('engine_model_id')
      .notNull()
      .references(() => engineModel.id),
    feature: text('feature').$type<Feature>().notNull(),
    revision: integer('revision').notNull(),
    low: text('low').notNull(),
    high: text('high').notNull(),
    aim: text('aim').notNull(),
    wearLimit: text('wear_limit').notNull(),
    unit: text('unit').$type<(typeof SPECIFICATION_UNITS)[number]>().notNull(),
    lowBase: real('low_base'),
    highBase: real('high_base'),
    aimBase: real('aim_base'),
    wearLimitBase: real('wear_limit_base'),
    condition: text('condition').notNull(),
    sourceId: text('source_id')
      .notNull()
      .references(() => source.id),
    page: text('page').notNull(),
    fastener: json<KeptFastener>('fastener'),
    enteredBy: text('entered_by')
      .notNull()
      .references(() => staff.id),
    enteredAt: instant('entered_at').notNull(),
  },
  (table) => [
    uniqueIndex('specification_revision').on(table.engineModelId, table.feature, table.revision),
  ],
);

/** Append-only: somebody checked a specification against a source. */
export const confirmation = sqliteTable(
  'confirmation',
  {
    id: id(),
    specificationId: text('specification_id')
      .notNull()
      .references(() => specification.id),
    sourceId: text('source_id')
      .notNull()
      .references(() => source.id),
    page: text('page').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('confirmation_specification').on(table.specificationId)],
);

/** A scan or a page of a source, as it was put in. */
export const sourceFile = sqliteTable(
  'source_file',
  {
    id: id(),
    sourceId: text('source_id')
      .notNull()
      .references(() => source.id),
    fileName: text('file_name').notNull(),
    mediaType: text('media_type').notNull(),
    bytes: blob('bytes', { mode: 'buffer' }).notNull(),
    sha256: text('sha256').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('source_file_source').on(table.sourceId)],
);

/** Append-only: another source gives other figures. They are shown beside each other, never averaged. */
export const contradiction = sqliteTable(
  'contradiction',
  {
    id: id(),
    specificationId: text('specification_id')
      .notNull()
      .references(() => specification.id),
    sourceId: text('source_id')
      .notNull()
      .references(() => source.id),
    page: text('page').notNull(),
    /** As that source prints them, in its unit. */
    low: text('low').notNull(),
    high: text('high').notNull(),
    unit: text('unit').$type<(typeof SPECIFICATION_UNITS)[number]>().notNull(),
    lowBase: real('low_base'),
    highBase: real('high_base'),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('contradiction_specification').on(table.specificationId)],
);
