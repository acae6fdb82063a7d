import {
  type AnySQLiteColumn,
  index,
  integer,
  primaryKey,
  sqliteTable,
  text,
} from 'drizzle-orm/sqlite-core';
import type { MovementKind } from '../../shared/work/parts/stock-words.ts';
import { purchaseOrderLine, supplier } from './buying.ts';
import { flag, id, instant, minor } from './columns.ts';
import { job } from './counter.ts';
import { staff } from './office.ts';
import { part } from './parts.ts';

/**
 * Append-only: what is on hand, reserved and on order, and what the shelf is worth, are the sums of these.
 * Quantities are signed thousandths, worth is signed minor units.
 */
export const stockMovement = sqliteTable(
  'stock_movement',
  {
    id: id(),
    partId: text('part_id')
      .notNull()
      .references(() => part.id),
    kind: text('kind').$type<MovementKind>().notNull(),
    /** What it adds to the shelf. */
    quantity: integer('quantity').notNull(),
    /** What it adds to the shelf's worth. */
    worth: minor('worth').notNull().default(0),
    /** What it adds to what is promised to the job. */
    reserved: integer('reserved').notNull().default(0),
    /** What it adds to what suppliers owe. */
    ordered: integer('ordered').notNull().default(0),
    jobId: text('job_id').references(() => job.id),
    orderLineId: text('order_line_id').references(() => purchaseOrderLine.id),
    /** The count that it puts right, if one does. */
    countId: text('count_id').references((): AnySQLiteColumn => stockCount.id),
    reason: text('reason').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [
    index('stock_movement_part').on(table.partId, table.at),
    // All that is added up: the sums of a shelf are read from here alone, however long it has been in use.
    index('stock_movement_sums').on(
      table.partId,
      table.jobId,
      table.kind,
      table.quantity,
      table.reserved,
      table.ordered,
      table.worth,
    ),
    index('stock_movement_job').on(table.jobId),
    index('stock_movement_order_line').on(table.orderLineId),
  ],
);

/** Append-only: parts that are billed on a job and did not come off the shelf, and why. Thousandths. */
export const partFromElsewhere = sqliteTable(
  'part_from_elsewhere',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => job.id),
    partId: text('part_id')
      .notNull()
      .references(() => part.id),
    quantity: integer('quantity').notNull(),
    reason: text('reason').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('part_from_elsewhere_job').on(table.jobId)],
);

/** Append-only: old parts that came in against a core charge and went back to a supplier. Thousandths. */
export const coreMovement = sqliteTable(
  'core_movement',
  {
    id: id(),
    partId: text('part_id')
      .notNull()
      .references(() => part.id),
    kind: text('kind').$type<'taken-in' | 'sent-back' | 'credited' | 'refused'>().notNull(),
    quantity: integer('quantity').notNull(),
    /** What the supplier credits for it, minor units. */
    amount: minor('amount').notNull(),
    jobId: text('job_id').references(() => job.id),
    supplierId: text('supplier_id').references(() => supplier.id),
    note: text('note').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('core_movement_part').on(table.partId)],
);

/** A bin that is counted: blind, until the figures are in. */
export const stockCount = sqliteTable(
  'stock_count',
  {
    id: id(),
    bin: text('bin').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
    /** When its figures were in; each difference goes onto the shelf when it is explained. Null while it is open. */
    closedAt: instant('closed_at'),
  },
  (table) => [index('stock_count_bin').on(table.bin, table.at)],
);

/** What was counted of a part, thousandths; typed again until the count is closed. */
export const stockCountLine = sqliteTable(
  'stock_count_line',
  {
    countId: text('count_id')
      .notNull()
      .references(() => stockCount.id),
    partId: text('part_id')
      .notNull()
      .references(() => part.id),
    counted: integer('counted').notNull(),
    /** What the shelf should have held at that moment. */
    expected: integer('expected').notNull(),
    explanation: text('explanation').notNull(),
  },
  (table) => [primaryKey({ columns: [table.countId, table.partId] })],
);

/** How labels are laid out: one row, JSON of the contract's label settings. */
export const labelSettings = sqliteTable('label_settings', {
  only: integer('only').primaryKey(),
  settings: text('settings').notNull(),
  /** Whether a part's shelf label shows its price. */
  showPrice: flag('show_price').notNull().default(false),
});
