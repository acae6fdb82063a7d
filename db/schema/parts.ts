import {
  type AnySQLiteColumn,
  blob,
  index,
  integer,
  primaryKey,
  real,
  sqliteTable,
  text,
  uniqueIndex,
} from 'drizzle-orm/sqlite-core';
import type { FittedPart } from '../../shared/work/bench/deciding/decision-parts.ts';
import type { PartNumberKind } from '../../shared/work/parts/stock-words.ts';
import type { PriceRule } from '../../shared/work/vocabulary.ts';
import { id, instant, minor } from './columns.ts';
import { staff } from './office.ts';
import { engineModel } from './specbook.ts';

export const part = sqliteTable(
  'part',
  {
    id: id(),
    number: text('number').notNull(),
    /** Folded: spaces, dashes and case don't make another part. */
    numberKey: text('number_key').notNull(),
    description: text('description').notNull(),
    bin: text('bin').notNull(),
    unit: text('unit').notNull(),
    /** Thousandths of the unit that come in one pack of the supplier's. */
    packSize: integer('pack_size').notNull().default(1000),
    price: minor('price').notNull(),
    /** How it comes by its price: `price` as it stands, cost and markup, or the supplier's list price. */
    priceRule: text('price_rule').$type<PriceRule>().notNull().default('fixed'),
    listPrice: minor('list_price'),
    /** What is charged until the old part comes back. */
    coreCharge: minor('core_charge').notNull().default(0),
    cost: minor('cost').notNull(),
    barcode: text('barcode').notNull(),
    supplier: text('supplier').notNull(),
    /** Thousandths. */
    reorderPoint: integer('reorder_point').notNull(),
    /** The part that took its place; null while it is current. */
    supersededBy: text('superseded_by').references((): AnySQLiteColumn => part.id),
    searchText: text('search_text').notNull(),
  },
  (table) => [
    uniqueIndex('part_number').on(table.numberKey),
    index('part_superseded_by').on(table.supersededBy),
  ],
);

/** Every number that finds a part beside its own: makers', suppliers', former ones, barcodes. */
export const otherNumber = sqliteTable(
  'other_number',
  {
    id: id(),
    partId: text('part_id')
      .notNull()
      .references(() => part.id),
    kind: text('kind').$type<PartNumberKind>().notNull(),
    /** Whose number it is: a maker or supplier, or empty. */
    whose: text('whose').notNull(),
    number: text('number').notNull(),
    numberKey: text('number_key').notNull(),
  },
  (table) => [
    index('other_number_key').on(table.numberKey),
    index('other_number_part').on(table.partId),
  ],
);

/** What a part is on which engine model, and its oversize (undersize below zero) in mm. */
export const partFit = sqliteTable(
  'part_fit',
  {
    partId: text('part_id')
      .notNull()
      .references(() => part.id),
    engineModelId: text('engine_model_id')
      .notNull()
      .references(() => engineModel.id),
    fitted: text('fitted').$type<FittedPart | 'other'>().notNull(),
    step: real('step').notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.partId, table.engineModelId, table.fitted, table.step] }),
    index('part_fit_model').on(table.engineModelId),
  ],
);

/** A kit's pieces, in thousandths of each piece's unit. */
export const kitPiece = sqliteTable(
  'kit_piece',
  {
    kitId: text('kit_id')
      .notNull()
      .references(() => part.id),
    partId: text('part_id')
      .notNull()
      .references(() => part.id),
    quantity: integer('quantity').notNull(),
  },
  (table) => [primaryKey({ columns: [table.kitId, table.partId] })],
);

/** Append-only: a photo of a part, byte for byte. */
export const partPhoto = sqliteTable(
  'part_photo',
  {
    id: id(),
    partId: text('part_id')
      .notNull()
      .references(() => part.id),
    caption: text('caption').notNull(),
    mediaType: text('media_type').notNull(),
    bytes: blob('bytes', { mode: 'buffer' }).notNull(),
    sha256: text('sha256').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('part_photo_part').on(table.partId)],
);
