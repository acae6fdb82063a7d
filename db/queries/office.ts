import { and, asc, desc, eq, max, sql } from 'drizzle-orm';
import type { PaperCard } from '../../shared/contract/counter/index.ts';
import { PaperId, StaffId } from '../../shared/contract/ids.ts';
import type { JournalEntry, Shop, Staff, TaxRule } from '../../shared/contract/office.ts';
import type { PaperKind } from '../../shared/work/vocabulary.ts';
import { prepared } from '../prepared.ts';
import { issuedPaper, journal, shop, staff } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';
import { namesWithin } from './journal-names.ts';

/** What a shop is before anybody has said so. */
export const UNNAMED_SHOP: Shop = {
  name: 'Our shop',
  address: '',
  phone: '',
  email: '',
  taxNumber: '',
  currency: 'USD',
  locale: 'en-US',
  timeZone: 'America/New_York',
  country: 'US',
  paperSize: 'Letter',
  rounding: 'half-up',
  taxBasis: 'invoice',
  taxes: [],
  labourRate: 0,
  bothUnits: true,
  warranty: '',
  claimTerms: '',
  estimateTerms: '',
  invoiceTerms: '',
};

/** Where and when a tax is charged of which nobody has said so. */
const EVERYWHERE_ALWAYS: Pick<TaxRule, 'place' | 'from' | 'until'> = {
  place: '',
  from: null,
  until: null,
};

const shopRow = prepared((store) => store.select().from(shop).prepare());

export function shopOf(store: ReadStore): Shop & { demo: boolean } {
  const row = shopRow(store).get();
  if (row === undefined) return { ...UNNAMED_SHOP, demo: false };
  const { only: _only, ...facts } = row;
  // Taxes that were set before they had places and dates have neither.
  return { ...facts, taxes: facts.taxes.map((tax) => ({ ...EVERYWHERE_ALWAYS, ...tax })) };
}

const asStaff = (row: typeof staff.$inferSelect): Staff => ({ ...row, id: StaffId.parse(row.id) });

export const staffList = (store: ReadStore): Staff[] =>
  store.select().from(staff).orderBy(asc(staff.name)).all().map(asStaff);

const staffRow = prepared((store) =>
  store
    .select()
    .from(staff)
    .where(eq(staff.id, sql.placeholder('id')))
    .prepare(),
);

export function staffById(store: ReadStore, id: string): Staff | undefined {
  const row = staffRow(store).get({ id });
  return row && asStaff(row);
}

// The PDF is left where it is until it is asked for: a list of papers stays light.
const paperColumns = {
  id: issuedPaper.id,
  kind: issuedPaper.kind,
  number: issuedPaper.number,
  title: issuedPaper.title,
  fileName: issuedPaper.fileName,
  fingerprint: issuedPaper.fingerprint,
  issuedAt: issuedPaper.issuedAt,
  issuedBy: staff.name,
};

const papersOfJob = prepared((store) =>
  store
    .select(paperColumns)
    .from(issuedPaper)
    .innerJoin(staff, eq(staff.id, issuedPaper.issuedBy))
    .where(eq(issuedPaper.jobId, sql.placeholder('jobId')))
    .orderBy(asc(issuedPaper.id))
    .prepare(),
);

export const papersOf = (store: ReadStore, jobId: string): PaperCard[] =>
  papersOfJob(store)
    .all({ jobId })
    .map((row) => ({ ...row, id: PaperId.parse(row.id) }));

export function paperCard(store: ReadStore, id: string): PaperCard | undefined {
  const row = store
    .select(paperColumns)
    .from(issuedPaper)
    .innerJoin(staff, eq(staff.id, issuedPaper.issuedBy))
    .where(eq(issuedPaper.id, id))
    .get();
  return row && { ...row, id: PaperId.parse(row.id) };
}

/** The paper of a kind that a job got last, what it said as JSON, and how many there are of the kind. */
export function latestPaper(store: ReadStore, jobId: string, kind: PaperKind) {
  const issued = store
    .select({
      number: issuedPaper.number,
      fingerprint: issuedPaper.fingerprint,
      content: issuedPaper.content,
    })
    .from(issuedPaper)
    .where(and(eq(issuedPaper.jobId, jobId), eq(issuedPaper.kind, kind)))
    .orderBy(desc(issuedPaper.id))
    .all();
  return issued[0] && { ...issued[0], issued: issued.length };
}

/** What was signed and the PDF itself, byte for byte as they were issued. */
export const paperBytes = (
  store: ReadStore,
  id: string,
): { content: string; pdf: Buffer; pdfSha256: string } | undefined =>
  store
    .select({
      content: issuedPaper.content,
      pdf: issuedPaper.pdf,
      pdfSha256: issuedPaper.pdfSha256,
    })
    .from(issuedPaper)
    .where(eq(issuedPaper.id, id))
    .get();

/** The number of the journal's latest entry; 0 before the first. */
export const lastJournalEntry = (store: ReadStore): number =>
  store
    .select({ last: max(journal.seq) })
    .from(journal)
    .get()?.last ?? 0;

export function journalEntries(store: ReadStore, limit: number): JournalEntry[] {
  const entries = store
    .select({
      seq: journal.seq,
      at: journal.at,
      by: sql<string>`coalesce(${staff.name}, '')`,
      what: journal.what,
      detail: journal.detail,
      hash: journal.hash,
    })
    .from(journal)
    // Whoever brought a back-up back may not be on its staff list: the entry itself says who.
    .leftJoin(staff, eq(staff.id, journal.by))
    .orderBy(desc(journal.seq))
    .limit(limit)
    .all();
  const namesIn = namesWithin(
    store,
    entries.map(({ detail }) => detail),
  );
  return entries.map((entry) => ({ ...entry, names: namesIn(entry.detail) }));
}
