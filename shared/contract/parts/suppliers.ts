import { z } from 'zod';
import { reads, writes } from '../base.ts';
import { Minor, maybeText, text } from '../fields.ts';
import { StaffId, SupplierId } from '../ids.ts';

/** Who the shop buys from, and on what terms. */

export const Supplier = z.object({
  id: SupplierId,
  name: z.string(),
  /** What the shop is called in their books. */
  accountNumber: z.string(),
  phone: z.string(),
  email: z.string(),
  address: z.string(),
  note: z.string(),
  /** Days from order to shelf. */
  leadDays: z.int(),
  /** How far that strays: standard deviation, thousandths of a day. */
  leadDaysSpread: z.int(),
  /** The smallest order that they take; zero for none. */
  minimumOrder: Minor,
  /** What they charge to send an order. */
  carriage: Minor,
  /** Goods worth so much come free of carriage; null when they never do. */
  freeCarriageFrom: Minor.nullable(),
});
export type Supplier = z.infer<typeof Supplier>;

const terms = {
  name: text(120),
  accountNumber: maybeText(60),
  phone: maybeText(60),
  email: maybeText(200),
  address: maybeText(400),
  note: maybeText(1000),
  leadDays: z.int().min(0).max(730, 'Nobody waits for longer than two years.').default(7),
  leadDaysSpread: z.int().min(0).max(730_000, 'That is more than two years.').default(0),
  minimumOrder: Minor.default(0),
  carriage: Minor.default(0),
  freeCarriageFrom: Minor.nullable().default(null),
};

const SUPPLIER_NAME_TAKEN = {
  status: 409,
  message: 'A supplier goes by this name already. Change that one, or tell them apart by the town.',
  data: z.object({ supplierId: SupplierId }),
} as const;

export const suppliers = {
  /** By name. */
  suppliers: reads.input(z.strictObject({})).output(z.array(Supplier)),

  /** How long the supplier really took, by the lines that came in; null for fewer than two of them. */
  supplierLead: reads.input(z.strictObject({ supplierId: SupplierId })).output(
    z
      .object({
        /** Lines of orders; each counts from its order to the first of it that came in. */
        lines: z.int(),
        /** Mean and standard deviation, thousandths of a day. */
        days: z.int(),
        spread: z.int(),
      })
      .nullable(),
  ),

  addSupplier: writes
    .errors({ SUPPLIER_NAME_TAKEN })
    .input(z.strictObject({ by: StaffId, ...terms }))
    .output(Supplier),

  /** All of it anew. Parts that name the supplier name it by its new name from now on. */
  reviseSupplier: writes
    .errors({ SUPPLIER_NAME_TAKEN })
    .input(z.strictObject({ by: StaffId, supplierId: SupplierId, ...terms }))
    .output(Supplier),
};
