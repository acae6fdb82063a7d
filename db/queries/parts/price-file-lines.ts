import { and, asc, between, eq, inArray, ne, type SQL, sql } from 'drizzle-orm';
import type { PriceFileLine, UnreadableLine } from '../../../shared/contract/parts/index.ts';
import {
  LINE_PROBLEMS,
  type LineProblem,
  PRICE_CHANGES,
  type PriceChangeKind,
} from '../../../shared/work/parts/price-file/words.ts';
import { priceFile, priceFileLine, supplierItem } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/**
 * What a line means against the supplier's price list as it stands: first whether its part is replaced by a
 * number that was not known before, then its cost, and at the same cost its list price.
 */
const change = sql<PriceChangeKind>`CASE
  WHEN ${priceFileLine.problem} <> '' THEN 'unreadable'
  WHEN ${priceFileLine.supersededBy} <> ''
    AND ${priceFileLine.supersededBy} IS NOT ${supplierItem.supersededBy} THEN 'superseded'
  WHEN ${supplierItem.id} IS NULL THEN 'new'
  WHEN ${priceFileLine.cost} > ${supplierItem.cost} THEN 'dearer'
  WHEN ${priceFileLine.cost} < ${supplierItem.cost} THEN 'cheaper'
  WHEN ${priceFileLine.listPrice} > ${supplierItem.listPrice} THEN 'dearer'
  WHEN ${priceFileLine.listPrice} < ${supplierItem.listPrice} THEN 'cheaper'
  ELSE 'unchanged' END`;

const knownItem = and(
  eq(supplierItem.supplierId, priceFile.supplierId),
  eq(supplierItem.numberKey, priceFileLine.numberKey),
  eq(priceFileLine.problem, ''),
);

/** How many lines of each kind a stretch of a file has. */
export function countChanges(
  store: ReadStore,
  fileId: string,
  [from, to]: readonly [from: number, to: number],
): Map<PriceChangeKind, number> {
  const rows = store
    .select({ change, count: sql<number>`count(*)` })
    .from(priceFileLine)
    .innerJoin(priceFile, eq(priceFile.id, priceFileLine.fileId))
    .leftJoin(supplierItem, knownItem)
    .where(and(eq(priceFileLine.fileId, fileId), between(priceFileLine.line, from, to)))
    // By its place: by its name it would be the column of another table.
    .groupBy(sql`1`)
    .all();
  return new Map(rows.map(({ change: kind, count }) => [kind, count]));
}

interface Stretch {
  from: number;
  limit: number;
}

const linesWhere = (store: ReadStore, fileId: string, where: SQL) =>
  store
    .select({
      line: priceFileLine.line,
      number: priceFileLine.number,
      numberKey: priceFileLine.numberKey,
      description: priceFileLine.description,
      cost: priceFileLine.cost,
      listPrice: priceFileLine.listPrice,
      formerCost: supplierItem.cost,
      formerListPrice: supplierItem.listPrice,
      supersededBy: priceFileLine.supersededBy,
    })
    .from(priceFileLine)
    .innerJoin(priceFile, eq(priceFile.id, priceFileLine.fileId))
    .leftJoin(supplierItem, knownItem)
    .where(and(eq(priceFileLine.fileId, fileId), where))
    .orderBy(asc(priceFileLine.line));

export const linesThatChange = (
  store: ReadStore,
  fileId: string,
  kind: PriceChangeKind,
  { from, limit }: Stretch,
): PriceFileLine[] =>
  linesWhere(store, fileId, sql`${change} = ${kind}`)
    .limit(limit)
    .offset(from)
    .all()
    .map(({ numberKey: _numberKey, ...line }) => line);

/** The usable lines of a file with any of these numbers, folded. */
export const linesByKeys = (store: ReadStore, fileId: string, keys: readonly string[]) =>
  linesWhere(
    store,
    fileId,
    sql`${priceFileLine.problem} = '' AND ${inArray(
      priceFileLine.numberKey,
      sql`(SELECT value FROM json_each(${JSON.stringify(keys)}))`,
    )}`,
  ).all();

/** A line's problem as it is kept: its name, and for a number that stands there twice where it first stood. */
export const keptProblem = (problem: LineProblem, firstLine: number | null): string =>
  firstLine === null ? problem : `${problem} ${firstLine}`;

export const unreadableLinesOf = (
  store: ReadStore,
  fileId: string,
  { from, limit }: Stretch,
): UnreadableLine[] =>
  store
    .select({
      line: priceFileLine.line,
      problem: priceFileLine.problem,
      raw: priceFileLine.raw,
    })
    .from(priceFileLine)
    .where(and(eq(priceFileLine.fileId, fileId), ne(priceFileLine.problem, '')))
    .orderBy(asc(priceFileLine.line))
    .limit(limit)
    .offset(from)
    .all()
    .map(({ line, problem, raw }) => {
      const [name, first] = problem.split(' ');
      const known = LINE_PROBLEMS.find((each) => each === name) ?? 'letters';
      return { line, problem: known, firstLine: first === undefined ? null : Number(first), raw };
    });

export const noChanges = (): Record<PriceChangeKind, number> => ({
  new: 0,
  dearer: 0,
  cheaper: 0,
  unchanged: 0,
  superseded: 0,
  unreadable: 0,
});

/** All of a file's lines by kind, against the price list as it stands. */
export function changesOf(store: ReadStore, fileId: string): Record<PriceChangeKind, number> {
  const counts = countChanges(store, fileId, [0, Number.MAX_SAFE_INTEGER]);
  const all = noChanges();
  for (const kind of PRICE_CHANGES) all[kind] = counts.get(kind) ?? 0;
  return all;
}
