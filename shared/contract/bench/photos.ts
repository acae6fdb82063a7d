import { z } from 'zod';
import { reads, writes } from '../base.ts';
import { Instant, maybeText, text } from '../fields.ts';
import { JobId, PhotoId, StaffId } from '../ids.ts';
import { JOB_CLOSED } from './common.ts';

/** Photos of a job, kept byte for byte. */

const MEDIA_TYPES = ['image/jpeg', 'image/png', 'image/webp'] as const;

/** 8 MB. */
export const LARGEST_PHOTO = 8 * 1024 * 1024;

export const PhotoCard = z.object({
  id: PhotoId,
  /** What it shows: a step's key, a feature, or the machine as it came. */
  subject: z.string(),
  caption: z.string(),
  mediaType: z.enum(MEDIA_TYPES),
  /** How many bytes. */
  size: z.int(),
  sha256: z.string(),
  by: z.string(),
  at: Instant,
});
export type PhotoCard = z.infer<typeof PhotoCard>;

export const PHOTO_TOO_LARGE = {
  status: 413,
  message: 'A photo here is 8 MB at most. Take it at a smaller size and add that one.',
} as const;

export const NOT_A_PHOTO = {
  status: 422,
  message: 'That file is no JPEG, PNG or WebP picture. Choose another file.',
} as const;

export const photos = {
  addPhoto: writes
    .errors({
      JOB_CLOSED,
      PHOTO_TOO_LARGE,
      NOT_A_PHOTO,
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        subject: text(60),
        caption: maybeText(200),
        /** The file, base64. What kind of picture it is, is seen from its first bytes. */
        bytes: z.string().max(Math.ceil(LARGEST_PHOTO / 3) * 4 + 1_024 * 1_024),
      }),
    )
    .output(PhotoCard),

  photos: reads.input(z.strictObject({ jobId: JobId })).output(z.array(PhotoCard)),

  photo: reads
    .input(z.strictObject({ id: PhotoId }))
    .output(PhotoCard.extend({ /** Base64. */ bytes: z.string() })),
};
