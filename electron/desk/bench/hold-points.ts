import { photosOf } from '../../../db/queries/build.ts';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { holdPointEvent } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import type { JobId } from '../../../shared/contract/ids.ts';
import {
  type BuildStep,
  quantityOf,
  wiresThatDiffer,
} from '../../../shared/work/bench/build-steps.ts';
import { type HoldPointEvent, missingWords } from '../../../shared/work/bench/hold-points.ts';
import type { RunStanding } from '../../../shared/work/bench/run-step.ts';
import type { JobState } from '../../../shared/work/counter/job-state.ts';
import { moveTo } from '../counter/move.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { demandApproval } from '../till/limit/bill-ahead.ts';
import { type Writing, write } from '../writing.ts';
import { buildStepsOf, missingAt, runStandingOf } from './build-state.ts';
import { takeSteps } from './job-steps.ts';
import { sheetOf } from './sheet.ts';
import { tighteningUnderWay } from './torque-group.ts';

interface Refusals {
  JOB_CLOSED: () => Error;
  HOLD_POINT_UNKNOWN: () => Error;
}

/** The step of the job's own build; whoever does the first step has taken them over. */
function stepOf(
  writing: Writing,
  jobId: string,
  key: string,
  errors: Refusals,
): { job: JobDossier; step: BuildStep } {
  const job = found(dossierOf(writing.store, jobId), 'job');
  if (job.state === 'handed-over') throw errors.JOB_CLOSED();
  const step = buildStepsOf(writing.store, job).steps.find((each) => each.key === key);
  if (step === undefined) throw errors.HOLD_POINT_UNKNOWN();
  takeSteps(writing, job);
  return { job, step };
}

/** An engine that has the go-ahead and is being built is on the bench, whether or not somebody said so. */
function beginOnBench(writing: Writing, jobId: JobId): { movedTo?: JobState } {
  if (found(dossierOf(writing.store, jobId), 'job').state !== 'go-ahead') return {};
  moveTo(writing, jobId, 'on-the-bench');
  return { movedTo: 'on-the-bench' };
}

interface Entry {
  jobId: string;
  key: string;
  outcome: HoldPointEvent['outcome'];
  reason?: string;
  detail?: string;
}

function enter(
  { store, staff, at, newId, note }: Writing,
  { jobId, key, outcome, reason = '', detail = '' }: Entry,
  moved: { movedTo?: JobState } = {},
) {
  store
    .insert(holdPointEvent)
    .values({ id: newId(), jobId, key, outcome, reason, detail, by: staff.id, at })
    .run();
  note({ job: jobId, holdPoint: key, outcome, reason, detail, ...moved });
}

interface DoneInput {
  jobId: JobId;
  quantity: string;
  grade: string;
  way: string;
  wires: { from: string; to: string }[];
}

interface DoneRefusals {
  QUANTITY_WANTED: (more: { data: { unit: string } }) => Error;
  GRADE_WANTED: () => Error;
  WAY_WANTED: () => Error;
  WIRES_DIFFER: (more: { data: { wires: ReturnType<typeof wiresThatDiffer> } }) => Error;
  RUN_WANTED: (more: { data: { run: RunStanding } }) => Error;
  PHOTO_WANTED: () => Error;
  TIGHTENING_UNFINISHED: () => Error;
}

/** What the step asked for besides a tick, as it is kept with it; a refusal when it isn't there. */
function detailOf(
  store: ReadStore,
  { job, step }: { job: JobDossier; step: BuildStep },
  done: DoneInput,
  errors: DoneRefusals,
) {
  switch (step.kind) {
    case 'quantity': {
      const quantity = quantityOf(done.quantity);
      if (quantity === null) throw errors.QUANTITY_WANTED({ data: { unit: step.unit } });
      if (step.grade && done.grade === '') throw errors.GRADE_WANTED();
      return [`${quantity} ${step.unit}`.trim(), done.grade].filter(Boolean).join(', ');
    }
    case 'orientation':
      if (step.note === '' && done.way === '') throw errors.WAY_WANTED();
      return done.way;
    case 'wiring': {
      const wires = wiresThatDiffer(step.wires, done.wires);
      if (wires.length > 0) throw errors.WIRES_DIFFER({ data: { wires } });
      return step.wires.map(({ from, to }) => `${from} to ${to}`).join(', ');
    }
    case 'photo': {
      const taken = photosOf(store, done.jobId).findLast(({ subject }) => subject === step.key);
      if (taken === undefined) throw errors.PHOTO_WANTED();
      return taken.id;
    }
    case 'run': {
      const run = runStandingOf(store, job, step);
      if (run !== 'passed') throw errors.RUN_WANTED({ data: { run } });
      return '';
    }
    case 'torque':
      if (tighteningUnderWay(store, done.jobId, step.needs)) throw errors.TIGHTENING_UNFINISHED();
      return '';
    default:
      return '';
  }
}

export const passHoldPoint = os.bench.passHoldPoint.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { jobId, key } = input;
    const { job, step } = stepOf(writing, jobId, key, errors);
    demandApproval(writing, jobId, errors);
    // First what the step itself asks for: bolts that are left to pull say more than a missing reading.
    const detail = detailOf(writing.store, { job, step }, input, errors);
    const missing = missingAt(writing.store, job, step);
    if (missing.length > 0)
      throw errors.READINGS_MISSING({
        data: { features: missing.map(missingWords) },
      });
    enter(writing, { jobId, key, outcome: 'passed', detail }, beginOnBench(writing, jobId));
    return sheetOf(writing.store, jobId);
  }),
);

export const overrideHoldPoint = os.bench.overrideHoldPoint.handler(
  ({ input, context, errors, path }) =>
    write(context, path, input.by, (writing) => {
      const { jobId, key, reason } = input;
      stepOf(writing, jobId, key, errors);
      enter(writing, { jobId, key, outcome: 'overridden', reason });
      return sheetOf(writing.store, jobId);
    }),
);

export const reopenHoldPoint = os.bench.reopenHoldPoint.handler(
  ({ input, context, errors, path }) =>
    write(context, path, input.by, (writing) => {
      const { jobId, key, reason } = input;
      stepOf(writing, jobId, key, errors);
      enter(writing, { jobId, key, outcome: 'reopened', reason });
      return sheetOf(writing.store, jobId);
    }),
);
