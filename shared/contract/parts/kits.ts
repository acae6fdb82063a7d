import { z } from 'zod';
import { writes } from '../base.ts';
import { maybeText } from '../fields.ts';
import { JobId, PartId, StaffId } from '../ids.ts';
import { OVER_APPROVAL } from '../till/refusals.ts';
import { Thousandths } from './movements.ts';
import { PartName } from './numbers.ts';
import { Part } from './part.ts';
import { NOT_ON_THE_SHELF, PROMISED_ELSEWHERE } from './refusals.ts';

/** Kits: a part that is opened into pieces, which are parts themselves. */

export const KitPiece = PartName.extend({
  /** Of it in one kit, thousandths. */
  quantity: z.int(),
});
export type KitPiece = z.infer<typeof KitPiece>;

const Pieces = z
  .array(z.strictObject({ partId: PartId, quantity: Thousandths }))
  .max(200)
  .superRefine((pieces, context) => {
    pieces.forEach(({ partId }, index) => {
      if (pieces.findIndex((other) => other.partId === partId) < index)
        context.addIssue({
          code: 'custom',
          path: [index, 'partId'],
          message: 'This piece is named twice. Put its quantities together.',
        });
    });
  });

const NO_KIT = {
  status: 409,
  message: 'This part has no pieces. Say first what is in it.',
} as const;

export const kits = {
  /** What is in a kit, all of it anew; none makes it an ordinary part. */
  setPieces: writes
    .errors({
      KIT_LOOP: {
        status: 409,
        message: 'A kit can’t be in itself, nor in one of its pieces. Leave that piece out.',
        data: z.object({ numbers: z.array(z.string()) }),
      },
    })
    .input(z.strictObject({ by: StaffId, kitId: PartId, pieces: Pieces }))
    .output(z.array(KitPiece)),

  /**
   * Opens kits from the shelf: the kits leave it, their pieces come onto it for their share of what the
   * kits were worth, and what a job gets of them is issued to it at once.
   */
  openKit: writes
    .errors({ NO_KIT, NOT_ON_THE_SHELF, PROMISED_ELSEWHERE, OVER_APPROVAL })
    .input(
      z.strictObject({
        by: StaffId,
        kitId: PartId,
        /** Whole kits. */
        kits: z.int().min(1).max(1_000).default(1),
        /** Pieces that were not in it or can't be used: they don't come onto the shelf. */
        without: z.array(PartId).max(200).default([]),
        jobId: JobId.nullable().default(null),
        /** What the job gets of the pieces; the rest stays on the shelf. */
        toJob: Pieces.default([]),
        reason: maybeText(300),
      }),
    )
    .output(Part),
};
