import { z } from 'zod';
import { reads, writes } from '../base.ts';
import { maybeText, text } from '../fields.ts';
import { BundleId, StaffId } from '../ids.ts';
import { LineInput, Lines } from './lines.ts';

/** Lines that are used together again and again: a valve job with its usual hours and parts. */
export const Bundle = z.object({
  id: BundleId,
  name: z.string(),
  note: z.string(),
  /** At today's prices: labour at today's rate, parts at what they sell for now, all else as kept. */
  lines: z.array(LineInput.extend({ partNumber: z.string() })),
  /** Of its labour by the hour, thousandths. */
  hours: z.int(),
});
export type Bundle = z.infer<typeof Bundle>;

export const bundles = {
  /** Those in use, by name. */
  bundles: reads.input(z.strictObject({})).output(z.array(Bundle)),

  /** A new bundle, or one that is there with other lines; a retired one of that name comes back. */
  saveBundle: writes
    .errors({
      BUNDLE_NAME_TAKEN: {
        status: 409,
        message: 'Another bundle has this name. Change that one, or give this one another name.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        id: BundleId.nullable().default(null),
        name: text(120),
        note: maybeText(500),
        lines: Lines,
      }),
    )
    .output(Bundle),

  /** No longer offered; estimates that were made with it stay as they are. */
  retireBundle: writes.input(z.strictObject({ by: StaffId, id: BundleId })).output(z.array(Bundle)),
};
