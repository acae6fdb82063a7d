import { asc, eq, sql } from 'drizzle-orm';
import { EngineModelId } from '../../../shared/contract/ids.ts';
import type { EngineModel, NamedModel, Specification } from '../../../shared/contract/specbook.ts';
import { sweptVolume } from '../../../shared/trade/index.ts';
import { prepared } from '../../prepared.ts';
import { remembered } from '../../remembered.ts';
import { engineModel } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { matches } from '../search-text.ts';
import { mergedWithFamily } from './specifications.ts';

type Row = typeof engineModel.$inferSelect;

const asNamed = ({ id, make, model }: Row): NamedModel => ({
  id: EngineModelId.parse(id),
  make,
  model,
});

const rowOf = prepared((store) =>
  store
    .select()
    .from(engineModel)
    .where(eq(engineModel.id, sql.placeholder('id')))
    .prepare(),
);

const rowById = (store: ReadStore, id: string): Row | undefined => rowOf(store).get({ id });

export const engineModelRow = rowById;

const familyOf = (store: ReadStore, row: Row): Row | undefined =>
  row.variantOf === null ? undefined : rowById(store, row.variantOf);

function asModel(
  row: Row,
  family: Row | undefined,
  specifications: readonly Specification[],
): EngineModel {
  const bore = row.bore ?? family?.bore ?? null;
  const stroke = row.stroke ?? family?.stroke ?? null;
  const { cycle, cylinders, note } = row;
  return {
    ...asNamed(row),
    cycle,
    cylinders,
    bore,
    stroke,
    note,
    valves: row.valves ?? family?.valves ?? null,
    oilAmount: row.oilAmount ?? family?.oilAmount ?? null,
    oilGrade: row.oilGrade || (family?.oilGrade ?? ''),
    fuelRatio: row.fuelRatio ?? family?.fuelRatio ?? null,
    plug: row.plug || (family?.plug ?? ''),
    displacement:
      bore === null || stroke === null ? null : sweptVolume({ bore, stroke, cylinders }),
    variantOf: family === undefined ? null : asNamed(family),
    specifications: specifications.length,
    unconfirmed: specifications.filter(({ standing }) => standing === 'unconfirmed').length,
    contradicted: specifications.filter(({ contradictions }) => contradictions.length > 0).length,
  };
}

function entryOf(store: ReadStore, row: Row) {
  const family = familyOf(store, row);
  const specifications = mergedWithFamily(
    store,
    row.id,
    family === undefined ? null : asNamed(family),
  );
  return { model: asModel(row, family, specifications), specifications };
}

const rowsLike = (store: ReadStore, text: string) =>
  store
    .select()
    .from(engineModel)
    .where(matches(engineModel.searchText, text))
    .orderBy(asc(engineModel.searchText));

export const findEngineModels = (store: ReadStore, text: string): EngineModel[] =>
  rowsLike(store, text)
    .all()
    .map((row) => entryOf(store, row).model);

/** Only what the entries are called: to count their specifications would cost a search at every key. */
export const findEngineModelNames = (store: ReadStore, text: string, limit: number) =>
  rowsLike(store, text)
    .limit(limit)
    .all()
    .map(({ id, make, model, cycle }) => ({ id, make, model, cycle }));

/** An engine's entry with what holds for it, its own and its family's. */
export const bookEntry = remembered(
  (store, id): { model: EngineModel; specifications: Specification[] } | undefined => {
    const row = rowById(store, id);
    return row && entryOf(store, row);
  },
);

export const variantsOf = (store: ReadStore, id: string): NamedModel[] =>
  store
    .select()
    .from(engineModel)
    .where(eq(engineModel.variantOf, id))
    .orderBy(asc(engineModel.searchText))
    .all()
    .map(asNamed);

export const engineModelById = (store: ReadStore, id: string): EngineModel | undefined =>
  bookEntry(store, id)?.model;

export const engineModelByKey = (store: ReadStore, modelKey: string) =>
  store.select().from(engineModel).where(eq(engineModel.modelKey, modelKey)).get();
