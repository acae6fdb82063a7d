import { asc, eq, inArray } from 'drizzle-orm';
import { EngineModelId } from '../../../shared/contract/ids.ts';
import type { Fit } from '../../../shared/contract/parts/index.ts';
import { engineModel, partFit } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

export const fitsOf = (store: ReadStore, partId: string): Fit[] =>
  store
    .select({
      engineModelId: partFit.engineModelId,
      fitted: partFit.fitted,
      step: partFit.step,
      make: engineModel.make,
      model: engineModel.model,
    })
    .from(partFit)
    .innerJoin(engineModel, eq(engineModel.id, partFit.engineModelId))
    .where(eq(partFit.partId, partId))
    .orderBy(asc(engineModel.make), asc(engineModel.model), asc(partFit.fitted), asc(partFit.step))
    .all()
    .map(({ engineModelId, make, model, ...fit }) => ({
      ...fit,
      engineModelId: EngineModelId.parse(engineModelId),
      model: `${make} ${model}`,
    }));

/** Which parts somebody said fit one of some engine models, and what they are there. */
export const fitsOnModels = (store: ReadStore, engineModelIds: readonly string[]) =>
  engineModelIds.length === 0
    ? []
    : store
        .select()
        .from(partFit)
        .where(inArray(partFit.engineModelId, [...engineModelIds]))
        .all();
