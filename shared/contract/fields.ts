import { z } from 'zod';

/** Field schemas that the rooms share. Text is trimmed and brought to Unicode NFC before it is stored. */

// Line feeds and tabs are what people type into a notes field; other control characters are pasted rubbish.
const CONTROL = /[\p{Cc}--[\n\t\r]]/v;

const clean = (maximum: number) =>
  z
    .string()
    .transform((text) => text.normalize('NFC').trim())
    .pipe(
      z
        .string()
        .max(maximum, `Keep this to ${maximum} characters.`)
        .refine((text) => !CONTROL.test(text), 'Remove the control characters from this text.')
        .refine(
          (text) => text.isWellFormed(),
          'Half a character is missing in this text; type it again.',
        ),
    );

/** Text that must be there, 1 to `maximum` characters. */
export const text = (maximum = 200) =>
  clean(maximum).pipe(z.string().min(1, 'This must not be empty.'));

/** Text that may be empty; missing means empty. */
export const maybeText = (maximum = 200) => clean(maximum).default('');

/** Money: whole minor units (cents) of the shop's currency, zero or more, up to a thousand million. */
export const Minor = z
  .int('Give the amount in whole minor units (cents).')
  .min(0, 'An amount here is zero or more.')
  .max(100_000_000_000, 'That is more than any bill here can be.');

/** A calendar date, `2026-11-25`. */
export const CalendarDate = z.iso.date('Give the date as year-month-day, for example 2026-11-25.');

/** An instant in UTC, `2026-11-25T09:20:12.000Z`. */
export const Instant = z.iso.datetime();

const Coordinate = z.number().min(-10_000).max(10_000);

/**
 * A signature: strokes as drawn on a pad (polylines, y downwards, in a box of width × height units),
 * or no strokes when the name was typed instead.
 */
export const SignatureInput = z.strictObject({
  name: text(120),
  strokes: z
    .array(z.array(z.strictObject({ x: Coordinate, y: Coordinate })).max(5_000))
    .max(500)
    .default([]),
  width: z.number().positive().max(10_000).default(400),
  height: z.number().positive().max(10_000).default(120),
});

export const Signature = z.object({
  name: z.string(),
  signedAt: Instant,
  strokes: z.array(z.array(z.object({ x: z.number(), y: z.number() }))),
  width: z.number(),
  height: z.number(),
});
export type Signature = z.infer<typeof Signature>;

/** Who signed and when, and who typed the name in place of the signature; null when it was drawn. */
export const SignedBy = z.object({
  name: z.string(),
  typedBy: z.string().nullable(),
  at: Instant,
});
export type SignedBy = z.infer<typeof SignedBy>;
