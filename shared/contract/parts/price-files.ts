import { z } from 'zod';
import {
  DECIMAL_MARKS,
  DELIMITERS,
  LINE_PROBLEMS,
  PRICE_CHANGES,
  PRICED_BY,
  TEXT_ENCODINGS,
} from '../../work/parts/price-file/words.ts';
import { PRICE_FILE_STATES } from '../../work/parts/stock-words.ts';
import { reads, writes } from '../base.ts';
import { Instant, text } from '../fields.ts';
import { PartId, PriceFileId, StaffId, SupplierId } from '../ids.ts';

/** Suppliers' price files: looked at, read line by line, compared, applied as a whole and undone as a whole. */

/** 20 MB: a hundred thousand lines take about eight. */
export const LARGEST_PRICE_FILE = 20 * 1024 * 1024;

const MOST_COLUMNS = 200;
const MOST_HEADING_LINES = 50;

/** A column by its place, from zero, and by what stands above it. */
const Column = z.strictObject({
  column: z
    .int()
    .min(0)
    .max(MOST_COLUMNS - 1),
  heading: z.string().max(400).default(''),
});

const maybeColumn = Column.nullable().default(null);

/** How a file is to be read. It is remembered for the supplier's next one. */
export const PriceFileMapping = z.strictObject({
  /** For a text file. */
  encoding: z.enum(TEXT_ENCODINGS).default('utf-8'),
  delimiter: z.enum(DELIMITERS).default(','),
  /** The sheet of a spreadsheet file; the longest one when empty. */
  sheet: z.string().max(100).default(''),
  decimalMark: z.enum(DECIMAL_MARKS).default('.'),
  pricedBy: z.enum(PRICED_BY).default('one'),
  /** Lines before the first part; the last of them has the headings. */
  headingLines: z.int().min(0).max(MOST_HEADING_LINES),
  columns: z.strictObject({
    number: Column,
    cost: Column,
    description: maybeColumn,
    listPrice: maybeColumn,
    packSize: maybeColumn,
    coreCharge: maybeColumn,
    supersededBy: maybeColumn,
  }),
});
export type PriceFileMapping = z.infer<typeof PriceFileMapping>;

/** What a file looks like before it is read, and how it would be read. */
export const PriceFileSketch = z.object({
  kind: z.enum(['text', 'spreadsheet']),
  encoding: z.enum(TEXT_ENCODINGS),
  delimiter: z.enum(DELIMITERS),
  sheets: z.array(z.string()),
  sheet: z.string(),
  decimalMark: z.enum(DECIMAL_MARKS),
  pricedBy: z.enum(PRICED_BY),
  headingLines: z.int(),
  /** One a column; empty texts where the file has no headings. */
  headings: z.array(z.string()),
  /** The first lines with parts, cell by cell. */
  sample: z.array(z.array(z.string())),
  /** The place of each field among the columns, as far as it can be told. */
  columns: z.object({
    number: z.int().nullable(),
    cost: z.int().nullable(),
    description: z.int().nullable(),
    listPrice: z.int().nullable(),
    packSize: z.int().nullable(),
    coreCharge: z.int().nullable(),
    supersededBy: z.int().nullable(),
  }),
  /** Whether the columns are those of the supplier's last file, or were told by their headings. */
  columnsFrom: z.enum(['last-file', 'headings']),
});
export type PriceFileSketch = z.infer<typeof PriceFileSketch>;

const Counts = z.object({
  new: z.int(),
  dearer: z.int(),
  cheaper: z.int(),
  unchanged: z.int(),
  superseded: z.int(),
  unreadable: z.int(),
});

export const PriceFileCard = z.object({
  id: PriceFileId,
  supplierId: SupplierId,
  supplier: z.string(),
  fileName: z.string(),
  state: z.enum(PRICE_FILE_STATES),
  /** How many lines were read so far. */
  lines: z.int(),
  /** How much of the file that is, from 0 to 1. */
  share: z.number(),
  counts: Counts,
  /** How many parts of ours are in it. */
  ours: z.int(),
  /** Whether it is the last file of its supplier that was applied: only that one can be undone. */
  canBeUndone: z.boolean(),
  by: z.string(),
  at: Instant,
  appliedAt: Instant.nullable(),
  undoneAt: Instant.nullable(),
});
export type PriceFileCard = z.infer<typeof PriceFileCard>;

export const PriceFileLine = z.object({
  /** In the file, from 1. */
  line: z.int(),
  number: z.string(),
  description: z.string(),
  /** Minor units for one unit. */
  cost: z.int(),
  listPrice: z.int().nullable(),
  /** As known before the file; null for what is new. */
  formerCost: z.int().nullable(),
  formerListPrice: z.int().nullable(),
  supersededBy: z.string(),
});
export type PriceFileLine = z.infer<typeof PriceFileLine>;

export const UnreadableLine = z.object({
  line: z.int(),
  problem: z.enum(LINE_PROBLEMS),
  /** For a number that stands there twice, the line on which it stood first. */
  firstLine: z.int().nullable(),
  /** What stands there. */
  raw: z.string(),
});
export type UnreadableLine = z.infer<typeof UnreadableLine>;

export const RepricedPart = z.object({
  id: PartId,
  number: z.string(),
  description: z.string(),
  formerCost: z.int(),
  cost: z.int(),
  /** What one sells for by the shop's rules. */
  formerlySellsAt: z.int(),
  sellsAt: z.int(),
  /** The part of ours that takes its place by this file, or empty. */
  supersededBy: z.string(),
});
export type RepricedPart = z.infer<typeof RepricedPart>;

export const SupplierOffer = z.object({
  supplierId: SupplierId,
  supplier: z.string(),
  number: z.string(),
  description: z.string(),
  cost: z.int(),
  listPrice: z.int().nullable(),
  packSize: z.int(),
  coreCharge: z.int(),
  supersededBy: z.string(),
  /** When the file that last said so was applied; null for what was typed in. */
  asOf: Instant.nullable(),
});
export type SupplierOffer = z.infer<typeof SupplierOffer>;

const file = {
  supplierId: SupplierId,
  fileName: text(200),
  /** The file, base64. */
  bytes: z.string().max(Math.ceil(LARGEST_PRICE_FILE / 3) * 4 + 1024),
};

const FILE_TOO_LARGE = {
  status: 413,
  message: 'A price file here is 20 MB at most. Divide it, and read one part after the other.',
} as const;

const NOT_A_PRICE_FILE = {
  status: 422,
  message:
    'That file is no table that can be read here. Save it as CSV or as an XLSX workbook, and choose that.',
} as const;

const page = {
  id: PriceFileId,
  from: z.int().min(0).max(10_000_000).default(0),
  limit: z.int().min(1).max(1000).default(100),
};

export const priceFiles = {
  /** Looks at a file and says how it would be read. Nothing is kept. */
  sketchPriceFile: reads
    .errors({ FILE_TOO_LARGE, NOT_A_PRICE_FILE })
    .input(
      z.strictObject({
        ...file,
        /** What somebody knows better than what the file looks like. */
        as: z
          .strictObject({
            encoding: z.enum(TEXT_ENCODINGS),
            delimiter: z.enum(DELIMITERS),
            sheet: z.string().max(100),
            headingLines: z.int().min(0).max(MOST_HEADING_LINES),
          })
          .partial()
          .default({}),
      }),
    )
    .output(PriceFileSketch),

  /**
   * Begins to read a file, which then goes on by itself. A file of the supplier's that was read and not
   * applied is put away for it.
   */
  readPriceFile: writes
    .errors({
      FILE_TOO_LARGE,
      NOT_A_PRICE_FILE,
      STILL_READING: {
        status: 409,
        message: 'A file of this supplier is being read. Wait for it, or stop it first.',
        data: z.object({ id: PriceFileId }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        ...file,
        mapping: PriceFileMapping,
        /** Answers only when the file is read, for who can't come back to look. */
        wait: z.boolean().default(false),
      }),
    )
    .output(PriceFileCard),

  /** Stops the reading of a file, or puts away one that was read. Nothing of it is left. */
  stopPriceFile: writes
    .errors({
      APPLIED_ALREADY: {
        status: 409,
        message: 'This file was applied already. Undo it, if it should not have been.',
      },
    })
    .input(z.strictObject({ by: StaffId, id: PriceFileId }))
    .output(PriceFileCard),

  /** The last ones first. */
  priceFiles: reads
    .input(z.strictObject({ limit: z.int().min(1).max(500).default(50) }))
    .output(z.array(PriceFileCard)),

  priceFile: reads.input(z.strictObject({ id: PriceFileId })).output(PriceFileCard),

  /** Lines of one kind in a file that was read, in their order. */
  priceFileLines: reads
    .input(z.strictObject({ ...page, change: z.enum(PRICE_CHANGES).exclude(['unreadable']) }))
    .output(z.array(PriceFileLine)),

  /** Lines that can't be used, each with the reason, in their order. */
  unreadableLines: reads.input(z.strictObject(page)).output(z.array(UnreadableLine)),

  /** Parts of ours whose cost, list price or place changes, or was changed, by the file. */
  repricedParts: reads.input(z.strictObject(page)).output(z.array(RepricedPart)),

  /** Takes all usable lines over into the supplier's price list and onto the parts bought from them. */
  applyPriceFile: writes
    .errors({
      NOT_READ: {
        status: 409,
        message: 'Only a file that was read to its end and not applied yet can be applied.',
      },
    })
    .input(z.strictObject({ by: StaffId, id: PriceFileId }))
    .output(PriceFileCard),

  /** Brings the price list and the parts back to what they were before. */
  undoPriceFile: writes
    .errors({
      NOT_THE_LAST: {
        status: 409,
        message:
          'Only the last file of a supplier that was applied can be undone. Read an older one anew, if its prices should hold.',
      },
    })
    .input(z.strictObject({ by: StaffId, id: PriceFileId }))
    .output(PriceFileCard),

  /** What suppliers offer by their price lists: by the beginning of a number, or words of the description. */
  findOffers: reads
    .input(z.strictObject({ text: text(120), limit: z.int().min(1).max(200).default(50) }))
    .output(z.array(SupplierOffer)),
};
