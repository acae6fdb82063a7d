import { z } from 'zod';
import { writes } from '../base.ts';
import { Minor, maybeText, text } from '../fields.ts';
import { PurchaseOrderId, PurchaseOrderLineId, StaffId } from '../ids.ts';
import { Thousandths } from './movements.ts';
import { PartName } from './numbers.ts';
import { PurchaseOrder } from './orders.ts';
import { NOTHING_OWED } from './refusals.ts';

/** What came in on an order: in part, over, short, at another price. */

const ReceivedLine = z.strictObject({
  lineId: PurchaseOrderLineId,
  quantity: Thousandths,
  /** What one costs by the delivery note or bill. */
  unitCost: Minor,
});

/** What a receipt did to one part. */
export const Received = z.object({
  part: PartName,
  quantity: z.int(),
  /** One by the order, and one by the bill. */
  orderedAt: z.int(),
  paid: z.int(),
  /** This line's share of the carriage. */
  carriage: z.int(),
  /** The moving average of one before and after; null for a shelf that holds nothing. */
  averageBefore: z.int().nullable(),
  averageAfter: z.int().nullable(),
  /** What one costs the shop, as it was known before and is now. */
  costBefore: z.int(),
  costAfter: z.int(),
  /** The job that it was ordered for. */
  jobCode: z.string(),
});
export type Received = z.infer<typeof Received>;

export const receiving = {
  receive: writes
    .errors({
      MORE_THAN_ORDERED: {
        status: 409,
        message:
          'More came than the order still owes. Count again; keep the rest if the shop wants it, and say so.',
        data: z.object({ lineId: PurchaseOrderLineId, owed: z.int() }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        orderId: PurchaseOrderId,
        lines: z.array(ReceivedLine).min(1, 'Say what came in.').max(500),
        /** What sending this delivery cost. */
        carriage: Minor.default(0),
        /** Adds the carriage to what the parts cost, each by its share of the goods. */
        shareCarriage: z.boolean().default(false),
        /** What came is from now on what the part costs the shop. */
        takeOnCosts: z.boolean().default(true),
        /** Keeps what came beyond the order. */
        keepMore: z.boolean().default(false),
        deliveryNote: maybeText(60),
      }),
    )
    .output(z.object({ order: PurchaseOrder, received: z.array(Received) })),

  /** Waits for the rest of some lines no longer; of all that are open when none is named. */
  closeShort: writes
    .errors({ NOTHING_OWED })
    .input(
      z.strictObject({
        by: StaffId,
        orderId: PurchaseOrderId,
        lineIds: z.array(PurchaseOrderLineId).max(500).default([]),
        reason: text(200),
      }),
    )
    .output(PurchaseOrder),
};
