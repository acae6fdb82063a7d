import { z } from 'zod';
import { LINE_KINDS, PRICE_ORIGINS } from '../../work/vocabulary.ts';
import { Minor, maybeText, text } from '../fields.ts';
import { PartId } from '../ids.ts';

/** Lines of a bill and what they come to. Money is integer minor units, quantities whole thousandths. */

/** Off a line or a whole bill: a share in millionths, or an amount. */
export const Discount = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('share'), ppm: z.int().min(1).max(1_000_000) }),
  z.strictObject({
    by: z.literal('amount'),
    amount: Minor.min(1, 'A discount is more than zero.'),
  }),
]);
export type Discount = z.infer<typeof Discount>;

export const LineInput = z.strictObject({
  kind: z.enum(LINE_KINDS),
  description: text(300),
  partId: PartId.nullable().default(null),
  /** Thousandths: 1500 is 1.5 hours. */
  quantity: z.int().min(1, 'A quantity is more than zero.').max(1_000_000_000),
  unit: text(12).default('pc'),
  unitPrice: Minor,
  /** What one costs the shop; null when nobody knows. Never on a paper for the customer. */
  unitCost: Minor.nullable().default(null),
  /** Where the price came from. */
  priceFrom: z.enum(PRICE_ORIGINS).default('typed'),
  /** For labour: which of the shop's kinds of work, or empty. */
  workKind: maybeText(60),
  /** Printed below the line. */
  note: maybeText(500),
  discount: Discount.nullable().default(null),
});
export type LineInput = z.infer<typeof LineInput>;

export const Line = z.object({
  kind: z.enum(LINE_KINDS),
  description: z.string(),
  partId: PartId.nullable(),
  partNumber: z.string(),
  quantity: z.int(),
  unit: z.string(),
  unitPrice: z.int(),
  /** Lines that were written before costs were kept have none of the next six. */
  unitCost: z.int().nullable().default(null),
  priceFrom: z.enum(PRICE_ORIGINS).default('typed'),
  workKind: z.string().default(''),
  note: z.string().default(''),
  discount: Discount.nullable().default(null),
  /** What the line's own discount takes off, zero or more. */
  discounted: z.int().default(0),
  /** Quantity times unit price, less the line's own discount; below zero for a core credit. */
  amount: z.int(),
});
export type Line = z.infer<typeof Line>;

const TotalsTax = z.object({
  name: z.string(),
  ratePpm: z.int(),
  /** The kinds of line that it is charged on; older bills did not keep them. */
  kinds: z.array(z.string()).default([]),
  base: z.int(),
  amount: z.int(),
});

export const Totals = z.object({
  /** Sum of the lines. */
  subtotal: z.int(),
  /** Off the whole bill, zero or more. */
  discount: z.int().default(0),
  taxes: z.array(TotalsTax),
  /** The taxes are within the prices, and not added to them. */
  pricesIncludeTax: z.boolean().default(false),
  /** The certificate by which no tax is charged, or empty. */
  exemptBy: z.string().default(''),
  /** Taxes that were within the prices and are taken out of them by that certificate. */
  takenOut: z.array(TotalsTax).default([]),
  total: z.int(),
});
export type Totals = z.infer<typeof Totals>;

export const Lines = z
  .array(LineInput)
  .min(1, 'An estimate has at least one line.')
  .max(300, 'Split this into two jobs: no bill has more than 300 lines.');
