import { index, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { MOVEMENT_KINDS } from '../../shared/contract/parts.ts';
import type { PriceRule } from '../../shared/work/vocabulary.ts';
import { id, instant, minor } from './columns.ts';
import { job } from './counter.ts';
import { staff } from './office.ts';

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
    searchText: text('search_text').notNull(),
  },
  (table) => [uniqueIndex('part_number').on(table.numberKey)],
);

/** Append-only: what is on hand is the sum of these. */
export const stockMovement = sqliteTable(
  'stock_movement',
  {
    id: id(),
    partId: text('part_id')
      .notNull()
      .references(() => part.id),
    kind: text('kind').$type<(typeof MOVEMENT_KINDS)[number]>().notNull(),
    /** Signed thousandths. */
    quantity: integer('quantity').notNull(),
    jobId: text('job_id').references(() => job.id),
    reason: text('reason').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('stock_movement_part').on(table.partId)],
);
