import { asc, type Column, eq, sql } from 'drizzle-orm';
import type { Contradiction, Specification } from '../../../shared/contract/specbook.ts';
import { openContradictions } from '../../../shared/work/specbook/contradiction.ts';
import { standingOf } from '../../../shared/work/specbook/standing.ts';
import { prepared } from '../../prepared.ts';
import {
  confirmation,
  contradiction,
  source,
  type specification,
  staff,
} from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { asSource } from './sources.ts';

type SpecificationRow = typeof specification.$inferSelect;

/** One list of any length, so that the statement is always the same. */
const among = (column: Column) =>
  sql`${column} in (select value from json_each(${sql.placeholder('ids')}))`;

const confirmationsAmong = prepared((store) =>
  store
    .select({ confirmation, source, byName: staff.name })
    .from(confirmation)
    .innerJoin(source, eq(source.id, confirmation.sourceId))
    .innerJoin(staff, eq(staff.id, confirmation.by))
    .where(among(confirmation.specificationId))
    .orderBy(asc(confirmation.id))
    .prepare(),
);

const confirmationsOf = (store: ReadStore, ids: string[]) =>
  confirmationsAmong(store).all({ ids: JSON.stringify(ids) });

const contradictionsAmong = prepared((store) =>
  store
    .select({ contradiction, source, byName: staff.name })
    .from(contradiction)
    .innerJoin(source, eq(source.id, contradiction.sourceId))
    .innerJoin(staff, eq(staff.id, contradiction.by))
    .where(among(contradiction.specificationId))
    .orderBy(asc(contradiction.at), asc(contradiction.id))
    .prepare(),
);

const contradictionsOf = (store: ReadStore, ids: string[]) =>
  contradictionsAmong(store)
    .all({ ids: JSON.stringify(ids) })
    .map((row) => ({ ...row.contradiction, source: row.source, byName: row.byName }));

type ContradictionRow = ReturnType<typeof contradictionsOf>[number];

const asContradiction = (row: ContradictionRow): Contradiction => ({
  source: asSource(row.source),
  page: row.page,
  low: row.low,
  high: row.high,
  unit: row.unit,
  lowBase: row.lowBase,
  highBase: row.highBase,
  by: row.byName,
  at: row.at,
});

/** What speaks for a specification and what against it, and the standing that follows; of many at once. */
export function witnessesOf(
  store: ReadStore,
  ids: string[],
): (
  row: SpecificationRow,
  sourceRow: typeof source.$inferSelect,
) => Pick<Specification, 'standing' | 'confirmations' | 'contradictions'> {
  const confirmations = Map.groupBy(
    confirmationsOf(store, ids),
    (each) => each.confirmation.specificationId,
  );
  const contradictions = Map.groupBy(contradictionsOf(store, ids), (each) => each.specificationId);
  return (row, sourceRow) => {
    const vouched = confirmations.get(row.id) ?? [];
    const open = openContradictions(row, contradictions.get(row.id) ?? []);
    return {
      standing: standingOf({
        sourceId: row.sourceId,
        sourceKind: sourceRow.kind,
        enteredBy: row.enteredBy,
        confirmations: vouched.map((each) => ({
          sourceId: each.confirmation.sourceId,
          sourceKind: each.source.kind,
          by: each.confirmation.by,
        })),
        contradicted: open.length > 0,
      }),
      confirmations: vouched.map((each) => ({
        by: each.byName,
        at: each.confirmation.at,
        source: asSource(each.source),
        page: each.confirmation.page,
      })),
      contradictions: open.map(asContradiction),
    };
  };
}

export const confirmationRows = (store: ReadStore, specificationId: string) =>
  store.select().from(confirmation).where(eq(confirmation.specificationId, specificationId)).all();

/** The sources that were held against a specification, once or more often. */
export const contradictingSources = (store: ReadStore, specificationId: string): Set<string> =>
  new Set(contradictionsOf(store, [specificationId]).map((row) => row.sourceId));
