import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { billTermsOf } from '../../../db/queries/till/terms.ts';
import { estimate as estimateTable } from '../../../db/schema/index.ts';
import type { Account, EstimateOption } from '../../../shared/contract/till/index.ts';
import { LOCAL_LAW } from '../../../shared/work/cautions.ts';
import { canMove } from '../../../shared/work/counter/job-state.ts';
import { moveTo } from '../counter/move.ts';
import { os } from '../implementer.ts';
import { findingLines } from '../papers/findings.ts';
import { paperHead, paperNumber, termLines } from '../papers/head.ts';
import { issue } from '../papers/issue.ts';
import { paperLines, paperTotals } from '../papers/money.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';
import { billOf } from './bill.ts';
import { openAccount } from './open-account.ts';

/** `a`, `b` … in the order in which they stand side by side. */
const optionKey = (index: number): string => String.fromCharCode('a'.charCodeAt(0) + index);

/** What the customer declined when they were asked last, as far as no option holds it any more. */
const declinedBefore = ({ approvals }: Account, options: readonly EstimateOption[]) =>
  (approvals.at(-1)?.declined ?? [])
    .filter(
      ({ description }) =>
        !options.some(({ lines }) => lines.some((line) => line.description === description)),
    )
    .map(({ description, amount }) => ({ description, amount }));

export const writeEstimate = os.till.writeEstimate.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, shop, staff, at, today, newId, note } = writing;
    const { jobId } = input;
    const account = openAccount(writing, jobId, errors);
    const job = found(dossierOf(store, jobId), 'job');
    const revision = account.estimates.length + 1;
    const number = `${paperNumber('E', job.number)}-${revision}`;
    const terms = billTermsOf(store, shop, jobId, today);
    const asked =
      input.lines === null
        ? input.options
        : [{ label: '', lines: input.lines, discount: input.discount }];
    const options = asked.map(({ label, discount, ...bill }, index): EstimateOption => {
      const field = input.lines === null ? `options.${index}.lines` : 'lines';
      const { lines, totals } = billOf(store, terms, { ...bill, discount }, field);
      return { key: optionKey(index), label, lines, discount, totals };
    });
    const [first] = options;
    if (first === undefined) throw new Error('The contract let an estimate without lines pass.');
    const validUntil = input.validUntil === undefined ? terms.validUntil : input.validUntil;
    const paper = issue(writing, jobId, {
      kind: 'estimate',
      ...paperHead(writing, job, number),
      revision,
      validUntil,
      findings: findingLines(store, jobId),
      options: options.map(({ label, lines, discount, totals }) => ({
        label,
        lines: paperLines(lines, shop),
        totals: paperTotals(totals, shop, discount),
      })),
      declined: declinedBefore(account, options),
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
        options,
        lines: first.lines,
        totals: first.totals,
        total: first.totals.total,
        note: input.note,
        validUntil,
        paperId: paper.id,
        by: staff.id,
        at,
      })
      .run();
    if (canMove(job.state, 'customer-to-decide'))
      moveTo(writing, jobId, 'customer-to-decide', `Estimate ${number}`);
    note({
      job: jobId,
      estimate: number,
      total: options.map(({ totals }) => totals.total).join(' / '),
      fingerprint: paper.fingerprint,
    });
    return found(accountOf(store, jobId), 'job');
  }),
);
