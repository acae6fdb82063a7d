import { asc } from 'drizzle-orm';
import type { SQLiteColumn, SQLiteTable } from 'drizzle-orm/sqlite-core';
import { customer, invoice, job, journal, payment, reading } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';
import type { BackUpContents } from './contents.ts';

/** What the store has that a back-up has not. */
export interface Lost {
  /** Entries of the journal that the store has in all. */
  entries: number;
  /** How many of them, from the first, the back-up has too; none when it is of another shop. */
  entriesInCommon: number;
  customers: number;
  /** By their numbers. */
  jobs: number[];
  invoices: number[];
  payments: number;
  readings: number;
}

/** @param chain the hashes of the back-up's journal, from the first entry */
export function lostAgainst(
  store: ReadStore,
  chain: readonly string[],
  contents: BackUpContents,
): Lost {
  const own = store.select({ hash: journal.hash }).from(journal).orderBy(asc(journal.seq)).all();
  const parted = own.findIndex(({ hash }, index) => hash !== chain[index]);
  const missing = (table: SQLiteTable & { id: SQLiteColumn }, there: ReadonlySet<string>): number =>
    store
      .select({ id: table.id })
      .from(table)
      .all()
      .filter(({ id }) => !there.has(String(id))).length;
  const numbersMissing = (table: typeof job | typeof invoice, there: ReadonlySet<string>) =>
    store
      .select({ id: table.id, number: table.number })
      .from(table)
      .orderBy(asc(table.number))
      .all()
      .filter(({ id }) => !there.has(id))
      .map(({ number }) => number);
  return {
    entries: own.length,
    entriesInCommon: parted < 0 ? own.length : parted,
    customers: missing(customer, contents.customers),
    jobs: numbersMissing(job, contents.jobs),
    invoices: numbersMissing(invoice, contents.invoices),
    payments: missing(payment, contents.payments),
    readings: missing(reading, contents.readings),
  };
}
