import { z } from 'zod';
import { sameTaxTwice } from '../money/index.ts';
import { LINE_KINDS, STAFF_ROLES } from '../work/vocabulary.ts';
import { backUps } from './back-ups.ts';
import { OWNER_WANTED, opens, reads, writes } from './base.ts';
import { PaperCard } from './counter/index.ts';
import { CalendarDate, Instant, Minor, maybeText, text } from './fields.ts';
import { JobCode, JobId, PaperId, StaffId } from './ids.ts';

/** The office: the shop itself, staff, issued papers, back-ups, the journal. */

export const TaxRule = z.strictObject({
  name: text(60),
  /** Millionths: 62500 is 6.25 %. */
  ratePpm: z.int().min(0).max(1_000_000),
  kinds: z.array(z.enum(LINE_KINDS)).max(LINE_KINDS.length),
  /** Where it is charged, as the customers' tax place says; empty: everywhere. */
  place: maybeText(60),
  /** The first and the last day on which it is charged; null: no end on that side. */
  from: CalendarDate.nullable().default(null),
  until: CalendarDate.nullable().default(null),
});
export type TaxRule = z.infer<typeof TaxRule>;

/** On a bill a tax is known by its name, so that two of one name can't be charged together. */
const Taxes = z
  .array(TaxRule)
  .max(6)
  .superRefine((taxes, context) => {
    const twice = sameTaxTwice(taxes);
    if (twice !== null)
      context.addIssue({
        code: 'custom',
        path: [twice, 'name'],
        message:
          'Another tax of this name is charged in the same place on the same days. Give one of them another name, place or time.',
      });
  });

const knownTimeZone = (zone: string): boolean => {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: zone }) !== null;
  } catch {
    return false;
  }
};

const knownLocale = (locale: string): boolean => {
  try {
    return Intl.getCanonicalLocales(locale).length === 1;
  } catch {
    return false;
  }
};

const shopFields = {
  name: text(120),
  address: maybeText(400),
  phone: maybeText(40),
  email: maybeText(200),
  taxNumber: maybeText(60),
  currency: z.string().regex(/^[A-Z]{3}$/, 'A currency is three capitals, for example USD.'),
  locale: z.string().refine(knownLocale, 'That is not a language tag, for example en-US.'),
  timeZone: z
    .string()
    .refine(knownTimeZone, 'That is not a time zone, for example America/Chicago.'),
  paperSize: z.enum(['A4', 'Letter']),
  /** Two-letter country that telephone numbers without a + belong to. */
  country: z.string().regex(/^[A-Z]{2}$/, 'A country is two capitals, for example US.'),
  rounding: z.enum(['half-up', 'half-even']),
  taxBasis: z.enum(['line', 'invoice']),
  taxes: Taxes,
  labourRate: Minor,
  bothUnits: z.boolean(),
  warranty: maybeText(1000),
  claimTerms: maybeText(2000),
  estimateTerms: maybeText(2000),
  invoiceTerms: maybeText(2000),
};

export const Shop = z.object(shopFields);
export type Shop = z.infer<typeof Shop>;

export const Staff = z.object({
  id: StaffId,
  name: z.string(),
  role: z.enum(STAFF_ROLES),
  active: z.boolean(),
});
export type Staff = z.infer<typeof Staff>;

export const JournalEntry = z.object({
  seq: z.int(),
  at: Instant,
  by: z.string(),
  what: z.string(),
  detail: z.string(),
  /** What people call what the ids within the detail stand for, by id. */
  names: z.record(z.string(), z.string()),
  hash: z.string(),
});
export type JournalEntry = z.infer<typeof JournalEntry>;

const STAFF_NAME_TAKEN = {
  status: 409,
  message: 'Somebody of that name is on the list. Add an initial so that papers say who did it.',
} as const;

export const office = {
  about: reads.input(z.strictObject({})).output(
    z.object({
      program: z.string(),
      version: z.string(),
      /** How many migrations the store has had. */
      schema: z.int(),
      dataFolder: z.string(),
      demo: z.boolean(),
      /** Nobody on the staff list yet: the screens begin with setting the shop up. */
      firstRun: z.boolean(),
      today: z.iso.date(),
      /** How often a back-up was brought back since the program began: screens that see it change load anew. */
      broughtBack: z.int(),
      /** The latest entry of the journal: screens that see it grow ask the desk again. */
      written: z.int(),
    }),
  ),

  shop: reads.input(z.strictObject({})).output(Shop),

  /** What stands on the papers and how the shop reckons: the owner decides. */
  setShop: writes
    .errors({
      OWNER_WANTED,
      CURRENCY_IN_USE: {
        status: 409,
        message:
          'Estimates, invoices or payments are written in the shop’s currency, and would be read in another. Keep it; for another currency set up a shop of its own.',
      },
    })
    .input(z.strictObject({ by: StaffId, ...shopFields }))
    .output(Shop),

  /** The first person of a new shop; only while the staff list is empty. */
  openShop: opens
    .errors({
      SHOP_OPEN_ALREADY: {
        status: 409,
        message: 'The shop is set up already. Choose who is at this station and go on.',
      },
    })
    .input(
      z.strictObject({
        ownerName: text(120),
        shopName: text(120),
        currency: shopFields.currency,
        locale: shopFields.locale,
        timeZone: shopFields.timeZone,
        country: shopFields.country,
        paperSize: shopFields.paperSize,
      }),
    )
    .output(Staff),

  staff: reads.input(z.strictObject({})).output(z.array(Staff)),

  /** Anybody adds a colleague; another owner is added by an owner. */
  addStaff: writes
    .errors({ STAFF_NAME_TAKEN, OWNER_WANTED })
    .input(z.strictObject({ by: StaffId, name: text(120), role: z.enum(STAFF_ROLES) }))
    .output(Staff),

  /** Somebody is called otherwise, does something else, leaves or comes back. Papers stay as they were. */
  amendStaff: writes
    .errors({
      STAFF_NAME_TAKEN,
      OWNER_WANTED,
      LAST_OWNER: {
        status: 409,
        message:
          'Nobody else is an owner here, and some things only an owner can do. Make somebody else an owner first.',
      },
      CLOCK_STILL_RUNS: {
        status: 409,
        message: 'Their clock runs on a job. Clock them off first, so that their time is kept.',
        data: z.object({ jobCode: JobCode }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        id: StaffId,
        name: text(120),
        role: z.enum(STAFF_ROLES),
        /** Works here. */
        active: z.boolean(),
      }),
    )
    .output(Staff),

  papers: reads.input(z.strictObject({ jobId: JobId })).output(z.array(PaperCard)),

  /** An issued paper, byte for byte as it was signed. */
  paper: reads.input(z.strictObject({ id: PaperId })).output(
    PaperCard.extend({
      /** What was signed, as canonical JSON (RFC 8785): the SHA-256 of its UTF-8 is the fingerprint. */
      content: z.string(),
      /** The PDF, base64. */
      pdf: z.base64(),
      /** SHA-256 of the PDF's bytes, hexadecimal. */
      pdfSha256: z.string(),
    }),
  ),

  journal: reads
    .input(z.strictObject({ limit: z.int().min(1).max(1000).default(100) }))
    .output(z.array(JournalEntry)),

  /** Walks the whole chain. */
  verifyJournal: reads
    .input(z.strictObject({}))
    .output(z.object({ entries: z.int(), intact: z.boolean(), firstBroken: z.int().nullable() })),

  ...backUps,
};
