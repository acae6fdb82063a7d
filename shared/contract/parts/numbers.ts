import { z } from 'zod';
import { PART_NUMBER_KINDS } from '../../work/parts/stock-words.ts';
import { reads, writes } from '../base.ts';
import { maybeText, text } from '../fields.ts';
import { OtherNumberId, PartId, StaffId } from '../ids.ts';
import { Part } from './part.ts';

/** The numbers that find a part, and the parts that took each other's place. */

/** A part by name, where no more of it is wanted. */
export const PartName = z.object({
  id: PartId,
  number: z.string(),
  description: z.string(),
  /** Thousandths. */
  onHand: z.int(),
  unit: z.string(),
});
export type PartName = z.infer<typeof PartName>;

export const OtherNumber = z.object({
  id: OtherNumberId,
  kind: z.enum(PART_NUMBER_KINDS),
  /** The maker or supplier whose number it is, or empty. */
  whose: z.string(),
  number: z.string(),
});
export type OtherNumber = z.infer<typeof OtherNumber>;

export const NumberHit = z.object({
  part: Part,
  /** By which of its numbers it was found. */
  by: z.enum(['own', ...PART_NUMBER_KINDS]),
  whose: z.string(),
  /** The part that is bought in its place today; null when it is current itself. */
  current: PartName.nullable(),
});
export type NumberHit = z.infer<typeof NumberHit>;

export const numbers = {
  /**
   * The parts that have exactly this number, spaces, dashes and case aside: by their own first, then by
   * barcode, then by any other.
   */
  byNumber: reads.input(z.strictObject({ number: text(120) })).output(z.array(NumberHit)),

  /** One more number that finds the part. */
  addNumber: writes
    .errors({
      HAS_THIS_NUMBER: {
        status: 409,
        message: 'The part is found by this number already. There is nothing to add.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        partId: PartId,
        kind: z.enum(PART_NUMBER_KINDS),
        whose: maybeText(120),
        number: text(60),
      }),
    )
    .output(z.array(OtherNumber)),

  dropNumber: writes
    .input(z.strictObject({ by: StaffId, id: OtherNumberId }))
    .output(z.array(OtherNumber)),

  /** Says which part took this one's place, or that none did. Its number goes on finding it, and the new one. */
  supersede: writes
    .errors({
      SUPERSESSION_LOOP: {
        status: 409,
        message:
          'That would go round in a circle: the part named was itself replaced by this one. Take that back first, or name another.',
        data: z.object({ /** The numbers round the circle. */ numbers: z.array(z.string()) }),
      },
    })
    .input(z.strictObject({ by: StaffId, partId: PartId, supersededBy: PartId.nullable() }))
    .output(Part),
};
