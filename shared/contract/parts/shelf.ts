import { z } from 'zod';
import { reads, writes } from '../base.ts';
import { Minor, maybeText, text } from '../fields.ts';
import { PartId, StaffId } from '../ids.ts';
import { Movement, Thousandths } from './movements.ts';
import { Part } from './part.ts';
import { priceFields } from './pricing.ts';

export const shelf = {
  find: reads
    .input(z.strictObject({ text: maybeText(200), limit: z.int().min(1).max(1000).default(100) }))
    .output(z.array(Part)),

  part: reads
    .input(z.strictObject({ id: PartId }))
    .output(z.object({ part: Part, movements: z.array(Movement) })),

  add: writes
    .errors({
      PART_NUMBER_TAKEN: {
        status: 409,
        message:
          'A part has this number already (spaces, dashes and case don’t count). Open that one instead.',
        data: z.object({ partId: PartId }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        number: text(60),
        description: text(200),
        bin: maybeText(40),
        unit: text(12).default('pc'),
        price: Minor,
        cost: Minor.default(0),
        packSize: Thousandths.default(1000),
        ...priceFields,
        barcode: maybeText(60),
        supplier: maybeText(120),
        reorderPoint: z.int().min(0).max(1_000_000_000).default(0),
      }),
    )
    .output(Part),
};
