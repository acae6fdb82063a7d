import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { notIssued } from '../../../db/queries/parts/billed-parts.ts';
import { chainOf, currentOf } from '../../../db/queries/parts/chain.ts';
import { jobPartsOf } from '../../../db/queries/parts/job-parts.ts';
import { jobsAndParts as jobsAndPartsOf } from '../../../db/queries/parts/jobs-and-parts.ts';
import { partName } from '../../../db/queries/parts/names.ts';
import { needsOfJob } from '../../../db/queries/parts/needs.ts';
import { partsByNumber } from '../../../db/queries/parts/numbers.ts';
import { partById } from '../../../db/queries/parts/part.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { NumberHit, Part } from '../../../shared/contract/parts/index.ts';
import { moveTo } from '../counter/move.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';
import { demandIssued, issueToJob } from './issue.ts';
import { enterMovement } from './ledger.ts';
import { missingInWords } from './waiting-words.ts';

const jobParts = os.parts.jobParts.handler(({ input, context: { store } }) =>
  found(jobPartsOf(store.read, input.jobId), 'job'),
);

const jobsAndParts = os.parts.jobsAndParts.handler(({ context: { store } }) =>
  jobsAndPartsOf(store.read),
);

/** Of the parts with a number the one that is meant: the only one, that which the job needs, or that whose own it is. */
function meant(store: ReadStore, jobId: string, hits: readonly NumberHit[]): NumberHit | undefined {
  const needed = new Set(
    [...needsOfJob(store, jobId).keys()].flatMap((partId) => chainOf(store, partId)),
  );
  const wanted = hits.filter(({ part }) => needed.has(part.id));
  if (hits.length === 1 || wanted.length === 0)
    return hits.length === 1 || hits[0]?.by === 'own' ? hits[0] : undefined;
  return wanted.length === 1 || wanted[0]?.by === 'own' ? wanted[0] : undefined;
}

/** The part itself; once it is out, the one that is bought in its place today, if that is there. */
function there(store: ReadStore, part: Part, quantity: number): Part {
  if (part.onHand >= quantity) return part;
  const current = partById(store, currentOf(store, part.id));
  return current !== undefined && current.onHand >= quantity ? current : part;
}

/** A machine that went home gets only what its bill names and the shelf has not given. */
function isOwed(store: ReadStore, jobId: string, partId: string, quantity: number): boolean {
  const chain = chainOf(store, partId);
  const owed = notIssued(store, jobId).filter(({ part }) => chain.includes(part.id));
  return owed.reduce((sum, each) => sum + each.quantity, 0) >= quantity;
}

const issue = os.parts.issue.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, note } = writing;
    const { jobId, number, quantity, reason, belowNothing } = input;
    const job = found(jobRowById(store, jobId), 'job');
    const hits = partsByNumber(store, number);
    if (hits.length === 0) throw errors.NUMBER_UNKNOWN();
    const hit = meant(store, jobId, hits);
    if (hit === undefined)
      throw errors.NUMBER_OF_SEVERAL({
        data: { parts: hits.flatMap(({ part }) => partName(store, part.id) ?? []) },
      });
    if (job.state === 'handed-over' && !isOwed(store, jobId, hit.part.id, quantity))
      throw errors.JOB_CLOSED();
    const part = there(store, hit.part, quantity);
    issueToJob(writing, { part, jobId, quantity, reason, belowNothing }, errors);
    note({ part: part.id, number: part.number, scanned: number, quantity, job: jobId, reason });
    return {
      issued: found(partName(store, part.id), 'part'),
      job: found(jobPartsOf(store, jobId), 'job'),
    };
  }),
);

const takeBack = os.parts.takeBack.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, note } = writing;
    const { jobId, partId, quantity, reason } = input;
    found(jobRowById(store, jobId), 'job');
    const part = found(partById(store, partId), 'part');
    demandIssued(writing, { partId, jobId, quantity }, errors);
    enterMovement(writing, { kind: 'returned', partId, jobId, quantity, reason });
    note({ part: partId, number: part.number, quantity, job: jobId, reason });
    return found(jobPartsOf(store, jobId), 'job');
  }),
);

const moveByParts = os.parts.moveByParts.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, note } = writing;
    const { jobId } = input;
    const job = found(jobPartsOf(store, jobId), 'job');
    if (job.mayMoveTo === null) throw errors.NOTHING_TO_MOVE();
    const reason =
      job.mayMoveTo === 'waits-for-parts' ? missingInWords(writing, job) : 'The parts are there';
    moveTo(writing, jobId, job.mayMoveTo, reason);
    note({ job: jobId, from: job.state, to: job.mayMoveTo, reason });
    return found(jobPartsOf(store, jobId), 'job');
  }),
);

export const jobsParts = { jobParts, jobsAndParts, issue, takeBack, moveByParts };
