import { and, asc, desc, eq, sql } from 'drizzle-orm';
import { PartId, StockCountId } from '../../../shared/contract/ids.ts';
import type {
  BinToCount,
  CountCard,
  CountLine,
  StockCount,
} from '../../../shared/contract/parts/index.ts';
import { dateIn } from '../../../shared/work/calendar.ts';
import { liesIn, overlap, racksOf } from '../../../shared/work/parts/bins.ts';
import { part, staff, stockCount, stockCountLine, stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

export const countRowById = (store: ReadStore, id: string) =>
  store.select().from(stockCount).where(eq(stockCount.id, id)).get();

interface CountOfPlace {
  id: StockCountId;
  bin: string;
  closedAt: string | null;
}

const allCounts = (store: ReadStore): CountOfPlace[] =>
  store
    .select({ id: stockCount.id, bin: stockCount.bin, closedAt: stockCount.closedAt })
    .from(stockCount)
    .all()
    .map((row) => ({ ...row, id: StockCountId.parse(row.id) }));

/** The count that is going on of some of the bins of a place. */
export const openCountAt = (store: ReadStore, place: string): StockCountId | undefined =>
  allCounts(store).find(({ bin, closedAt }) => closedAt === null && overlap(bin, place))?.id;

/** Bins and racks with parts in them: never counted first, then counted longest ago. */
export function binsOf(store: ReadStore, timeZone: string): BinToCount[] {
  const counts = allCounts(store);
  const bins = store
    .select({ bin: part.bin, parts: sql<number>`count(*)` })
    .from(part)
    .groupBy(part.bin)
    .all()
    .map((row) => ({ ...row, closedAt: lastClosed(counts, row.bin) }));
  const places = [...racksOf(bins.map(({ bin }) => bin)), ...bins.map(({ bin }) => bin)];
  return places
    .toSorted()
    .map((place) => {
      const within = bins.filter(({ bin }) => liesIn(bin, place));
      const [oldest] = within.map(({ closedAt }) => closedAt).toSorted(byAge);
      return {
        bin: place,
        bins: within.length,
        parts: within.reduce((sum, { parts }) => sum + parts, 0),
        countedOn: oldest ? dateIn(timeZone, oldest) : null,
        openCountId:
          counts.find(({ bin, closedAt }) => closedAt === null && liesIn(place, bin))?.id ?? null,
      };
    })
    .toSorted((a, b) => byAge(a.countedOn, b.countedOn));
}

/** When a count that went over a bin was closed last. */
const lastClosed = (counts: readonly CountOfPlace[], bin: string): string | null =>
  counts
    .filter((count) => liesIn(bin, count.bin))
    .map(({ closedAt }) => closedAt)
    .toSorted(byAge)
    .at(-1) ?? null;

const byAge = (a: string | null, b: string | null): number => {
  if (a === b) return 0;
  return (a ?? '') < (b ?? '') ? -1 : 1;
};

const unexplained = sql<number>`CASE WHEN ${stockCount.closedAt} IS NULL THEN 0 ELSE
  coalesce(sum(${stockCountLine.counted} <> ${stockCountLine.expected} AND ${stockCountLine.explanation} = ''), 0) END`;

/** Counts to be gone on with first, then the latest. */
export const countCards = (store: ReadStore, limit: number): CountCard[] =>
  store
    .select({
      id: stockCount.id,
      bin: stockCount.bin,
      by: staff.name,
      at: stockCount.at,
      closedAt: stockCount.closedAt,
      counted: sql<number>`count(${stockCountLine.partId})`,
      unexplained,
    })
    .from(stockCount)
    .innerJoin(staff, eq(staff.id, stockCount.by))
    .leftJoin(stockCountLine, eq(stockCountLine.countId, stockCount.id))
    .groupBy(stockCount.id)
    .orderBy(
      desc(sql`${stockCount.closedAt} IS NULL`),
      desc(sql`${unexplained} > 0`),
      desc(stockCount.at),
    )
    .limit(limit)
    .all()
    .map((row) => ({ ...row, id: StockCountId.parse(row.id) }));

export const countLineOf = (store: ReadStore, countId: string, partId: string) =>
  store
    .select()
    .from(stockCountLine)
    .where(and(eq(stockCountLine.countId, countId), eq(stockCountLine.partId, partId)))
    .get();

/** A count as whoever counts may see it: what should be there is in it once it is closed. */
export function countById(store: ReadStore, id: string): StockCount | undefined {
  const row = store
    .select({ count: stockCount, byName: staff.name })
    .from(stockCount)
    .innerJoin(staff, eq(staff.id, stockCount.by))
    .where(eq(stockCount.id, id))
    .get();
  if (row === undefined) return undefined;
  const { bin, at, closedAt } = row.count;
  const closed = closedAt !== null;
  const lines = linesOf(store, id, bin)
    .filter(({ line, part: { bin: home } }) => line !== null || (!closed && liesIn(home, bin)))
    .map(
      ({ part: { id: partId, ...about }, line, worth }): CountLine => ({
        partId: PartId.parse(partId),
        ...about,
        counted: line?.counted ?? null,
        outcome:
          closed && line !== null
            ? {
                expected: line.expected,
                difference: line.counted - line.expected,
                explanation: line.explanation,
                worth,
              }
            : null,
      }),
    )
    .toSorted((a, b) => Number(!liesIn(a.bin, bin)) - Number(!liesIn(b.bin, bin)));
  return { id: StockCountId.parse(id), bin, by: row.byName, at, closedAt, lines };
}

/** The parts that belong in the bin or were counted there, each with its figure if it has one. */
const linesOf = (store: ReadStore, countId: string, bin: string) =>
  store
    .select({
      part: {
        id: part.id,
        number: part.number,
        description: part.description,
        unit: part.unit,
        bin: part.bin,
      },
      line: stockCountLine,
      worth: sql<number | null>`(SELECT sum(${stockMovement.worth}) FROM ${stockMovement}
        WHERE ${stockMovement.partId} = ${part.id} AND ${stockMovement.countId} = ${countId})`,
    })
    .from(part)
    .leftJoin(
      stockCountLine,
      and(eq(stockCountLine.partId, part.id), eq(stockCountLine.countId, countId)),
    )
    // What merely begins like the place is sorted out by whoever reads them.
    .where(
      sql`${part.bin} = ${bin} OR (${bin} <> '' AND substr(${part.bin}, 1, length(${bin})) = ${bin})
        OR ${stockCountLine.partId} IS NOT NULL`,
    )
    .orderBy(asc(part.bin), asc(part.number))
    .all();
