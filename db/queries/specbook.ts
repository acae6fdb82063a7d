import { asc, desc, eq, inArray } from 'drizzle-orm';
import { EngineModelId, SourceId, SpecificationId } from '../../shared/contract/ids.ts';
import type { EngineModel, Source, Specification } from '../../shared/contract/specbook.ts';
import { sweptVolume } from '../../shared/trade/index.ts';
import { FEATURES } from '../../shared/work/features.ts';
import { standingOf } from '../../shared/work/standing.ts';
import { confirmation, engineModel, source, specification, staff } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';
import { matches } from './search-text.ts';

const asSource = (row: typeof source.$inferSelect): Source => ({
  ...row,
  id: SourceId.parse(row.id),
});

export const sourceList = (store: ReadStore): Source[] =>
  store.select().from(source).orderBy(asc(source.title)).all().map(asSource);

export function sourceById(store: ReadStore, id: string): Source | undefined {
  const row = store.select().from(source).where(eq(source.id, id)).get();
  return row && asSource(row);
}

const rows = (store: ReadStore) =>
  store
    .select({ specification, source, enteredByName: staff.name })
    .from(specification)
    .innerJoin(source, eq(source.id, specification.sourceId))
    .innerJoin(staff, eq(staff.id, specification.enteredBy));

type Row = ReturnType<ReturnType<typeof rows>['all']>[number];

function asSpecifications(store: ReadStore, found: Row[]): Specification[] {
  const confirmations = store
    .select({ confirmation, source, byName: staff.name })
    .from(confirmation)
    .innerJoin(source, eq(source.id, confirmation.sourceId))
    .innerJoin(staff, eq(staff.id, confirmation.by))
    .where(
      inArray(
        confirmation.specificationId,
        found.map((row) => row.specification.id),
      ),
    )
    .orderBy(asc(confirmation.id))
    .all();
  return found.map((row) => {
    const own = confirmations.filter(
      (witness) => witness.confirmation.specificationId === row.specification.id,
    );
    const { enteredBy, sourceId, ...facts } = row.specification;
    return {
      ...facts,
      id: SpecificationId.parse(facts.id),
      engineModelId: EngineModelId.parse(facts.engineModelId),
      source: asSource(row.source),
      standing: standingOf({
        sourceId,
        sourceKind: row.source.kind,
        enteredBy,
        confirmations: own.map((witness) => ({
          sourceId: witness.confirmation.sourceId,
          sourceKind: witness.source.kind,
          by: witness.confirmation.by,
        })),
      }),
      enteredBy: row.enteredByName,
      confirmations: own.map((witness) => ({
        by: witness.byName,
        at: witness.confirmation.at,
        source: asSource(witness.source),
        page: witness.confirmation.page,
      })),
    };
  });
}

/** The latest revision for each feature, in the order of the work. */
export function specificationsOf(store: ReadStore, engineModelId: string): Specification[] {
  const found = rows(store)
    .where(eq(specification.engineModelId, engineModelId))
    .orderBy(desc(specification.revision))
    .all();
  const latest = new Map<string, Row>();
  for (const row of found)
    if (!latest.has(row.specification.feature)) latest.set(row.specification.feature, row);
  return asSpecifications(store, [...latest.values()]).sort(
    (a, b) => FEATURES.indexOf(a.feature) - FEATURES.indexOf(b.feature),
  );
}

/** Any revisions, by their ids. */
export const specificationsById = (store: ReadStore, ids: string[]): Specification[] =>
  asSpecifications(store, rows(store).where(inArray(specification.id, ids)).all());

export const specificationRow = (store: ReadStore, id: string) =>
  store.select().from(specification).where(eq(specification.id, id)).get();

export const confirmationRows = (store: ReadStore, specificationId: string) =>
  store.select().from(confirmation).where(eq(confirmation.specificationId, specificationId)).all();

function asModel(
  row: typeof engineModel.$inferSelect,
  specifications: readonly Specification[],
): EngineModel {
  return {
    id: EngineModelId.parse(row.id),
    make: row.make,
    model: row.model,
    cycle: row.cycle,
    cylinders: row.cylinders,
    bore: row.bore,
    stroke: row.stroke,
    note: row.note,
    displacement:
      row.bore === null || row.stroke === null
        ? null
        : sweptVolume({ bore: row.bore, stroke: row.stroke, cylinders: row.cylinders }),
    specifications: specifications.length,
    unconfirmed: specifications.filter(({ standing }) => standing === 'unconfirmed').length,
  };
}

export const findEngineModels = (store: ReadStore, text: string): EngineModel[] =>
  store
    .select()
    .from(engineModel)
    .where(matches(engineModel.searchText, text))
    .orderBy(asc(engineModel.searchText))
    .all()
    .map((row) => asModel(row, specificationsOf(store, row.id)));

/** An engine's entry with its latest specifications. */
export function bookEntry(
  store: ReadStore,
  id: string,
): { model: EngineModel; specifications: Specification[] } | undefined {
  const row = store.select().from(engineModel).where(eq(engineModel.id, id)).get();
  if (row === undefined) return undefined;
  const specifications = specificationsOf(store, id);
  return { model: asModel(row, specifications), specifications };
}

export const engineModelById = (store: ReadStore, id: string): EngineModel | undefined =>
  bookEntry(store, id)?.model;

/** Only the shape of the engine, for whoever needs no specification. */
export const cycleOfModel = (store: ReadStore, id: string) =>
  store.select({ cycle: engineModel.cycle }).from(engineModel).where(eq(engineModel.id, id)).get()
    ?.cycle;

export const engineModelByKey = (store: ReadStore, modelKey: string) =>
  store.select().from(engineModel).where(eq(engineModel.modelKey, modelKey)).get();
