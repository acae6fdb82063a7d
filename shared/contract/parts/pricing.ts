import { z } from 'zod';
import { PRICE_RULES } from '../../work/vocabulary.ts';
import { writes } from '../base.ts';
import { Minor } from '../fields.ts';
import { PartId, StaffId } from '../ids.ts';
import { Part } from './part.ts';

/** How a part comes by its price. */
export const priceFields = {
  priceRule: z.enum(PRICE_RULES).default('fixed'),
  listPrice: Minor.nullable().default(null),
  coreCharge: Minor.default(0),
};

export const pricing = {
  /** What it costs and how it comes by its price, all of it anew. */
  reprice: writes
    .input(
      z.strictObject({ by: StaffId, partId: PartId, price: Minor, cost: Minor, ...priceFields }),
    )
    .output(Part),
};
