import { z } from 'zod';
import { LABEL_PAPERS, overhangOf, USUAL_SHEETS } from '../../work/parts/label-layout.ts';
import { reads, writes } from '../base.ts';
import { PartId, StaffId } from '../ids.ts';

/** Labels for shelves and for parts, on sheets or from a roll. Lengths are millimetres. */

export const LABEL_SORTS = ['shelf', 'part'] as const;
export type LabelSort = (typeof LABEL_SORTS)[number];

export const LABEL_SYMBOLS = ['code-128', 'qr'] as const;
export type LabelSymbol = (typeof LABEL_SYMBOLS)[number];

const mm = (least: number, most: number) =>
  z
    .number()
    .min(least, `That is ${least} mm at least.`)
    .max(most, `That is ${most} mm at most.`)
    .multipleOf(0.01, 'A hundredth of a millimetre is as fine as it goes.');

const Sheet = z
  .strictObject({
    paper: z.enum(LABEL_PAPERS),
    rows: z.int().min(1).max(40),
    columns: z.int().min(1).max(20),
    labelWidth: mm(15, 210),
    labelHeight: mm(8, 297),
    marginLeft: mm(0, 100),
    marginTop: mm(0, 100),
    gapAcross: mm(0, 50),
    gapDown: mm(0, 50),
  })
  .superRefine((sheet, context) => {
    const { across, down } = overhangOf(sheet);
    const over = (path: string, length: number, what: string) =>
      length > 0 &&
      context.addIssue({
        code: 'custom',
        path: [path],
        message: `The ${what} reach ${length.toFixed(1)} mm over the edge of the paper. Look again at the figures on the package.`,
      });
    over('columns', across, 'columns');
    over('rows', down, 'rows');
  });

export const LabelSettings = z.strictObject({
  sheet: Sheet.default(USUAL_SHEETS.A4),
  /** A label from a roll, each a page of its own. */
  single: z
    .strictObject({ width: mm(15, 210), height: mm(8, 297) })
    .default({ width: 62, height: 29 }),
  symbol: z.enum(LABEL_SYMBOLS).default('code-128'),
  /** Whether a shelf's label says what the part sells for. */
  showPrice: z.boolean().default(false),
});
export type LabelSettings = z.infer<typeof LabelSettings>;

/** Drawn in one go while nobody else is served: a second or two. */
const MOST_LABELS = 1000;

export const labels = {
  labelSettings: reads.input(z.strictObject({})).output(LabelSettings),

  setLabelSettings: writes
    .input(z.strictObject({ by: StaffId, settings: LabelSettings }))
    .output(LabelSettings),

  /** Labels as PDF, drawn anew each time and not kept. */
  labelFile: reads
    .errors({
      LABEL_TOO_SMALL: {
        status: 409,
        message:
          'Bars for some numbers can’t be printed on a label of this size so that a reader is sure of them. Print QR codes, or choose a larger label.',
        data: z.object({ numbers: z.array(z.string()) }),
      },
      NO_SUCH_LABEL: {
        status: 409,
        message: 'A sheet has fewer labels than that. Begin at one of them.',
        data: z.object({ labels: z.int() }),
      },
    })
    .input(
      z.strictObject({
        sort: z.enum(LABEL_SORTS),
        form: z.enum(['sheet', 'single']),
        /** The first label of the sheet that is still there, from 1, row by row. */
        startAt: z.int().min(1).max(800).default(1),
        labels: z
          .array(z.strictObject({ partId: PartId, copies: z.int().min(1).max(500).default(1) }))
          .min(1, 'Choose a part first.')
          .max(500)
          .refine(
            (labels) => labels.reduce((sum, { copies }) => sum + copies, 0) <= MOST_LABELS,
            `That is more than ${MOST_LABELS} labels at once. Print them in parts.`,
          ),
      }),
    )
    .output(
      z.object({
        fileName: z.string(),
        /** Sheets, or labels of a roll. */
        pages: z.int(),
        /** Base64. */
        pdf: z.base64(),
      }),
    ),
};
