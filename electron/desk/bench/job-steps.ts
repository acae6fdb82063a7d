import { eq } from 'drizzle-orm';
import { holdPointEventsOf, readingsOf } from '../../../db/queries/bench.ts';
import { jobBuildOf, latestBuildSheet, modelOfSheet } from '../../../db/queries/build.ts';
import { standingDecisions } from '../../../db/queries/decisions.ts';
import { bookEntry } from '../../../db/queries/specbook.ts';
import { jobBuild } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { BuildSheet } from '../../../shared/contract/bench/index.ts';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import type { BuildStep } from '../../../shared/work/bench/build-steps.ts';
import {
  type BuiltEngine,
  belongsTo,
  defaultBuild,
  EVERY_BUILD,
  stepsForWork,
} from '../../../shared/work/bench/default-build.ts';
import { type Fillings, withFillings } from '../../../shared/work/bench/usual-steps/fillings.ts';
import type { WorkArea, WorkKind } from '../../../shared/work/bench/work/kinds-of-work.ts';
import { seemsToBe } from '../../../shared/work/bench/work/seems-to-be.ts';
import type { Writing } from '../writing.ts';
import { UNKNOWN_ENGINE } from './book.ts';

type Origin = BuildSheet['inherited']['origin'];

export interface FoundSheet {
  origin: Origin;
  /** Whose it is, as people say it. */
  name: string;
  sheetId: string | null;
  steps: BuildStep[];
}

/** Of an engine that the spec book doesn't know it is not known either what it is filled with. */
const NOT_IN_BOOK: BuiltEngine & Fillings = {
  ...UNKNOWN_ENGINE,
  valves: null,
  oilAmount: null,
  oilGrade: '',
  fuelRatio: null,
  plug: '',
};

/** What the steps and the advice of an engine depend on. */
export const engineOf = (store: ReadStore, engineModelId: string | null): BuiltEngine & Fillings =>
  (engineModelId === null ? undefined : bookEntry(store, engineModelId)?.model) ?? NOT_IN_BOOK;

/** The shop's sheet for every engine, else the usual steps; of all engines when none is named. */
function shopSheet(store: ReadStore, engine: BuiltEngine | null): FoundSheet {
  const shop = latestBuildSheet(store, null);
  if (shop === undefined) return usualSheet(engine);
  return {
    origin: 'shop',
    name: 'the shop’s sheet for every engine',
    sheetId: shop.id,
    // A sheet for every engine names the valves too: a two-stroke leaves such steps out.
    steps: engine === null ? shop.steps : shop.steps.filter((step) => belongsTo(step, engine)),
  };
}

const usualSheet = (engine: BuiltEngine | null): FoundSheet => ({
  origin: 'usual',
  name: 'the usual steps',
  sheetId: null,
  steps: engine === null ? [...EVERY_BUILD] : defaultBuild(engine),
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
  return shopSheet(store, engineOf(store, engineModelId));
}

function sheetFor(store: ReadStore, engineModelId: string | null): FoundSheet {
  if (engineModelId === null) return shopSheet(store, NOT_IN_BOOK);
  const own = latestBuildSheet(store, engineModelId);
  if (own === undefined) return inheritedSheet(store, engineModelId);
  return { origin: 'model', name: '', sheetId: own.id, steps: own.steps };
}

/** What was said of the work on a job: nothing, until somebody says it. */
interface SaidWork {
  work: WorkKind | null;
  touched: WorkArea[];
  workReason: string;
}

/** What kind of work a job seems to be, by what was measured and decided; null when nothing speaks for either. */
export const seemsOf = (store: ReadStore, jobId: string): WorkKind | null =>
  seemsToBe({
    measured: readingsOf(store, jobId).map(({ feature }) => feature),
    decided: standingDecisions(store, jobId).map(({ subject }) => subject),
  });

const NOTHING_SAID: SaidWork = { work: null, touched: [], workReason: '' };

/** The steps that a job takes over: by its engine, its machine and its work, with what the engine takes. */
function stepsFor(store: ReadStore, job: JobDossier, { work, touched }: SaidWork): FoundSheet {
  const { kind, engine } = job.machineDetails;
  const sheet = sheetFor(store, engine.engineModelId);
  const facts = engineOf(store, engine.engineModelId);
  const steps = stepsForWork(sheet.steps, {
    engine: facts,
    machine: kind,
    work: work ?? 'rebuild',
    touched,
  });
  return { ...sheet, steps: withFillings(steps, facts) };
}

/** A job's own steps, or, before it took any over, those that it would take. */
export function stepsOfJob(
  store: ReadStore,
  job: JobDossier,
): { begun: boolean; origin: Origin; steps: BuildStep[] } & SaidWork {
  const { engineModelId } = job.machineDetails.engine;
  const own = jobBuildOf(store, job.id);
  if (own === undefined)
    return { begun: false, ...NOTHING_SAID, ...stepsFor(store, job, NOTHING_SAID) };
  const { work, touched, workReason } = own;
  return {
    begun: true,
    steps: own.steps,
    work,
    touched,
    workReason,
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
  const { sheetId, steps } = stepsFor(store, job, NOTHING_SAID);
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

/**
 * The job's steps become those of the work that was said. What was done already stays on the list, before
 * what is to be done: it was done, whatever the work is called now.
 */
export function retakeForWork(writing: Writing, job: JobDossier, said: SaidWork): void {
  const { store, at } = writing;
  takeSteps(writing, job);
  const before = jobBuildOf(store, job.id)?.steps ?? [];
  const { sheetId, steps } = stepsFor(store, job, said);
  const done = new Set(holdPointEventsOf(store, job.id).map(({ key }) => key));
  const kept = before.filter(({ key }) => done.has(key) && !steps.some((step) => step.key === key));
  store
    .update(jobBuild)
    .set({ buildSheetId: sheetId, steps: [...kept, ...steps], at, ...said })
    .where(eq(jobBuild.jobId, job.id))
    .run();
}

/** Another engine was chosen: it brings its own steps, as long as nothing was done by the old ones. */
export function retakeSteps(writing: Writing, job: JobDossier): void {
  const { store } = writing;
  if (holdPointEventsOf(store, job.id).length > 0) return;
  const own = jobBuildOf(store, job.id);
  if (own !== undefined) {
    const { sheetId, steps } = stepsFor(store, job, own);
    store
      .update(jobBuild)
      .set({ buildSheetId: sheetId, steps, at: writing.at })
      .where(eq(jobBuild.jobId, job.id))
      .run();
  } else if (job.state === 'on-the-bench') takeSteps(writing, job);
}
