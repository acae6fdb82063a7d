import { z } from 'zod';
import { reads, writes } from '../base.ts';
import { Minor, maybeText, text } from '../fields.ts';
import { PartId, StaffId } from '../ids.ts';
import { Fit } from './fits.ts';
import { KitPiece } from './kits.ts';
import { Movement, Thousandths } from './movements.ts';
import { OtherNumber, PartName } from './numbers.ts';
import { Part } from './part.ts';
import { PartPhotoCard } from './part-photos.ts';
import { priceFields } from './pricing.ts';
import { PART_NUMBER_TAKEN } from './refusals.ts';

/** All that is known of one part. */
export const PartDossier = z.object({
  part: Part,
  movements: z.array(Movement),
  numbers: z.array(OtherNumber),
  /** The part that took its place, and the one that is bought today; null while it is current. */
  supersededBy: PartName.nullable(),
  current: PartName.nullable(),
  /** Those whose place it took, directly or by others. */
  former: z.array(PartName),
  fits: z.array(Fit),
  /** What is in it, if it is a kit. */
  pieces: z.array(KitPiece),
  /** The kits that it is in. */
  inKits: z.array(PartName),
  photos: z.array(PartPhotoCard),
});
export type PartDossier = z.infer<typeof PartDossier>;

const facts = {
  number: text(60),
  description: text(200),
  bin: maybeText(40),
  unit: text(12).default('pc'),
  packSize: Thousandths.default(1000),
  barcode: maybeText(60),
  supplier: maybeText(120),
  reorderPoint: z.int().min(0).max(1_000_000_000).default(0),
};

export const shelf = {
  find: reads
    .input(z.strictObject({ text: maybeText(200), limit: z.int().min(1).max(1000).default(100) }))
    .output(z.array(Part)),

  part: reads.input(z.strictObject({ id: PartId })).output(PartDossier),

  add: writes
    .errors({ PART_NUMBER_TAKEN })
    .input(
      z.strictObject({
        by: StaffId,
        ...facts,
        price: Minor,
        cost: Minor.default(0),
        ...priceFields,
      }),
    )
    .output(Part),

  /** What a part is and where it lies, all of it anew. A number that it had goes on finding it. */
  amend: writes
    .errors({
      PART_NUMBER_TAKEN,
      UNIT_IN_USE: {
        status: 409,
        message:
          'Stock has moved in this unit, and in another the figures would say something else. Add a new part for the new unit.',
      },
    })
    .input(z.strictObject({ by: StaffId, partId: PartId, ...facts }))
    .output(Part),
};
