import { nextNumber } from '../../../db/numbers.ts';
import { dossierOf, jobRowById } from '../../../db/queries/counter/jobs.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { invoiceNumber } from '../../../db/queries/till/invoices.ts';
import { billTermsOf } from '../../../db/queries/till/terms.ts';
import { application, invoice as invoiceTable } from '../../../db/schema/index.ts';
import type { Account } from '../../../shared/contract/till/index.ts';
import { atNoCharge } from '../../../shared/money/index.ts';
import { overApproval } from '../../../shared/work/approval.ts';
import { LOCAL_LAW } from '../../../shared/work/cautions.ts';
import type { InvoiceSort } from '../../../shared/work/vocabulary.ts';
import { workToBill } from '../../../shared/work/work-to-bill.ts';
import { os } from '../implementer.ts';
import { paperHead, termLines } from '../papers/head.ts';
import { issue } from '../papers/issue.ts';
import { approvalLines, paperLines, paperTotals, paymentLines } from '../papers/money.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { billOf } from './bill.ts';
import { openAccount } from './open-account.ts';

/** The account that an invoice is issued on: storage is billed beside the work, as long as the machine is here. */
function accountToBill(
  writing: Writing,
  { jobId, sort }: { jobId: string; sort: InvoiceSort },
  errors: Parameters<typeof openAccount>[2],
): Account {
  if (sort !== 'storage') return openAccount(writing, jobId, errors);
  const account = found(accountOf(writing.store, jobId), 'job');
  if (jobRowById(writing.store, jobId)?.state === 'handed-over') throw errors.JOB_CLOSED();
  return account;
}

export const issueInvoice = os.till.issueInvoice.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, shop, staff, at, today, newId, note } = writing;
    const { jobId, sort, warrantyOf, reason } = input;
    if (sort === 'warranty' && (warrantyOf === null || reason === ''))
      throw errors.WARRANTY_UNEXPLAINED();
    if (warrantyOf !== null) found(jobRowById(store, warrantyOf), 'job of the warranty');
    const account = accountToBill(writing, input, errors);
    const { approvals, payments, unapplied, approvedLimit } = account;
    const work = sort === 'storage' ? null : workToBill(account);
    const estimated = work && { lines: work.lines, discount: work.option.discount };
    const asked =
      input.lines === null ? estimated : { lines: input.lines, discount: input.discount };
    if (asked === null) throw errors.NOTHING_ESTIMATED();
    const bill = sort === 'warranty' ? { lines: atNoCharge(asked.lines), discount: null } : asked;
    const { lines, totals } = billOf(store, billTermsOf(store, shop, jobId, today), bill);
    // Storage is charged by what was agreed at intake, and not by what was approved of the work.
    const over = sort === 'storage' ? 0 : overApproval(totals.total, approvedLimit);
    if (over > 0)
      throw errors.OVER_APPROVAL({ data: { total: totals.total, limit: approvedLimit, over } });

    // What the customer paid before stands against the bill from now on.
    const applied = Math.min(unapplied, totals.total);
    const job = found(dossierOf(store, jobId), 'job');
    const number = nextNumber(store, 'invoice');
    const paper = issue(writing, jobId, {
      kind: 'invoice',
      ...paperHead(writing, job, invoiceNumber(number)),
      lines: paperLines(lines, shop),
      totals: paperTotals(totals, shop, bill.discount),
      approvals: sort === 'storage' ? [] : approvalLines(approvals),
      payments: sort === 'storage' ? [] : paymentLines(payments),
      due: totals.total - (sort === 'storage' ? applied : unapplied),
      note: input.note,
      terms: [...termLines(shop.invoiceTerms), LOCAL_LAW],
    });
    const invoiceId = newId();
    store
      .insert(invoiceTable)
      .values({
        id: invoiceId,
        number,
        jobId,
        sort,
        lines,
        totals,
        total: totals.total,
        currency: shop.currency,
        warrantyOf,
        reason,
        note: input.note,
        paperId: paper.id,
        by: staff.id,
        at,
      })
      .run();
    if (applied > 0)
      store
        .insert(application)
        .values({ id: newId(), jobId, invoiceId, amount: applied, by: staff.id, at })
        .run();
    note({
      job: jobId,
      invoice: invoiceNumber(number),
      sort,
      total: totals.total,
      fingerprint: paper.fingerprint,
    });
    return found(accountOf(store, jobId), 'job');
  }),
);
