import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Instant, text } from './fields.ts';
import { SourceFileId, SourceId, StaffId } from './ids.ts';

/** Scans and pages of a source, kept byte for byte beside it. */

const SOURCE_FILE_TYPES = ['application/pdf', 'image/jpeg', 'image/png', 'image/webp'] as const;

/** 10 MB. */
export const LARGEST_SOURCE_FILE = 10 * 1024 * 1024;

export const SourceFile = z.object({
  id: SourceFileId,
  fileName: z.string(),
  /** Seen from the first bytes, never taken from the name. */
  mediaType: z.enum(SOURCE_FILE_TYPES),
  /** How many bytes. */
  size: z.int(),
  /** Fingerprint of the bytes, hexadecimal. */
  sha256: z.string(),
  by: z.string(),
  at: Instant,
});
export type SourceFile = z.infer<typeof SourceFile>;

export const sourceFiles = {
  /** The files of a source, oldest first, without their bytes. */
  sourceFiles: reads.input(z.strictObject({ sourceId: SourceId })).output(z.array(SourceFile)),

  sourceFile: reads
    .input(z.strictObject({ id: SourceFileId }))
    .output(SourceFile.extend({ /** Base64. */ bytes: z.string() })),

  addSourceFile: writes
    .errors({
      FILE_TOO_LARGE: {
        status: 413,
        message: 'A file here is 10 MB at most. Scan the pages that matter, and add those.',
      },
      NOT_A_PAGE: {
        status: 422,
        message: 'That file is no PDF and no JPEG, PNG or WebP picture. Choose another file.',
      },
      FILE_THERE_ALREADY: {
        status: 409,
        message: 'This source has that very file already. Look for it among its files.',
        data: z.object({ fileName: z.string() }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        sourceId: SourceId,
        fileName: text(200),
        /** The file, base64. */
        bytes: z.string().max(Math.ceil(LARGEST_SOURCE_FILE / 3) * 4 + 1024 * 1024),
      }),
    )
    .output(SourceFile),
};
