import { type SQL, sql } from 'drizzle-orm';
import type { SQLiteColumn } from 'drizzle-orm/sqlite-core';
import { jobCode } from '../../shared/contract/ids.ts';
import {
  bundle,
  customer,
  engineModel,
  gauge,
  issuedPaper,
  job,
  machine,
  part,
  source,
  staff,
  stockCount,
  supplier,
} from '../schema/index.ts';
import type { ReadStore } from '../store.ts';

const ID = /[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g;

type Named = (store: ReadStore, ids: string) => { id: string; name: string }[];

/** Where an id may be from, and what people call what it stands for. */
const NAMED: readonly Named[] = [
  (store, ids) =>
    store
      .select({ id: job.id, number: job.number })
      .from(job)
      .where(among(job.id, ids))
      .all()
      .map(({ id, number }) => ({ id, name: jobCode(number) })),
  ...(
    [
      [customer, customer.name],
      [machine, sql<string>`trim(${machine.make} || ' ' || ${machine.model})`],
      [engineModel, sql<string>`${engineModel.make} || ' ' || ${engineModel.model}`],
      [gauge, gauge.name],
      [source, source.title],
      [part, part.number],
      [supplier, supplier.name],
      [stockCount, stockCount.bin],
      [bundle, bundle.name],
      [staff, staff.name],
      [issuedPaper, issuedPaper.title],
    ] as const
  ).map(
    ([table, name]): Named =>
      (store, ids) =>
        store
          .select({ id: table.id, name: sql<string>`${name}` })
          .from(table)
          .where(among(table.id, ids))
          .all(),
  ),
];

const among = (column: SQLiteColumn, ids: string): SQL =>
  sql`${column} in (select value from json_each(${ids}))`;

/** Looks up all ids within the texts at once, and tells those of one text by their names; unknown ones are left out. */
export function namesWithin(store: ReadStore, texts: readonly string[]) {
  const ids = JSON.stringify([...new Set(texts.flatMap(idsIn))]);
  const names = new Map(
    NAMED.flatMap((find) => find(store, ids)).map(({ id, name }) => [id, name]),
  );
  return (text: string): Record<string, string> =>
    Object.fromEntries(
      idsIn(text).flatMap((id) => {
        const name = names.get(id);
        return name === undefined ? [] : [[id, name]];
      }),
    );
}

const idsIn = (text: string): string[] => text.match(ID) ?? [];
