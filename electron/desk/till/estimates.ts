import { dossierOf, jobRowById } from '../../../db/queries/counter/jobs.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { billTermsOf } from '../../../db/queries/till/terms.ts';
import { approval as approvalTable, estimate as estimateTable } from '../../../db/schema/index.ts';
import type { Account } from '../../../shared/contract/till/index.ts';
import { LOCAL_LAW } from '../../../shared/work/cautions.ts';
import { canMove } from '../../../shared/work/job-state.ts';
import { moveTo } from '../counter/move.ts';
import { os } from '../implementer.ts';
import { paperHead, paperNumber, signed, termLines } from '../papers/head.ts';
import { issue } from '../papers/issue.ts';
import { paperLines, paperTotals } from '../papers/money.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { billOf } from './bill.ts';

interface Refusals {
  JOB_CLOSED: () => Error;
  ALREADY_INVOICED: () => Error;
}

/** The account of a job whose bill is still open. */
export function openAccount({ store }: Writing, jobId: string, errors: Refusals): Account {
  const account = found(accountOf(store, jobId), 'job');
  if (jobRowById(store, jobId)?.state === 'handed-over') throw errors.JOB_CLOSED();
  if (account.invoice !== null) throw errors.ALREADY_INVOICED();
  return account;
}

export const writeEstimate = os.till.writeEstimate.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, shop, staff, at, today, newId, note } = writing;
    const { jobId, validUntil, discount } = input;
    const account = openAccount(writing, jobId, errors);
    const job = found(dossierOf(store, jobId), 'job');
    const revision = account.estimates.length + 1;
    const number = `${paperNumber('E', job.number)}-${revision}`;
    const terms = billTermsOf(store, shop, jobId, today);
    const { lines, totals } = billOf(store, terms, { lines: input.lines, discount });
    const paper = issue(writing, jobId, {
      kind: 'estimate',
      ...paperHead(writing, job, number),
      revision,
      validUntil,
      lines: paperLines(lines, shop),
      totals: paperTotals(totals, shop),
      note: input.note,
      terms: [...termLines(shop.estimateTerms), LOCAL_LAW],
    });
    const id = newId();
    store
      .insert(estimateTable)
      .values({
        id,
        number,
        jobId,
        revision,
        options: [{ key: 'a', label: '', lines, discount, totals }],
        lines,
        totals,
        total: totals.total,
        note: input.note,
        validUntil,
        paperId: paper.id,
        by: staff.id,
        at,
      })
      .run();
    if (canMove(job.state, 'customer-to-decide'))
      moveTo(writing, jobId, 'customer-to-decide', `Estimate ${number}`);
    note({ job: jobId, estimate: number, total: totals.total, fingerprint: paper.fingerprint });
    return found(accountOf(store, jobId), 'job');
  }),
);

export const approve = os.till.approve.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, staff, at, newId, note } = writing;
    const { jobId, estimateId, how, approvedBy, amount, signature } = input;
    const account = openAccount(writing, jobId, errors);
    const estimate = found(
      account.estimates.find(({ id }) => id === estimateId),
      'estimate of this job',
    );
    if (estimate.revision !== account.estimates.length) throw errors.ESTIMATE_SUPERSEDED();
    if (how === 'in-person' && signature === null) throw errors.SIGNATURE_WANTED();
    store
      .insert(approvalTable)
      .values({
        id: newId(),
        jobId,
        estimateId,
        how,
        approvedBy,
        amount,
        signature: signature === null ? null : signed(signature, at),
        by: staff.id,
        at,
      })
      .run();
    const state = found(jobRowById(store, jobId), 'job').state;
    if (canMove(state, 'go-ahead')) moveTo(writing, jobId, 'go-ahead', `By ${approvedBy}`);
    note({ job: jobId, estimate: estimate.number, approvedBy, how, amount });
    return found(accountOf(store, jobId), 'job');
  }),
);
