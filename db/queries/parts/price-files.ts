import { and, asc, desc, eq, sql } from 'drizzle-orm';
import { PriceFileId, SupplierId } from '../../../shared/contract/ids.ts';
import type { PriceFileCard } from '../../../shared/contract/parts/index.ts';
import {
  PRICE_CHANGES,
  type PriceChangeKind,
} from '../../../shared/work/parts/price-file/words.ts';
import { priceChange, priceFile, staff, supplier } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { noChanges } from './price-file-lines.ts';

/** How many lines of each kind a file has, and how many parts of ours are in it, as its row keeps them. */
export type PriceFileCounts = Record<PriceChangeKind, number> & { ours: number };

const NOTHING_COUNTED: PriceFileCounts = { ...noChanges(), ours: 0 };

/** What is under way with files in this process, by the file's id: how much of it is read. */
export type BeingRead = ReadonlyMap<string, { lines: number; share: number }>;

export function countsOf(kept: string): PriceFileCounts {
  const counts: unknown = kept === '' ? {} : JSON.parse(kept);
  const at = (kind: string): number => {
    const value: unknown = Object(counts)[kind];
    return typeof value === 'number' ? value : 0;
  };
  const kinds = Object.fromEntries([...PRICE_CHANGES, 'ours'].map((kind) => [kind, at(kind)]));
  return { ...NOTHING_COUNTED, ...kinds };
}

const rows = (store: ReadStore) =>
  store
    .select({
      file: priceFile,
      supplier: supplier.name,
      by: staff.name,
      hasBefore: sql<number>`EXISTS (SELECT 1 FROM ${priceChange} WHERE ${priceChange.fileId} = ${priceFile.id})`,
    })
    .from(priceFile)
    .innerJoin(supplier, eq(supplier.id, priceFile.supplierId))
    .innerJoin(staff, eq(staff.id, priceFile.by));

type Row = ReturnType<ReturnType<typeof rows>['all']>[number];

function card({ file, supplier: name, by, hasBefore }: Row, beingRead: BeingRead): PriceFileCard {
  const { ours, ...counts } = countsOf(file.counts);
  const reading = beingRead.get(file.id);
  // Nobody reads it any longer: the program was closed in the midst of it.
  const state = file.state === 'reading' && reading === undefined ? 'stopped' : file.state;
  return {
    id: PriceFileId.parse(file.id),
    supplierId: SupplierId.parse(file.supplierId),
    supplier: name,
    fileName: file.fileName,
    state,
    lines: reading?.lines ?? file.lines,
    share: reading?.share ?? 1,
    counts,
    ours,
    canBeUndone: state === 'applied' && hasBefore === 1,
    by,
    at: file.at,
    appliedAt: file.appliedAt,
    undoneAt: file.undoneAt,
  };
}

export const priceFilesOf = (
  store: ReadStore,
  limit: number,
  beingRead: BeingRead,
): PriceFileCard[] =>
  rows(store)
    .orderBy(desc(priceFile.at), desc(priceFile.id))
    .limit(limit)
    .all()
    .map((row) => card(row, beingRead));

export function priceFileById(
  store: ReadStore,
  id: string,
  beingRead: BeingRead,
): PriceFileCard | undefined {
  const row = rows(store).where(eq(priceFile.id, id)).get();
  return row && card(row, beingRead);
}

export const priceFileRow = (store: ReadStore, id: string) =>
  store.select().from(priceFile).where(eq(priceFile.id, id)).get();

/** Files of a supplier in a state, the oldest first. */
export const priceFilesIn = (
  store: ReadStore,
  supplierId: string,
  state: typeof priceFile.$inferSelect.state,
) =>
  store
    .select({ id: priceFile.id })
    .from(priceFile)
    .where(and(eq(priceFile.supplierId, supplierId), eq(priceFile.state, state)))
    .orderBy(asc(priceFile.at))
    .all()
    .map(({ id }) => id);

/** How a supplier's last file was read, as it was kept: empty for none, undefined for nobody. */
export const priceFileMappingOf = (store: ReadStore, supplierId: string): string | undefined =>
  store
    .select({ mapping: supplier.priceFileMapping })
    .from(supplier)
    .where(eq(supplier.id, supplierId))
    .get()?.mapping;
