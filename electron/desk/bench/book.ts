import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { bookEntry } from '../../../db/queries/specbook.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { EngineModel, Specification } from '../../../shared/contract/specbook.ts';
import type { EngineShape } from '../../../shared/work/features.ts';
import { found } from '../refuse.ts';

/** An engine that the spec book doesn't know is taken for the commonest: a four-stroke single. */
export const UNKNOWN_ENGINE = {
  cycle: 'four-stroke',
  cylinders: 1,
  torqueStages: {},
} as const satisfies EngineShape;

/** What is measured on an engine, and in which torque stages. */
const shapeOf = (
  model: EngineModel | null,
  specifications: readonly Specification[],
): EngineShape =>
  model === null
    ? UNKNOWN_ENGINE
    : {
        cycle: model.cycle,
        cylinders: model.cylinders,
        torqueStages: Object.fromEntries(
          specifications.flatMap(({ feature, fastener }) =>
            fastener === null ? [] : [[feature, fastener.stages]],
          ),
        ),
      };

/** The engine's entry in the spec book with its latest specifications, and the shape that follows. */
export function bookOf(store: ReadStore, jobId: string) {
  const job = found(dossierOf(store, jobId), 'job');
  const { engineModelId } = job.machineDetails.engine;
  const { model, specifications } =
    engineModelId === null
      ? { model: null, specifications: [] }
      : found(bookEntry(store, engineModelId), 'engine model');
  const pressure = specifications.find(({ feature }) => feature === 'compression');
  return {
    job,
    model,
    specifications,
    shape: shapeOf(model, specifications),
    /** What the book says of cranking pressure, kPa; null where it says nothing. */
    compression: pressure ? { low: pressure.lowBase, high: pressure.highBase } : null,
  };
}
