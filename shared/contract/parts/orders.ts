import { z } from 'zod';
import { ORDER_STATES } from '../../work/parts/order-state.ts';
import { reads, writes } from '../base.ts';
import { PaperCard } from '../counter/index.ts';
import { CalendarDate, Instant, Minor, maybeText, text } from '../fields.ts';
import {
  JobId,
  PartId,
  PurchaseOrderId,
  PurchaseOrderLineId,
  StaffId,
  SupplierId,
} from '../ids.ts';
import { Thousandths } from './movements.ts';
import { PartName } from './numbers.ts';
import { NOTHING_OWED } from './refusals.ts';

/** Orders to suppliers. What was ordered never changes; what came of it is in the movements of the stock. */

export const PurchaseOrderCard = z.object({
  id: PurchaseOrderId,
  /** As people read it: `P-000042`. */
  number: z.string(),
  supplierId: SupplierId,
  supplierName: z.string(),
  at: Instant,
  /** The first day on which something that is still owed is expected; once all came, the order's own. */
  expectedOn: CalendarDate.nullable(),
  state: z.enum(ORDER_STATES),
  /** Something is still owed, and the day that it was expected on has passed. */
  late: z.boolean(),
  lines: z.int(),
  openLines: z.int(),
  /** What was ordered, without carriage. */
  goods: z.int(),
});
export type PurchaseOrderCard = z.infer<typeof PurchaseOrderCard>;

export const PurchaseOrderLine = z.object({
  id: PurchaseOrderLineId,
  part: PartName,
  supplierNumber: z.string(),
  /** Thousandths; `owed` is what is still to come: ordered, less what came in, less what was closed. */
  ordered: z.int(),
  received: z.int(),
  owed: z.int(),
  closed: z.int(),
  unitCost: Minor,
  amount: z.int(),
  /** The job that it was ordered for alone. */
  jobId: JobId.nullable(),
  jobCode: z.string(),
  /** By what the supplier said last, or else by the order; null when nobody knows. */
  expectedOn: CalendarDate.nullable(),
  /** Each time that another day was named, the first at the head. */
  expectedChanges: z.array(
    z.object({
      expectedOn: CalendarDate.nullable(),
      former: CalendarDate.nullable(),
      reason: z.string(),
      by: z.string(),
      at: Instant,
    }),
  ),
  /** What came in and what was closed, the first at the head. */
  events: z.array(
    z.object({
      kind: z.enum(['received', 'order-closed']),
      quantity: z.int(),
      /** In the words of whoever did it; of what came in, its price and the delivery note. */
      words: z.string(),
      by: z.string(),
      at: Instant,
    }),
  ),
});
export type PurchaseOrderLine = z.infer<typeof PurchaseOrderLine>;

export const PurchaseOrder = PurchaseOrderCard.extend({
  carriage: z.int(),
  note: z.string(),
  by: z.string(),
  paper: PaperCard,
  items: z.array(PurchaseOrderLine),
});
export type PurchaseOrder = z.infer<typeof PurchaseOrder>;

/** A line that something is still to come of. */
export const LineToCome = z.object({
  lineId: PurchaseOrderLineId,
  orderId: PurchaseOrderId,
  orderNumber: z.string(),
  supplierName: z.string(),
  part: PartName,
  ordered: z.int(),
  /** What came in of it before: the rest is on back-order. */
  received: z.int(),
  owed: z.int(),
  expectedOn: CalendarDate.nullable(),
  late: z.boolean(),
  jobCode: z.string(),
});
export type LineToCome = z.infer<typeof LineToCome>;

const OrderLineInput = z.strictObject({
  partId: PartId,
  quantity: Thousandths,
  /** What the supplier asks for one. */
  unitCost: Minor,
  /** Their number for it; when empty, the one that is known of them, or the part’s own. */
  supplierNumber: maybeText(60),
  /** Orders it for one job alone: it goes to that job when it is there. */
  jobId: JobId.nullable().default(null),
  expectedOn: CalendarDate.nullable().default(null),
});

const JOB_NEEDS_NOTHING = {
  status: 409,
  message: 'That job is stopped, billed or handed over. Order the part for the shelf instead.',
  data: z.object({ jobCode: z.string() }),
} as const;

export const orders = {
  /** The newest first; open ones by the day that they are expected on. */
  orders: reads
    .input(
      z.strictObject({
        open: z.boolean().default(true),
        supplierId: SupplierId.nullable().default(null),
        limit: z.int().min(1).max(1000).default(200),
      }),
    )
    .output(z.array(PurchaseOrderCard)),

  order: reads.input(z.strictObject({ id: PurchaseOrderId })).output(PurchaseOrder),

  /** All that suppliers still owe, line by line, by the day that it is expected on. */
  toCome: reads.input(z.strictObject({})).output(z.array(LineToCome)),

  /** An order as CSV after RFC 4180, for suppliers who take it by machine. */
  orderFile: reads
    .input(
      z.strictObject({
        id: PurchaseOrderId,
        /** A byte-order mark before it, by which spreadsheets know its letters. */
        mark: z.boolean().default(false),
      }),
    )
    .output(z.object({ fileName: z.string(), text: z.string() })),

  /** Orders from a supplier: takes the next number, issues the paper, and the stock knows what is on order. */
  placeOrder: writes
    .errors({
      BELOW_MINIMUM: {
        status: 409,
        message:
          'The supplier takes no order as small as this. Add to it, or send it all the same if they agreed.',
        data: z.object({ short: z.int() }),
      },
      JOB_NEEDS_NOTHING,
    })
    .input(
      z.strictObject({
        by: StaffId,
        supplierId: SupplierId,
        lines: z.array(OrderLineInput).min(1, 'An order has a line at least.').max(500),
        carriage: Minor.default(0),
        /** By the supplier's lead time when it is left out. */
        expectedOn: CalendarDate.nullable().default(null),
        note: maybeText(1000),
        /** The supplier agreed to an order below their minimum. */
        belowMinimum: z.boolean().default(false),
      }),
    )
    .output(PurchaseOrder),

  /** The supplier named another day for what is to come of some lines; jobs that wait for it say so. */
  moveExpected: writes
    .errors({
      NOTHING_OWED,
      EXPECTED_IN_THE_PAST: {
        status: 409,
        message: 'That day is past. Choose today or a later one, or say that nobody knows.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        orderId: PurchaseOrderId,
        lineIds: z.array(PurchaseOrderLineId).min(1, 'Choose a line at least.').max(500),
        /** Null: nobody knows. */
        expectedOn: CalendarDate.nullable(),
        reason: text(200),
      }),
    )
    .output(PurchaseOrder),
};
