import { readingsOf } from '../../../db/queries/bench.ts';
import { dossierOf, jobRowById } from '../../../db/queries/counter/jobs.ts';
import { holdPointEvent } from '../../../db/schema/index.ts';
import { FEATURE_LABELS } from '../../../shared/work/features.ts';
import {
  type HoldPoint,
  type HoldPointEvent,
  holdPointsOf,
  missingReadings,
} from '../../../shared/work/hold-points.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { cycleOf, finals } from './build-state.ts';
import { sheetOf } from './sheet.ts';

interface Refusals {
  JOB_CLOSED: () => Error;
  HOLD_POINT_UNKNOWN: () => Error;
}

function pointOf(writing: Writing, jobId: string, key: string, errors: Refusals): HoldPoint {
  const row = found(jobRowById(writing.store, jobId), 'job');
  if (row.state === 'handed-over') throw errors.JOB_CLOSED();
  const job = found(dossierOf(writing.store, jobId), 'job');
  const point = holdPointsOf(cycleOf(writing.store, job)).find((each) => each.key === key);
  if (point === undefined) throw errors.HOLD_POINT_UNKNOWN();
  return point;
}

function enter(
  { store, staff, at, newId, note }: Writing,
  jobId: string,
  key: string,
  outcome: HoldPointEvent['outcome'],
  reason: string,
) {
  store
    .insert(holdPointEvent)
    .values({ id: newId(), jobId, key, outcome, reason, by: staff.id, at })
    .run();
  note({ job: jobId, holdPoint: key, outcome, reason });
}

export const passHoldPoint = os.bench.passHoldPoint.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { jobId, key } = input;
    const point = pointOf(writing, jobId, key, errors);
    const missing = missingReadings(point, finals(readingsOf(writing.store, jobId)));
    if (missing.length > 0)
      throw errors.READINGS_MISSING({
        data: { features: missing.map((feature) => FEATURE_LABELS[feature]) },
      });
    enter(writing, jobId, key, 'passed', '');
    return sheetOf(writing.store, jobId);
  }),
);

export const overrideHoldPoint = os.bench.overrideHoldPoint.handler(
  ({ input, context, errors, path }) =>
    write(context, path, input.by, (writing) => {
      const { jobId, key, reason } = input;
      pointOf(writing, jobId, key, errors);
      enter(writing, jobId, key, 'overridden', reason);
      return sheetOf(writing.store, jobId);
    }),
);

export const reopenHoldPoint = os.bench.reopenHoldPoint.handler(
  ({ input, context, errors, path }) =>
    write(context, path, input.by, (writing) => {
      const { jobId, key, reason } = input;
      pointOf(writing, jobId, key, errors);
      enter(writing, jobId, key, 'reopened', reason);
      return sheetOf(writing.store, jobId);
    }),
);
