import { holdPointEventsOf } from '../../../db/queries/bench.ts';
import { latestBuildSheet, modelOfSheet } from '../../../db/queries/build.ts';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { buildSheet as buildSheetTable } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { BuildSheet } from '../../../shared/contract/bench/index.ts';
import { EngineModelId } from '../../../shared/contract/ids.ts';
import { repeatedKeys } from '../../../shared/work/bench/build-steps.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';
import { buildOf } from './build-state.ts';
import { inheritedSheet, retakeForWork, takeSteps } from './job-steps.ts';

export const build = os.bench.build.handler(({ input: { jobId }, context }) =>
  buildOf(context.store.read, found(dossierOf(context.store.read, jobId), 'job')),
);

export const beginBuild = os.bench.beginBuild.handler(
  ({ input: { by, jobId }, context, errors, path }) =>
    write(context, path, by, (writing) => {
      const job = found(dossierOf(writing.store, jobId), 'job');
      if (job.state === 'handed-over') throw errors.JOB_CLOSED();
      takeSteps(writing, job);
      const begun = buildOf(writing.store, job);
      writing.note({ job: jobId, steps: begun.steps.length, origin: begun.origin });
      return begun;
    }),
);

export const sayWork = os.bench.sayWork.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { jobId, work, reason } = input;
    const job = found(dossierOf(writing.store, jobId), 'job');
    if (job.state === 'handed-over') throw errors.JOB_CLOSED();
    const touched = work === 'repair' ? input.touched : [];
    const done = holdPointEventsOf(writing.store, jobId).length > 0;
    if (done && reason === '') throw errors.WORK_REASON_WANTED();
    retakeForWork(writing, job, { work, touched, workReason: done ? reason : '' });
    writing.note({ job: jobId, work, touched: touched.join(', '), reason });
    return buildOf(writing.store, job);
  }),
);

/** The sheet as its page shows it: its own steps, or those that it inherits. */
function sheetView(store: ReadStore, engineModelId: string | null): BuildSheet {
  const model =
    engineModelId === null ? null : found(modelOfSheet(store, engineModelId), 'engine model');
  const own = latestBuildSheet(store, engineModelId);
  const { origin, name, steps } = inheritedSheet(store, engineModelId);
  return {
    engineModel: model && {
      id: EngineModelId.parse(model.id),
      make: model.make,
      model: model.model,
    },
    revision: own?.revision ?? 0,
    by: own?.by ?? '',
    at: own?.at ?? null,
    steps: own?.steps ?? steps,
    inherited: { origin, name, steps },
  };
}

export const buildSheet = os.bench.buildSheet.handler(({ input: { engineModelId }, context }) =>
  sheetView(context.store.read, engineModelId),
);

export const reviseBuildSheet = os.bench.reviseBuildSheet.handler(
  ({ input: { by, engineModelId, steps, basedOn }, context, errors, path }) =>
    write(context, path, by, ({ store, staff, at, newId, note }) => {
      const { revision } = sheetView(store, engineModelId);
      if (basedOn !== null && basedOn !== revision)
        throw errors.SHEET_MOVED_ON({ data: { revision } });
      const repeated = repeatedKeys(steps);
      if (repeated.length > 0)
        throw badInput(
          repeated.map((key) => ({
            path: `steps.${steps.findLastIndex((step) => step.key === key)}.key`,
            message: `Another step has the key ${key}. Give this one another.`,
          })),
        );
      store
        .insert(buildSheetTable)
        .values({ id: newId(), engineModelId, revision: revision + 1, steps, by: staff.id, at })
        .run();
      note({ engineModel: engineModelId, buildSheet: revision + 1, steps: steps.length });
      return sheetView(store, engineModelId);
    }),
);
