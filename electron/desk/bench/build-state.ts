import { holdPointEventsOf, readingsOf } from '../../../db/queries/bench.ts';
import { movesOf } from '../../../db/queries/counter/jobs.ts';
import { standingDecisions } from '../../../db/queries/decisions.ts';
import { testRunsOf } from '../../../db/queries/test-runs.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { Build, HoldPointOnSheet, Reading } from '../../../shared/contract/bench/index.ts';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import {
  doneBefore,
  type HoldPoint,
  holdPointState,
  type MissingReading,
  missingReadings,
  missingWords,
  openHoldPoints,
} from '../../../shared/work/bench/hold-points.ts';
import {
  FINAL_READINGS_STEP,
  type OwedFacts,
  owedReadings,
  owingFeatures,
  withFinalReadings,
} from '../../../shared/work/bench/owed-readings.ts';
import { type RunStanding, runStanding } from '../../../shared/work/bench/run-step.ts';
import { CORE_FEATURES } from '../../../shared/work/features.ts';
import { bookOf } from './book.ts';
import { stepsOfJob } from './job-steps.ts';

/** The points still open; none as long as the engine was never on the bench to be built. */
export function openPointsOf(store: ReadStore, job: JobDossier): HoldPoint[] {
  const built = movesOf(store, job.id).some(({ to }) => to === 'on-the-bench');
  if (!built) return [];
  const { steps } = buildStepsOf(store, job);
  const events = holdPointEventsOf(store, job.id);
  return openHoldPoints(steps, withOpenAgain(events, owedOf(store, job.id)));
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

/** The final readings that a step of a job still lacks. */
export const missingAt = (
  store: ReadStore,
  jobId: string,
  step: Pick<HoldPoint, 'key' | 'needs'>,
): MissingReading[] =>
  step.key === FINAL_READINGS_STEP
    ? owedOf(store, jobId)
    : missingReadings(step, bookOf(store, jobId).shape, finals(readingsOf(store, jobId)));

/** How the job's test runs stand towards a step that one of them has to pass. */
export const runStandingOf = (store: ReadStore, jobId: string, key: string): RunStanding =>
  runStanding(
    testRunsOf(store, jobId),
    holdPointEventsOf(store, jobId).findLast(
      (event) => event.key === key && event.outcome === 'reopened',
    )?.at ?? null,
  );

/** A job's steps in build order, each with how it stands. */
export function buildOf(store: ReadStore, job: JobDossier): Build {
  const { begun, origin, steps } = buildStepsOf(store, job);
  const owed = owedOf(store, job.id);
  const events = withOpenAgain(holdPointEventsOf(store, job.id), owed);
  const measured = finals(readingsOf(store, job.id));
  const { shape } = bookOf(store, job.id);
  return {
    jobId: job.id,
    begun,
    origin,
    steps: steps.map((step) => {
      const last = events.findLast(({ key }) => key === step.key);
      const missing =
        step.key === FINAL_READINGS_STEP ? owed : missingReadings(step, shape, measured);
      return {
        ...step,
        state: holdPointState(step.key, events),
        missing: missing.map(({ feature }) => feature),
        missingWords: missing.map(missingWords),
        run: step.kind === 'run' ? runStandingOf(store, job.id, step.key) : null,
        by: last?.by ?? '',
        at: last?.at ?? null,
        reason: last?.reason ?? '',
        detail: last?.detail ?? '',
        doneBefore: doneBefore(steps, step.key, events).map(({ label }) => label),
      };
    }),
    closed: job.state === 'handed-over',
  };
}

/** The hold points of a job as the sheet shows them. */
export const holdPointsOnSheet = (store: ReadStore, job: JobDossier): HoldPointOnSheet[] =>
  buildOf(store, job)
    .steps.filter(({ hold }) => hold)
    .map(({ key, kind, label, caution, state, missingWords: missing, by, at, reason, detail }) => ({
      key,
      label,
      caution,
      state,
      missing,
      by,
      at,
      reason,
      // A photo's is its id, and the photo is on record by itself.
      detail: kind === 'photo' ? '' : detail,
    }));
