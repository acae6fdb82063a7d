import type { EngineModel } from '../../../shared/contract/specbook.ts';
import type { TakeInDraft } from './draft.ts';
import {
  engineModelNamed,
  engineModelsLike,
  useEngineModels,
  useMachinesOfMake,
} from './lookups.ts';

const inWords = ({ make, model }: { make: string; model: string }): string => `${make} ${model}`;

/** What the shop knows of the plates that are being read: makes to split them by, and entries to offer. */
export function usePlates(draft: TakeInDraft) {
  const machines = useMachinesOfMake(draft.machine);
  const models = useEngineModels();
  const chosen = draft.engineModel ?? engineModelNamed(models, draft.engine) ?? null;
  return {
    machinePlates: machines,
    machineMakes: machines.map(({ make }) => make),
    engineMakes: models.map(({ make }) => make),
    /** The spec book's entry of the engine, chosen or recognised by its name. */
    engineModel: chosen,
    engineSuggestions:
      chosen === null && draft.engine.trim() !== ''
        ? engineModelsLike(models, draft.engine).map((model) => ({
            value: model.id,
            label: inWords(model),
            detail: inDetail(model),
          }))
        : [],
    modelById: (id: string): EngineModel | undefined => models.find((model) => model.id === id),
    engineUnderstood: chosen === null ? undefined : `Spec book: ${inWords(chosen)}`,
  };
}

const inDetail = ({ displacement, cycle }: EngineModel): string =>
  displacement === null ? cycle : `${Math.round(displacement)} cm³, ${cycle}`;
