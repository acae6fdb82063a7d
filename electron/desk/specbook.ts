import { searchTextOf } from '../../db/queries/search-text.ts';
import {
  bookEntry,
  confirmationRows,
  engineModelById,
  engineModelByKey,
  findEngineModels,
  sourceById,
  sourceList,
  specificationRow,
  specificationsById,
  specificationsOf,
} from '../../db/queries/specbook.ts';
import { confirmation, engineModel, source, specification } from '../../db/schema/index.ts';
import { EngineModelId } from '../../shared/contract/ids.ts';
import { foldNumber } from '../../shared/work/fold.ts';
import { readBand } from '../../shared/work/specification-band.ts';
import { questionedTorque, readFastener } from '../../shared/work/torque-check.ts';
import { os } from './implementer.ts';
import { badInput, found } from './refuse.ts';
import { write } from './writing.ts';

const models = os.specbook.models.handler(({ input, context }) =>
  findEngineModels(context.store.read, input.text),
);

const model = os.specbook.model.handler(({ input, context: { store } }) =>
  found(bookEntry(store.read, input.id), 'engine model'),
);

const addModel = os.specbook.addModel.handler(
  ({ input: { by, ...facts }, context, errors, path }) =>
    write(context, path, by, ({ store, newId, note }) => {
      const modelKey = foldNumber(`${facts.make}|${facts.model}`);
      const twin = engineModelByKey(store, modelKey);
      if (twin) throw errors.MODEL_TAKEN({ data: { engineModelId: EngineModelId.parse(twin.id) } });
      const id = newId();
      store
        .insert(engineModel)
        .values({ id, ...facts, modelKey, searchText: searchTextOf(facts.make, facts.model) })
        .run();
      note({ engineModel: id, make: facts.make, model: facts.model });
      return found(engineModelById(store, id), 'engine model');
    }),
);

const sources = os.specbook.sources.handler(({ context }) => sourceList(context.store.read));

const addSource = os.specbook.addSource.handler(({ input: { by, ...facts }, context, path }) =>
  write(context, path, by, ({ store, newId, note }) => {
    const id = newId();
    store
      .insert(source)
      .values({ id, ...facts })
      .run();
    note({ source: id, title: facts.title });
    return found(sourceById(store, id), 'source');
  }),
);

const addSpecification = os.specbook.addSpecification.handler(
  ({ input: { by, keepQuestioned, ...facts }, context, errors, path }) =>
    write(context, path, by, ({ store, staff, at, newId, note }) => {
      found(engineModelById(store, facts.engineModelId), 'engine model');
      found(sourceById(store, facts.sourceId), 'source');
      const band = readBand(facts.feature, facts);
      if (!band.ok) throw badInput(band.issues);
      const fastener = readFastener(facts.feature, facts.fastener);
      if (!fastener.ok) throw badInput(fastener.issues);
      const questioned = questionedTorque(band.band, fastener.fastener);
      if (questioned !== null && !keepQuestioned)
        throw errors.TORQUE_QUESTIONED({ data: questioned });
      const revision =
        Math.max(
          0,
          ...specificationsOf(store, facts.engineModelId)
            .filter(({ feature }) => feature === facts.feature)
            .map((former) => former.revision),
        ) + 1;
      const id = newId();
      store
        .insert(specification)
        .values({
          id,
          ...facts,
          lowBase: band.band.low ?? null,
          highBase: band.band.high ?? null,
          aimBase: band.band.aim ?? null,
          wearLimitBase: band.band.wearLimit ?? null,
          revision,
          enteredBy: staff.id,
          enteredAt: at,
        })
        .run();
      note({
        specification: id,
        engineModel: facts.engineModelId,
        feature: facts.feature,
        revision,
        keptQuestioned: questioned !== null,
      });
      return found(specificationsById(store, [id])[0], 'specification');
    }),
);

const confirm = os.specbook.confirm.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, newId, note }) => {
    const { specificationId, sourceId, page } = input;
    const row = found(specificationRow(store, specificationId), 'specification');
    found(sourceById(store, sourceId), 'source');
    const witnesses = [
      { by: row.enteredBy, sourceId: row.sourceId },
      ...confirmationRows(store, specificationId),
    ];
    if (witnesses.some((witness) => witness.by === staff.id && witness.sourceId === sourceId))
      throw errors.ALREADY_WITNESSED();
    store
      .insert(confirmation)
      .values({ id: newId(), specificationId, sourceId, page, by: staff.id, at })
      .run();
    note({ specification: specificationId, source: sourceId });
    return found(specificationsById(store, [specificationId])[0], 'specification');
  }),
);

export const specbook = {
  models,
  model,
  addModel,
  sources,
  addSource,
  addSpecification,
  confirm,
};
