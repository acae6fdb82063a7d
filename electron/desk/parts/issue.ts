import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { heldOfParts } from '../../../db/queries/parts/job-movements.ts';
import { issuedTo, shelfOf } from '../../../db/queries/parts/shelf.ts';
import { standsInFor } from '../../../db/queries/parts/used-parts.ts';
import { jobCode } from '../../../shared/contract/ids.ts';
import type { Part } from '../../../shared/contract/parts/index.ts';
import { found } from '../refuse.ts';
import { demandApproval } from '../till/limit/bill-ahead.ts';
import type { Writing } from '../writing.ts';
import { enterMovement } from './ledger.ts';
import type { Entered } from './ledger-entry.ts';

interface Refusals {
  PROMISED_ELSEWHERE: (more: { data: { available: number; jobs: string[] } }) => Error;
  OVER_APPROVAL: Parameters<typeof demandApproval>[2]['OVER_APPROVAL'];
}

interface Taken {
  part: Part;
  jobId: string | null;
  quantity: number;
  /** Why this job goes before others, or why the shelf holds more than it should. */
  reason: string;
}

/**
 * What is promised to other jobs stays for them, unless somebody says why not.
 * @throws the declared PROMISED_ELSEWHERE
 */
export function demandFree(
  { store }: Writing,
  { part, jobId, quantity, reason }: Taken,
  errors: Pick<Refusals, 'PROMISED_ELSEWHERE'>,
): void {
  const { onHand } = shelfOf(store, part.id);
  const others = heldOfParts(store, [part.id]).filter(
    (held) => held.jobId !== jobId && held.promised > 0,
  );
  const available = onHand - others.reduce((sum, { promised }) => sum + promised, 0);
  if (quantity <= available || quantity > onHand || reason !== '') return;
  throw errors.PROMISED_ELSEWHERE({
    data: {
      available: Math.max(0, available),
      jobs: others.map((held) => jobCode(found(jobRowById(store, held.jobId), 'job').number)),
    },
  });
}

/**
 * Takes a part off the shelf for a job.
 * @throws the declared PROMISED_ELSEWHERE and OVER_APPROVAL, and NOT_ON_THE_SHELF of the ledger
 */
export function issueToJob(
  writing: Writing,
  taken: Taken & {
    jobId: string;
    belowNothing: boolean /** Out of a kit that the job's lines name. */;
    ofKit?: boolean;
  },
  errors: Refusals,
): Entered {
  const { part, jobId, quantity, reason, belowNothing } = taken;
  const counted = { part: standsInFor(writing.store, jobId, part), quantity };
  demandApproval(writing, jobId, errors, taken.ofKit === true ? null : counted);
  demandFree(writing, taken, errors);
  return enterMovement(writing, {
    kind: 'issued',
    partId: part.id,
    jobId,
    quantity,
    reason,
    belowNothing,
  });
}

/**
 * No more comes back from a job than went to it and is still there.
 * @throws the declared MORE_THAN_ISSUED
 */
export function demandIssued(
  { store }: Writing,
  { partId, jobId, quantity }: { partId: string; jobId: string; quantity: number },
  errors: { MORE_THAN_ISSUED: (more: { data: { withJob: number } }) => Error },
): void {
  const withJob = Math.max(0, issuedTo(store, partId, jobId).quantity);
  if (quantity > withJob) throw errors.MORE_THAN_ISSUED({ data: { withJob } });
}
