import { z } from 'zod';
import { PRICE_ORIGINS, PRICE_RULES } from '../../work/vocabulary.ts';
import { Minor } from '../fields.ts';
import { PartId } from '../ids.ts';

/** A part on the shelf. Quantities are whole thousandths of the part's unit. */

export const Part = z.object({
  id: PartId,
  number: z.string(),
  description: z.string(),
  bin: z.string(),
  unit: z.string(),
  /** The fixed price; also what it sells for while its rule has nothing to go by. */
  price: Minor,
  /** What one costs the shop; zero when nobody knows. */
  cost: Minor,
  /** How it comes by its price. */
  priceRule: z.enum(PRICE_RULES),
  /** By the supplier's price list; null when it has none. */
  listPrice: Minor.nullable(),
  /** Charged until the old part comes back; zero for none. */
  coreCharge: Minor,
  /** What one sells for today, and where that came from. */
  sellsAt: Minor,
  sellsBy: z.enum(PRICE_ORIGINS),
  barcode: z.string(),
  supplier: z.string(),
  /** What comes in one pack of the supplier's, thousandths. */
  packSize: z.int(),
  /** Sums of the movements, thousandths; what can be promised or issued is on hand less promised. */
  onHand: z.int(),
  promised: z.int(),
  onOrder: z.int(),
  /** What the shelf is worth at the moving average, minor units. */
  worth: z.int(),
  reorderPoint: z.int(),
});
export type Part = z.infer<typeof Part>;
