import { z } from 'zod';
import { reads, writes } from '../base.ts';
import { LARGEST_PHOTO, NOT_A_PHOTO, PHOTO_TOO_LARGE, PhotoCard } from '../bench/photos.ts';
import { maybeText } from '../fields.ts';
import { PartId, PhotoId, StaffId } from '../ids.ts';

/** Photos of a part, kept byte for byte. */

export const PartPhotoCard = PhotoCard.omit({ subject: true });
export type PartPhotoCard = z.infer<typeof PartPhotoCard>;

export const partPhotos = {
  addPhoto: writes
    .errors({ PHOTO_TOO_LARGE, NOT_A_PHOTO })
    .input(
      z.strictObject({
        by: StaffId,
        partId: PartId,
        caption: maybeText(200),
        /** The file, base64. What kind of picture it is, is seen from its first bytes. */
        bytes: z.string().max(Math.ceil(LARGEST_PHOTO / 3) * 4 + 1_024 * 1_024),
      }),
    )
    .output(PartPhotoCard),

  photo: reads
    .input(z.strictObject({ id: PhotoId }))
    .output(PartPhotoCard.extend({ /** Base64. */ bytes: z.string() })),
};
