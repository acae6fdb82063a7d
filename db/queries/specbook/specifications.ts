import { and, desc, eq, inArray, isNotNull, sql } from 'drizzle-orm';
import { EngineModelId, SpecificationId } from '../../../shared/contract/ids.ts';
import type { NamedModel, Specification } from '../../../shared/contract/specbook.ts';
import { sameThread } from '../../../shared/trade/index.ts';
import { FEATURES, type Feature } from '../../../shared/work/features.ts';
import { prepared } from '../../prepared.ts';
import { engineModel, source, specification, staff } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { asSource } from './sources.ts';
import { witnessesOf } from './witnesses.ts';

const rows = (store: ReadStore) =>
  store
    .select({ specification, source, enteredByName: staff.name })
    .from(specification)
    .innerJoin(source, eq(source.id, specification.sourceId))
    .innerJoin(staff, eq(staff.id, specification.enteredBy));

type Row = ReturnType<ReturnType<typeof rows>['all']>[number];

function asSpecifications(store: ReadStore, found: Row[]): Specification[] {
  const witnesses = witnessesOf(
    store,
    found.map((row) => row.specification.id),
  );
  return found.map((row) => {
    const { enteredBy: _, sourceId: __, ...facts } = row.specification;
    return {
      ...facts,
      id: SpecificationId.parse(facts.id),
      engineModelId: EngineModelId.parse(facts.engineModelId),
      inheritedFrom: null,
      // Written before a thread was kept as its source prints it: its size alone is known.
      fastener: facts.fastener && {
        ...facts.fastener,
        designation: facts.fastener.designation ?? '',
      },
      source: asSource(row.source),
      enteredBy: row.enteredByName,
      ...witnesses(row.specification, row.source),
    };
  });
}

/** The latest of each feature of each entry. */
function latestOf(found: Row[]): Row[] {
  const latest = new Map<string, Row>();
  for (const row of found) {
    const { engineModelId, feature, revision } = row.specification;
    const key = `${engineModelId} ${feature}`;
    const other = latest.get(key);
    if (other === undefined || other.specification.revision < revision) latest.set(key, row);
  }
  return [...latest.values()];
}

const inOrderOfWork = (specifications: Specification[]): Specification[] =>
  specifications.toSorted((a, b) => FEATURES.indexOf(a.feature) - FEATURES.indexOf(b.feature));

const rowsOfModel = prepared((store) =>
  rows(store)
    .where(eq(specification.engineModelId, sql.placeholder('engineModelId')))
    .prepare(),
);

/** The latest revision of each feature that an entry states itself, in the order of the work. */
export const ownSpecifications = (store: ReadStore, engineModelId: string): Specification[] =>
  inOrderOfWork(asSpecifications(store, latestOf(rowsOfModel(store).all({ engineModelId }))));

/** What holds for a variant: its own, and for every other feature what its family states. */
export function mergedWithFamily(
  store: ReadStore,
  engineModelId: string,
  family: NamedModel | null,
): Specification[] {
  const own = ownSpecifications(store, engineModelId);
  if (family === null) return own;
  const stated = new Set(own.map(({ feature }) => feature));
  const inherited = ownSpecifications(store, family.id)
    .filter(({ feature }) => !stated.has(feature))
    .map((each) => ({ ...each, inheritedFrom: family }));
  return inOrderOfWork([...own, ...inherited]);
}

/** Every revision of one feature of an entry's own, newest first. */
export const revisionsOf = (
  store: ReadStore,
  engineModelId: string,
  feature: Feature,
): Specification[] =>
  asSpecifications(
    store,
    rows(store)
      .where(
        and(eq(specification.engineModelId, engineModelId), eq(specification.feature, feature)),
      )
      .orderBy(desc(specification.revision))
      .all(),
  );

/** Any revisions, by their ids. */
export const specificationsById = (store: ReadStore, ids: string[]): Specification[] =>
  asSpecifications(store, rows(store).where(inArray(specification.id, ids)).all());

export const specificationRow = (store: ReadStore, id: string) =>
  store.select().from(specification).where(eq(specification.id, id)).get();

/** The torques that hold in the book for one thread, with the entries that state them. */
export function torquesOfThread(
  store: ReadStore,
  thread: { diameter: number; pitch: number },
): { engineModel: NamedModel; specification: Specification }[] {
  // A revision without a fastener may have followed one with it: only the latest of all tells.
  const stating = store
    .select({ id: specification.engineModelId, feature: specification.feature })
    .from(specification)
    .where(isNotNull(specification.fastener))
    .all();
  const found = latestOf(
    rows(store)
      .where(
        and(
          inArray(specification.engineModelId, [...new Set(stating.map(({ id }) => id))]),
          inArray(specification.feature, [...new Set(stating.map(({ feature }) => feature))]),
        ),
      )
      .all(),
  ).filter(({ specification: { fastener } }) => fastener !== null && sameThread(fastener, thread));
  const names = new Map(
    store
      .select({ id: engineModel.id, make: engineModel.make, model: engineModel.model })
      .from(engineModel)
      .all()
      .map((row) => [row.id, { ...row, id: EngineModelId.parse(row.id) }]),
  );
  return asSpecifications(store, found)
    .flatMap((each) => {
      const named = names.get(each.engineModelId);
      return named === undefined ? [] : [{ engineModel: named, specification: each }];
    })
    .toSorted(
      (a, b) =>
        (a.specification.lowBase ?? a.specification.highBase ?? 0) -
        (b.specification.lowBase ?? b.specification.highBase ?? 0),
    );
}
