import { holdPointEventsOf, readingsOf } from '../../../db/queries/bench.ts';
import { pullsOfJob } from '../../../db/queries/build.ts';
import { movesOf } from '../../../db/queries/counter/jobs.ts';
import { standingDecisions } from '../../../db/queries/decisions.ts';
import { testRunsOf } from '../../../db/queries/test-runs.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { Build, HoldPointOnSheet, Reading } from '../../../shared/contract/bench/index.ts';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import type { BuildStep } from '../../../shared/work/bench/build-steps.ts';
import {
  doneBefore,
  type HoldPoint,
  holdPointState,
  type MissingReading,
  missingReadings,
  missingWords,
} from '../../../shared/work/bench/hold-points.ts';
import {
  FINAL_READINGS_STEP,
  type OwedFacts,
  owedReadings,
  owingFeatures,
  withFinalReadings,
} from '../../../shared/work/bench/owed-readings.ts';
import { type RunStanding, runStanding } from '../../../shared/work/bench/run-step.ts';
import { gaugesOfStep, orderOfSteps } from '../../../shared/work/bench/step-record.ts';
import { type Undoing, undoingOf } from '../../../shared/work/bench/undone-steps.ts';
import { CORE_FEATURES } from '../../../shared/work/features.ts';
import { bookOf } from './book.ts';
import { seemsOf, stepsOfJob } from './job-steps.ts';

/** The points still open; none as long as the engine was never on the bench to be built. */
export function openPointsOf(store: ReadStore, job: JobDossier): HoldPoint[] {
  const built = movesOf(store, job.id).some(({ to }) => to === 'on-the-bench');
  if (!built) return [];
  return buildOf(store, job).steps.filter(({ hold, state }) => hold && state === 'open');
}

/** A job's steps, with that for the final readings that its decisions ask for. */
export function buildStepsOf(store: ReadStore, job: JobDossier): ReturnType<typeof stepsOfJob> {
  const taken = stepsOfJob(store, job);
  return {
    ...taken,
    steps: withFinalReadings(taken.steps, owingFeatures(owedFacts(store, job.id))),
  };
}

/** What the final readings of a job are owed by. */
function owedFacts(store: ReadStore, jobId: string): OwedFacts {
  const { shape, specifications } = bookOf(store, jobId);
  return {
    shape,
    standing: standingDecisions(store, jobId),
    asked: [...CORE_FEATURES, ...specifications.map(({ feature }) => feature)],
    finals: finals(readingsOf(store, jobId)),
  };
}

/** The final readings that a job owes for what it has machined or replaced, and that nobody took yet. */
export const owedOf = (store: ReadStore, jobId: string): MissingReading[] =>
  owedReadings(owedFacts(store, jobId));

/** What was passed when less was owed is open again. */
const withOpenAgain = (
  events: readonly KeptEvent[],
  owed: readonly MissingReading[],
): readonly KeptEvent[] =>
  owed.length === 0
    ? events
    : events.filter(({ key, outcome }) => key !== FINAL_READINGS_STEP || outcome !== 'passed');

type KeptEvent = ReturnType<typeof holdPointEventsOf>[number];

// A point asks for readings of the finished build: what came in worn proves nothing.
const finals = (readings: readonly Reading[]): Reading[] =>
  readings.filter(({ phase, superseded }) => phase === 'final' && !superseded);

/** What is on record of a build, read once for all of its steps. */
function recordOf(store: ReadStore, job: JobDossier) {
  const { steps, ...taken } = buildStepsOf(store, job);
  const owed = owedOf(store, job.id);
  return {
    taken,
    steps,
    owed,
    events: withOpenAgain(holdPointEventsOf(store, job.id), owed),
    pulls: pullsOfJob(store, job.id),
    measured: finals(readingsOf(store, job.id)),
    shape: bookOf(store, job.id).shape,
  };
}
type BuildRecord = ReturnType<typeof recordOf>;

const undone = ({ steps, events, pulls }: BuildRecord, step: BuildStep): Undoing | null =>
  undoingOf(step, steps, events, pulls);

const lackedBy = (
  { owed, shape, measured }: BuildRecord,
  step: BuildStep,
  undoing: Undoing | null,
): MissingReading[] =>
  step.key === FINAL_READINGS_STEP
    ? owed
    : missingReadings(step, shape, sinceUndone(measured, undoing));

function runFor(
  store: ReadStore,
  jobId: string,
  { events }: BuildRecord,
  { step, undoing }: { step: BuildStep; undoing: Undoing | null },
): RunStanding {
  const reopened = events.findLast(
    ({ key, outcome }) => key === step.key && outcome === 'reopened',
  );
  const latest = [reopened?.at, undoing?.at]
    .filter((at) => at !== undefined)
    .toSorted()
    .at(-1);
  return runStanding(testRunsOf(store, jobId), latest ?? null);
}

/** The final readings that a step of a job still lacks. */
export function missingAt(store: ReadStore, job: JobDossier, step: BuildStep): MissingReading[] {
  const record = recordOf(store, job);
  return lackedBy(record, step, undone(record, step));
}

/** How the job's test runs stand towards a step that one of them has to pass. */
export function runStandingOf(store: ReadStore, job: JobDossier, step: BuildStep): RunStanding {
  const record = recordOf(store, job);
  return runFor(store, job.id, record, { step, undoing: undone(record, step) });
}

/** A job's steps in build order, each with how it stands. */
export function buildOf(store: ReadStore, job: JobDossier): Build {
  const record = recordOf(store, job);
  const { taken, steps, events, pulls, measured } = record;
  const undoings = new Map(steps.map((step) => [step.key, undone(record, step)]));
  const stateOf = (key: string) => (undoings.get(key) ? 'open' : holdPointState(key, events));
  const done = steps.map(({ key }) => key).filter((key) => stateOf(key) !== 'open');
  const order = orderOfSteps(done, events);
  return {
    jobId: job.id,
    begun: taken.begun,
    origin: taken.origin,
    work: taken.work,
    touched: taken.touched,
    workReason: taken.workReason,
    seems: seemsOf(store, job.id),
    steps: steps.map((step) => {
      const last = events.findLast(({ key }) => key === step.key);
      const openedAgain = undoings.get(step.key) ?? null;
      const missing = lackedBy(record, step, openedAgain);
      return {
        ...step,
        state: stateOf(step.key),
        missing: missing.map(({ feature }) => feature),
        missingWords: missing.map(missingWords),
        run:
          step.kind === 'run'
            ? runFor(store, job.id, record, { step, undoing: openedAgain })
            : null,
        by: last?.by ?? '',
        at: last?.at ?? null,
        reason: last?.reason ?? '',
        detail: last?.detail ?? '',
        doneBefore: doneBefore(held(steps, step), step.key, events).map(({ label }) => label),
        order: order.get(step.key)?.order ?? null,
        seconds: order.get(step.key)?.seconds ?? null,
        openedAgain,
        ...gaugesOfStep(step, measured, pulls),
      };
    }),
    closed: job.state === 'handed-over',
  };
}

/** The steps that one is held against for its order: hold points; what is not held may be left. */
const held = (steps: readonly BuildStep[], { key }: BuildStep): BuildStep[] =>
  steps.filter((step) => step.hold || step.key === key);

/** What was measured before a step was undone says nothing of how it is now. */
const sinceUndone = (measured: readonly Reading[], undoing: Undoing | null): readonly Reading[] =>
  undoing === null ? measured : measured.filter(({ at }) => at > undoing.at);

/** The hold points of a job as the sheet shows them. */
export const holdPointsOnSheet = (store: ReadStore, job: JobDossier): HoldPointOnSheet[] =>
  buildOf(store, job)
    .steps.filter(({ hold }) => hold)
    .map(
      ({ key, kind, label, caution, state, missingWords: missing, by, at, reason, ...step }) => ({
        key,
        label,
        caution,
        state,
        missing,
        by,
        at,
        reason,
        // A photo's is its id, and the photo is on record by itself.
        detail: kind === 'photo' ? '' : step.detail,
        doneBefore: step.doneBefore,
        order: step.order,
        seconds: step.seconds,
        openedAgain: step.openedAgain,
        gauges: step.gauges,
        gaugeNotNamed: step.gaugeNotNamed,
        pulls: step.pulls,
      }),
    );
