import { z } from 'zod';
import { FEATURES } from '../work/features.ts';
import { CYCLES, SOURCE_KINDS } from '../work/vocabulary.ts';
import { CalendarDate, maybeText, text } from './fields.ts';
import { Fastener, SPECIFICATION_UNITS } from './specbook-words.ts';

/**
 * An engine model of the spec book as a file: what one shop hands to another. A format of our own.
 *
 * JSON in UTF-8, one object:
 *
 * - `format`: always `tappet.engine-model`; `version`: 1. A reader refuses what it doesn't know.
 * - `model`: `make`, `model`, `cycle`, `cylinders`; `bore` and `stroke` in mm or null; `note`;
 *   `variantOf`: null, or the `make` and `model` of the family, which has to be in the book already.
 *   A variant's file holds what the variant states itself, never what it takes from its family.
 * - `sources`: each with a `key` that is unique in the file, `kind`, `title`, `edition`, `date`
 *   (year-month-day, or null).
 * - `specifications`: one for each feature at the most. `low`, `high`, `aim` and `wearLimit` are text,
 *   as the source prints them in `unit`, empty where it prints none; `condition`; `source` (a key of
 *   `sources`) and `page`; `fastener`, null or `designation` (the
 *   thread as the source prints it, `5/16-18 UNC`, or empty), `diameter` and `pitch` in mm, `propertyClass`, `count`,
 *   `pattern`, and `stages` as rising shares of the final torque, the last of them 1.
 *
 * What may be left out: everything that may be empty or null.
 *
 * The file carries no standing and no names: who confirmed a figure in one shop has vouched for nothing
 * in another. The one who imports it has entered it there.
 *
 * The same as a flat CSV (RFC 4180, UTF-8, a byte-order mark allowed; comma, semicolon or tab between
 * the fields): one line a specification, with the columns of `CSV_COLUMNS`. The model's own columns
 * stand on the first line and are repeated or empty on the others; a model without specifications is
 * one line with an empty `feature`. `stages` are parted by blanks. A cell that a spreadsheet would take
 * for a formula begins with an apostrophe, which isn't part of it.
 */
export const MODEL_FILE_FORMAT = 'tappet.engine-model';
export const MODEL_FILE_VERSION = 1;

const Length = z.number().positive('A length is more than zero.').max(500).nullable().default(null);

const limit = maybeText(24);

export const ModelFile = z.strictObject({
  format: z.literal(MODEL_FILE_FORMAT),
  version: z.literal(MODEL_FILE_VERSION),
  model: z.strictObject({
    make: text(80),
    model: text(80),
    cycle: z.enum(CYCLES),
    cylinders: z.int().min(1).max(4),
    bore: Length,
    stroke: Length,
    note: maybeText(2000),
    variantOf: z
      .strictObject({ make: text(80), model: text(80) })
      .nullable()
      .default(null),
  }),
  sources: z
    .array(
      z.strictObject({
        key: text(40),
        kind: z.enum(SOURCE_KINDS),
        title: text(200),
        edition: maybeText(80),
        date: CalendarDate.nullable().default(null),
      }),
    )
    .max(500)
    .default([]),
  specifications: z
    .array(
      z.strictObject({
        feature: z.enum(FEATURES),
        low: limit,
        high: limit,
        aim: limit,
        wearLimit: limit,
        unit: z.enum(SPECIFICATION_UNITS),
        condition: maybeText(200),
        source: text(40),
        page: maybeText(40),
        fastener: Fastener.nullable().default(null),
      }),
    )
    .max(500)
    .default([]),
});
export type ModelFile = z.infer<typeof ModelFile>;

/** The columns of the flat file, each with the path of what it holds in the JSON. */
export const CSV_COLUMNS = [
  { name: 'make', path: 'model.make' },
  { name: 'model', path: 'model.model' },
  { name: 'cycle', path: 'model.cycle' },
  { name: 'cylinders', path: 'model.cylinders' },
  { name: 'bore_mm', path: 'model.bore' },
  { name: 'stroke_mm', path: 'model.stroke' },
  { name: 'note', path: 'model.note' },
  { name: 'variant_of_make', path: 'model.variantOf.make' },
  { name: 'variant_of_model', path: 'model.variantOf.model' },
  { name: 'feature', path: 'feature' },
  { name: 'low', path: 'low' },
  { name: 'high', path: 'high' },
  { name: 'aim', path: 'aim' },
  { name: 'wear_limit', path: 'wearLimit' },
  { name: 'unit', path: 'unit' },
  { name: 'condition', path: 'condition' },
  { name: 'source_kind', path: 'source.kind' },
  { name: 'source_title', path: 'source.title' },
  { name: 'source_edition', path: 'source.edition' },
  { name: 'source_date', path: 'source.date' },
  { name: 'page', path: 'page' },
  { name: 'thread', path: 'fastener.designation' },
  { name: 'thread_diameter_mm', path: 'fastener.diameter' },
  { name: 'thread_pitch_mm', path: 'fastener.pitch' },
  { name: 'property_class', path: 'fastener.propertyClass' },
  { name: 'bolt_count', path: 'fastener.count' },
  { name: 'pattern', path: 'fastener.pattern' },
  { name: 'stages', path: 'fastener.stages' },
] as const;
export type CsvColumn = (typeof CSV_COLUMNS)[number]['name'];
