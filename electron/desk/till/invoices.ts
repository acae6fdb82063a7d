import { nextNumber } from '../../../db/numbers.ts';
import { dossierOf, jobRowById } from '../../../db/queries/counter/jobs.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { invoiceNumber } from '../../../db/queries/till/invoices.ts';
import { billTermsOf } from '../../../db/queries/till/terms.ts';
import { application, invoice as invoiceTable } from '../../../db/schema/index.ts';
import { jobCode } from '../../../shared/contract/ids.ts';
import type { Account, Discount, LineInput } from '../../../shared/contract/till/index.ts';
import { atNoCharge } from '../../../shared/money/index.ts';
import { overApproval } from '../../../shared/work/approval.ts';
import { LOCAL_LAW } from '../../../shared/work/cautions.ts';
import type { InvoiceSort } from '../../../shared/work/vocabulary.ts';
import { workToBill } from '../../../shared/work/work-to-bill.ts';
import { os } from '../implementer.ts';
import { paperHead, termLines } from '../papers/head.ts';
import { issue } from '../papers/issue.ts';
import { approvalLines, paperLines, paperTotals, paymentLines } from '../papers/money.ts';
import { settleJob } from '../parts/promises.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { billOf } from './bill.ts';
import { openAccount } from './open-account.ts';
import { storageOf } from './storage.ts';

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

/** The job that warranty work goes back to. */
function workItGoesBackTo(
  { store }: Writing,
  { jobId, warrantyOf, reason }: { jobId: string; warrantyOf: string | null; reason: string },
  errors: { WARRANTY_UNEXPLAINED: () => Error },
) {
  if (warrantyOf === null || warrantyOf === jobId || reason === '')
    throw errors.WARRANTY_UNEXPLAINED();
  return found(jobRowById(store, warrantyOf), 'job that the warranty work goes back to');
}

/** The customer reads on the paper why it costs nothing. */
const warrantyNote = (origin: number, { reason, note }: { reason: string; note: string }): string =>
  [`Warranty work on what was done in job ${jobCode(origin)}, at no charge: ${reason}`, note]
    .filter(Boolean)
    .join('\n');

/** What is billed when nobody says otherwise: the storage that is due, or the work as it was estimated. */
function dueToBill(
  { store, shop, today }: Writing,
  account: Account,
  sort: InvoiceSort,
  errors: { NO_STORAGE: () => Error; NOTHING_ESTIMATED: () => Error },
): { lines: readonly LineInput[]; discount: Discount | null } {
  if (sort === 'storage') {
    const line = storageOf(store, account, { today, timeZone: shop.timeZone })?.line;
    if (line === null || line === undefined) throw errors.NO_STORAGE();
    return { lines: [line], discount: null };
  }
  const work = workToBill(account);
  if (work === null) throw errors.NOTHING_ESTIMATED();
  return { lines: work.lines, discount: work.option.discount };
}

export const issueInvoice = os.till.issueInvoice.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, shop, staff, at, today, newId, note } = writing;
    const { jobId, sort, reason } = input;
    const origin = sort === 'warranty' ? workItGoesBackTo(writing, input, errors) : null;
    const account = accountToBill(writing, input, errors);
    const { approvals, payments, unapplied, approvedLimit } = account;
    const asked =
      input.lines === null
        ? dueToBill(writing, account, sort, errors)
        : { lines: input.lines, discount: input.discount };
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
      note: origin === null ? input.note : warrantyNote(origin.number, input),
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
        warrantyOf: origin?.id ?? null,
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
    settleJob(writing, jobId);
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
