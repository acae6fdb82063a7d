import { searchTextOf } from '../../../../db/queries/search-text.ts';
import { bookEntry, engineModelRow } from '../../../../db/queries/specbook/models.ts';
import { ownSpecifications } from '../../../../db/queries/specbook/specifications.ts';
import { engineModel, source, specification } from '../../../../db/schema/index.ts';
import { EngineModelId } from '../../../../shared/contract/ids.ts';
import { os } from '../../implementer.ts';
import { found } from '../../refuse.ts';
import { type Writing, write } from '../../writing.ts';
import { modelKeyOf } from '../models.ts';
import { inBase } from '../specifications.ts';
import { type ImportPlan, planImport } from './plan.ts';
import { csvOf, jsonText, modelFileOf } from './write-file.ts';

export const exportModel = os.specbook.exportModel.handler(
  ({ input: { id, format }, context: { store } }) => {
    const { model } = found(bookEntry(store.read, id), 'engine model');
    const own = found(engineModelRow(store.read, id), 'engine model');
    const file = modelFileOf(model, own, ownSpecifications(store.read, id));
    return {
      fileName: `${fileNameOf(`${model.make} ${model.model}`)}.${format}`,
      text: format === 'json' ? jsonText(file) : csvOf(file),
    };
  },
);

/** Letters and digits of any script, and dashes: a name that every file system takes. */
const fileNameOf = (name: string): string =>
  name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '') || 'engine-model';

export const previewImport = os.specbook.previewImport.handler(
  ({ input: { text, format }, context }) => planImport(context.store.read, text, format).preview,
);

export const importModel = os.specbook.importModel.handler(
  ({ input: { by, text, format, keepQuestioned }, context, errors, path }) =>
    write(context, path, by, (writing) => {
      const { plan, preview } = planImport(writing.store, text, format);
      if (plan === null) throw errors.FILE_FAULTY({ data: { issues: preview.issues } });
      const questioned = preview.specifications.filter((each) => each.questioned !== null);
      if (questioned.length > 0 && !keepQuestioned)
        throw errors.TORQUES_QUESTIONED({
          data: { features: questioned.map(({ feature }) => feature) },
        });
      const engineModelId = takeIn(writing, plan);
      const count = (change: string) =>
        preview.specifications.filter((each) => each.change === change).length;
      const counts = {
        added: count('new'),
        revised: count('revised'),
        unchanged: count('unchanged'),
      };
      writing.note({
        engineModel: engineModelId,
        make: plan.file.model.make,
        model: plan.file.model.model,
        ...counts,
        keptQuestioned: questioned.length > 0,
      });
      return { engineModelId, ...counts };
    }),
);

/** Writes what is planned, and gives the entry that it went into. */
function takeIn(writing: Writing, plan: ImportPlan): EngineModelId {
  const { store, staff, at, newId } = writing;
  const engineModelId = plan.known?.id ?? addModel(writing, plan);
  const sourceIds = new Map<string, string>();
  for (const { facts, band, source: given, former, shown } of plan.specifications) {
    if (shown.change === 'unchanged') continue;
    const { source: _, ...printed } = facts;
    const sourceId =
      plan.sources.get(given.key)?.id ?? sourceIds.get(given.key) ?? addSource(writing, given);
    sourceIds.set(given.key, sourceId);
    store
      .insert(specification)
      .values({
        id: newId(),
        engineModelId,
        ...printed,
        ...inBase(band),
        sourceId,
        revision: (former?.revision ?? 0) + 1,
        enteredBy: staff.id,
        enteredAt: at,
      })
      .run();
  }
  return engineModelId;
}

function addModel({ store, newId }: Writing, { file, family }: ImportPlan): EngineModelId {
  const id = EngineModelId.parse(newId());
  const { make, model, cycle, cylinders, bore, stroke, note } = file.model;
  store
    .insert(engineModel)
    .values({
      id,
      make,
      model,
      cycle,
      cylinders,
      bore,
      stroke,
      note,
      variantOf: family?.id ?? null,
      modelKey: modelKeyOf(file.model),
      searchText: searchTextOf(make, model),
    })
    .run();
  return id;
}

function addSource(
  { store, newId }: Writing,
  { kind, title, edition, date }: ImportPlan['file']['sources'][number],
): string {
  const id = newId();
  store.insert(source).values({ id, kind, title, edition, date }).run();
  return id;
}
