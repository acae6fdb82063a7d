import { searchTextOf } from '../../../db/queries/search-text.ts';
import {
  bookEntry,
  engineModelById,
  engineModelByKey,
  findEngineModels,
  variantsOf,
} from '../../../db/queries/specbook/models.ts';
import { engineModel } from '../../../db/schema/index.ts';
import { EngineModelId } from '../../../shared/contract/ids.ts';
import type { EngineModel } from '../../../shared/contract/specbook.ts';
import { foldNumber } from '../../../shared/work/fold.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';

/** Make and model folded: one entry for one engine. */
export const modelKeyOf = (facts: { make: string; model: string }): string =>
  foldNumber(`${facts.make}|${facts.model}`);

/** What an engine of this cycle can't have: a two-stroke has no sump and no valves, a sump wants no mix. */
function oddFillings({
  cycle,
  valves,
  oilAmount,
  fuelRatio,
}: Pick<EngineModel, 'cycle' | 'valves' | 'oilAmount' | 'fuelRatio'>) {
  const four = cycle === 'four-stroke';
  return [
    !four && valves !== null
      ? { path: 'valves', message: 'A two-stroke here has no valves. Leave it open.' }
      : null,
    !four && oilAmount !== null
      ? { path: 'oilAmount', message: 'A two-stroke has its oil in the fuel. Give the ratio.' }
      : null,
    four && fuelRatio !== null
      ? {
          path: 'fuelRatio',
          message: 'A four-stroke has its oil in the sump. Give how much it holds.',
        }
      : null,
  ].filter((each) => each !== null);
}

export const models = os.specbook.models.handler(({ input, context }) =>
  findEngineModels(context.store.read, input.text),
);

export const model = os.specbook.model.handler(({ input: { id }, context: { store } }) => ({
  ...found(bookEntry(store.read, id), 'engine model'),
  variants: variantsOf(store.read, id),
}));

export const addModel = os.specbook.addModel.handler(
  ({ input: { by, ...facts }, context, errors, path }) =>
    write(context, path, by, ({ store, newId, note }) => {
      const odd = oddFillings(facts);
      if (odd.length > 0) throw badInput(odd);
      const modelKey = modelKeyOf(facts);
      const twin = engineModelByKey(store, modelKey);
      if (twin) throw errors.MODEL_TAKEN({ data: { engineModelId: EngineModelId.parse(twin.id) } });
      if (facts.variantOf !== null) {
        const family = found(engineModelById(store, facts.variantOf), 'engine model');
        if (family.variantOf !== null)
          throw errors.VARIANT_OF_VARIANT({ data: { family: family.variantOf } });
        if (family.cycle !== facts.cycle)
          throw badInput([{ path: 'cycle', message: 'A variant has the cycle of its family.' }]);
      }
      const id = newId();
      store
        .insert(engineModel)
        .values({ id, ...facts, modelKey, searchText: searchTextOf(facts.make, facts.model) })
        .run();
      note({ engineModel: id, make: facts.make, model: facts.model, variantOf: facts.variantOf });
      return found(engineModelById(store, id), 'engine model');
    }),
);
