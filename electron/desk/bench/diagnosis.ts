import { findingsOf } from '../../../db/queries/findings.ts';
import { finding as findingTable } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { Diagnosis } from '../../../shared/contract/bench/index.ts';
import { readFigures } from '../../../shared/work/bench/diagnosis-figures.ts';
import { os } from '../implementer.ts';
import { badInput } from '../refuse.ts';
import { write } from '../writing.ts';
import { bookOf } from './book.ts';
import { foundLines } from './proposals.ts';

function diagnosisOf(store: ReadStore, jobId: string): Diagnosis {
  const { job, shape, compression } = bookOf(store, jobId);
  const { standing, superseded } = findingsOf(store, jobId);
  return {
    jobId: job.id,
    cylinders: shape.cylinders,
    compression,
    closed: job.state === 'handed-over',
    findings: standing,
    superseded,
    lines: foundLines(store, jobId),
  };
}

export const diagnosis = os.bench.diagnosis.handler(({ input, context }) =>
  diagnosisOf(context.store.read, input.jobId),
);

export const noteFinding = os.bench.noteFinding.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, newId, note }) => {
    const { jobId, check, found, words, work, supersedes } = input;
    const { job, shape } = bookOf(store, jobId);
    if (job.state === 'handed-over') throw errors.JOB_CLOSED();
    const { figures, faults } = readFigures(check, input.figures, shape.cylinders);
    const wrong = Object.entries(faults);
    if (wrong.length > 0)
      throw badInput(wrong.map(([index, message]) => ({ path: `figures.${index}.text`, message })));
    const standing = findingsOf(store, jobId).standing.filter((each) => each.check === check);
    const named = standing.some(({ id }) => id === supersedes);
    const first = supersedes === null && (check === 'other' || standing.length === 0);
    if (!named && !first) throw errors.SUPERSEDED_ALREADY();
    const id = newId();
    const facts = { check, found, figures, words, work, supersedes };
    store
      .insert(findingTable)
      .values({ id, jobId, ...facts, by: staff.id, at })
      .run();
    note({ job: jobId, finding: id, check, found, supersedes });
    return diagnosisOf(store, jobId);
  }),
);
