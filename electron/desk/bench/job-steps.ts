import { eq } from 'drizzle-orm';
import { holdPointEventsOf } from '../../../db/queries/bench.ts';
import { jobBuildOf, latestBuildSheet, modelOfSheet } from '../../../db/queries/build.ts';
import { jobBuild } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { BuildSheet } from '../../../shared/contract/bench/index.ts';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import type { BuildStep } from '../../../shared/work/bench/build-steps.ts';
import { belongsTo, defaultBuild, EVERY_BUILD } from '../../../shared/work/bench/default-build.ts';
import type { Cycle } from '../../../shared/work/vocabulary.ts';
import type { Writing } from '../writing.ts';

type Origin = BuildSheet['inherited']['origin'];

export interface FoundSheet {
  origin: Origin;
  /** Whose it is, as people say it. */
  name: string;
  sheetId: string | null;
  steps: BuildStep[];
}

/** The shop's sheet for every engine, else the usual steps; of both cycles when none is named. */
function shopSheet(store: ReadStore, cycle: Cycle | null): FoundSheet {
  const shop = latestBuildSheet(store, null);
  if (shop === undefined) return usualSheet(cycle);
  return {
    origin: 'shop',
    name: 'the shop’s sheet for every engine',
    sheetId: shop.id,
    // A sheet for every engine names the valves too: a two-stroke leaves such steps out.
    steps: cycle === null ? shop.steps : shop.steps.filter((step) => belongsTo(step, cycle)),
  };
}

const usualSheet = (cycle: Cycle | null): FoundSheet => ({
  origin: 'usual',
  name: 'the usual steps',
  sheetId: null,
  steps: cycle === null ? [...EVERY_BUILD] : defaultBuild(cycle),
});

/** What a model (or, for null, every engine) is built by if it has no sheet of its own. */
export function inheritedSheet(store: ReadStore, engineModelId: string | null): FoundSheet {
  if (engineModelId === null) return usualSheet(null);
  const model = modelOfSheet(store, engineModelId);
  const seen = new Set([engineModelId]);
  let family = model?.variantOf ?? null;
  while (family !== null && !seen.has(family)) {
    seen.add(family);
    const sheet = latestBuildSheet(store, family);
    const entry = modelOfSheet(store, family);
    if (sheet !== undefined)
      return {
        origin: 'family',
        name: `${entry?.make ?? ''} ${entry?.model ?? ''}`.trim(),
        sheetId: sheet.id,
        steps: sheet.steps,
      };
    family = entry?.variantOf ?? null;
  }
  return shopSheet(store, model?.cycle ?? null);
}

function sheetFor(store: ReadStore, engineModelId: string | null): FoundSheet {
  if (engineModelId === null) return shopSheet(store, 'four-stroke');
  const own = latestBuildSheet(store, engineModelId);
  if (own === undefined) return inheritedSheet(store, engineModelId);
  return { origin: 'model', name: '', sheetId: own.id, steps: own.steps };
}

/** A job's own steps, or, before it took any over, those that it would take. */
export function stepsOfJob(
  store: ReadStore,
  job: JobDossier,
): { begun: boolean; origin: Origin; steps: BuildStep[] } {
  const { engineModelId } = job.machineDetails.engine;
  const own = jobBuildOf(store, job.id);
  if (own === undefined) return { begun: false, ...sheetFor(store, engineModelId) };
  return {
    begun: true,
    steps: own.steps,
    origin:
      own.sheetId === null
        ? 'usual'
        : own.sheetOf === null
          ? 'shop'
          : own.sheetOf === engineModelId
            ? 'model'
            : 'family',
  };
}

/** The job takes its steps over, unless it has some already. */
export function takeSteps({ store, at }: Writing, job: JobDossier): void {
  const { sheetId, steps } = sheetFor(store, job.machineDetails.engine.engineModelId);
  store
    .insert(jobBuild)
    .values({ jobId: job.id, buildSheetId: sheetId, steps, at })
    .onConflictDoNothing()
    .run();
}

/** On the bench the steps are taken over, as soon as it is known which engine it is. */
export function takeStepsOnBench(writing: Writing, job: JobDossier): void {
  if (job.machineDetails.engine.engineModelId !== null) takeSteps(writing, job);
}

/** Another engine was chosen: it brings its own steps, as long as nothing was done by the old ones. */
export function retakeSteps(writing: Writing, job: JobDossier): void {
  const { store } = writing;
  if (holdPointEventsOf(store, job.id).length > 0) return;
  if (jobBuildOf(store, job.id) !== undefined) {
    const { sheetId, steps } = sheetFor(store, job.machineDetails.engine.engineModelId);
    store
      .update(jobBuild)
      .set({ buildSheetId: sheetId, steps, at: writing.at })
      .where(eq(jobBuild.jobId, job.id))
      .run();
  } else if (job.state === 'on-the-bench') takeSteps(writing, job);
}
