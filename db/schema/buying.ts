import {
  type AnySQLiteColumn,
  index,
  integer,
  sqliteTable,
  text,
  uniqueIndex,
} from 'drizzle-orm/sqlite-core';
import type { PriceFileState } from '../../shared/work/parts/stock-words.ts';
import { date, id, instant, minor } from './columns.ts';
import { job } from './counter.ts';
import { issuedPaper, staff } from './office.ts';
import { part } from './parts.ts';

export const supplier = sqliteTable(
  'supplier',
  {
    id: id(),
    name: text('name').notNull(),
    nameKey: text('name_key').notNull(),
    /** Our number with them. */
    accountNumber: text('account_number').notNull(),
    phone: text('phone').notNull(),
    email: text('email').notNull(),
    address: text('address').notNull(),
    note: text('note').notNull(),
    /** Days from order to shelf, and how far that strays (standard deviation, days, in thousandths). */
    leadDays: integer('lead_days').notNull(),
    leadDaysSpread: integer('lead_days_spread').notNull(),
    minimumOrder: minor('minimum_order').notNull(),
    carriage: minor('carriage').notNull(),
    /** Orders of so much come free of carriage; null for none. */
    freeCarriageFrom: minor('free_carriage_from'),
    /** How their price file's columns were read last time: JSON of the contract's mapping, or empty. */
    priceFileMapping: text('price_file_mapping').notNull(),
  },
  (table) => [uniqueIndex('supplier_name').on(table.nameKey)],
);

/** What a supplier offers, from their price files; most of it never on our shelf. */
export const supplierItem = sqliteTable(
  'supplier_item',
  {
    id: id(),
    supplierId: text('supplier_id')
      .notNull()
      .references(() => supplier.id),
    number: text('number').notNull(),
    numberKey: text('number_key').notNull(),
    description: text('description').notNull(),
    cost: minor('cost').notNull(),
    listPrice: minor('list_price'),
    packSize: integer('pack_size').notNull(),
    coreCharge: minor('core_charge').notNull(),
    /** The number that took its place, as they print it, or empty. */
    supersededBy: text('superseded_by').notNull(),
    /** The file that last said so; null for what was typed in. */
    priceFileId: text('price_file_id').references((): AnySQLiteColumn => priceFile.id),
  },
  (table) => [
    uniqueIndex('supplier_item_number').on(table.supplierId, table.numberKey),
    index('supplier_item_key').on(table.numberKey),
  ],
);

/** A price file from its reading to its undoing. */
export const priceFile = sqliteTable(
  'price_file',
  {
    id: id(),
    supplierId: text('supplier_id')
      .notNull()
      .references(() => supplier.id),
    fileName: text('file_name').notNull(),
    sha256: text('sha256').notNull(),
    state: text('state').$type<PriceFileState>().notNull(),
    /** JSON of the contract's mapping. */
    mapping: text('mapping').notNull(),
    lines: integer('lines').notNull(),
    /** JSON: how many are new, dearer, cheaper, unchanged, superseded, unreadable. */
    counts: text('counts').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
    appliedAt: instant('applied_at'),
    undoneAt: instant('undone_at'),
  },
  (table) => [index('price_file_supplier').on(table.supplierId, table.at)],
);

/** A line of a price file as it was read, until the file is applied or dropped. */
export const priceFileLine = sqliteTable(
  'price_file_line',
  {
    fileId: text('file_id')
      .notNull()
      .references(() => priceFile.id),
    /** In the file, from 1. */
    line: integer('line').notNull(),
    /** Why it can't be used, or empty. */
    problem: text('problem').notNull(),
    /** What stood there, for a line that can't be used; else empty. */
    raw: text('raw').notNull(),
    number: text('number').notNull(),
    numberKey: text('number_key').notNull(),
    description: text('description').notNull(),
    cost: minor('cost').notNull(),
    listPrice: minor('list_price'),
    packSize: integer('pack_size').notNull(),
    coreCharge: minor('core_charge').notNull(),
    supersededBy: text('superseded_by').notNull(),
  },
  (table) => [uniqueIndex('price_file_line_place').on(table.fileId, table.line)],
);

/** What an item and a part were before a price file changed them, so that the file can be undone as a whole. */
export const priceChange = sqliteTable(
  'price_change',
  {
    fileId: text('file_id')
      .notNull()
      .references(() => priceFile.id),
    itemId: text('item_id'),
    partId: text('part_id').references(() => part.id),
    /** JSON of the columns as they were; empty when the item was new. */
    before: text('before').notNull(),
  },
  (table) => [index('price_change_file').on(table.fileId)],
);

/** Append-only: an order as it was sent; what came of it is in the movements. */
export const purchaseOrder = sqliteTable(
  'purchase_order',
  {
    id: id(),
    number: integer('number').notNull(),
    supplierId: text('supplier_id')
      .notNull()
      .references(() => supplier.id),
    note: text('note').notNull(),
    carriage: minor('carriage').notNull(),
    currency: text('currency').notNull(),
    expectedOn: date('expected_on'),
    paperId: text('paper_id')
      .notNull()
      .references(() => issuedPaper.id),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [
    uniqueIndex('purchase_order_number').on(table.number),
    index('purchase_order_supplier').on(table.supplierId),
  ],
);

/** Append-only: a line of an order. A special order belongs to a job. */
export const purchaseOrderLine = sqliteTable(
  'purchase_order_line',
  {
    id: id(),
    orderId: text('order_id')
      .notNull()
      .references(() => purchaseOrder.id),
    partId: text('part_id')
      .notNull()
      .references(() => part.id),
    /** Their number for it. */
    supplierNumber: text('supplier_number').notNull(),
    /** Thousandths. */
    quantity: integer('quantity').notNull(),
    unitCost: minor('unit_cost').notNull(),
    jobId: text('job_id').references(() => job.id),
    expectedOn: date('expected_on'),
  },
  (table) => [
    index('purchase_order_line_order').on(table.orderId),
    index('purchase_order_line_part').on(table.partId),
    index('purchase_order_line_job').on(table.jobId),
  ],
);

/** Append-only: the supplier named another day for what is still to come of a line. */
export const expectedChange = sqliteTable(
  'expected_change',
  {
    id: id(),
    lineId: text('line_id')
      .notNull()
      .references(() => purchaseOrderLine.id),
    /** Null: nobody knows. */
    expectedOn: date('expected_on'),
    /** What was expected before; null when nobody knew. */
    former: date('former'),
    reason: text('reason').notNull(),
    by: text('by')
      .notNull()
      .references(() => staff.id),
    at: instant('at').notNull(),
  },
  (table) => [index('expected_change_line').on(table.lineId)],
);
