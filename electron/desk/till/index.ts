import { nextNumber } from '../../../db/numbers.ts';
import { dossierOf, jobRowById } from '../../../db/queries/counter/jobs.ts';
import { shopOf } from '../../../db/queries/office.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { invoiceNumber } from '../../../db/queries/till/invoices.ts';
import { billTermsOf } from '../../../db/queries/till/terms.ts';
import {
  application,
  invoice as invoiceTable,
  payment as paymentTable,
} from '../../../db/schema/index.ts';
import type { BillTerms } from '../../../shared/contract/till/index.ts';
import { overApproval } from '../../../shared/work/approval.ts';
import { dateIn } from '../../../shared/work/calendar.ts';
import { LOCAL_LAW } from '../../../shared/work/cautions.ts';
import type { DeskContext } from '../context.ts';
import { os } from '../implementer.ts';
import { paperHead, termLines } from '../papers/head.ts';
import { issue } from '../papers/issue.ts';
import { approvalLines, paperLines, paperTotals, paymentLines } from '../papers/money.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';
import { billOf } from './bill.ts';
import { approve, openAccount, writeEstimate } from './estimates.ts';

const account = os.till.account.handler(({ input, context: { store } }) =>
  found(accountOf(store.read, input.jobId), 'job'),
);

/** Today's terms of a job, or of anybody. */
function termsToday({ store, now }: DeskContext, jobId: string | null): BillTerms {
  const shop = shopOf(store.read);
  if (jobId !== null) found(jobRowById(store.read, jobId), 'job');
  return billTermsOf(store.read, shop, jobId, dateIn(shop.timeZone, now()));
}

const terms = os.till.terms.handler(({ input, context }) => termsToday(context, input.jobId));

const price = os.till.price.handler(({ input: { jobId, ...bill }, context }) =>
  billOf(context.store.read, termsToday(context, jobId), bill),
);

const issueInvoice = os.till.issueInvoice.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, shop, staff, at, today, newId, note } = writing;
    const { jobId } = input;
    const { estimates, approvals, payments, paid, approvedLimit } = openAccount(
      writing,
      jobId,
      errors,
    );
    const estimated = estimates.at(-1)?.options[0];
    const bill =
      input.lines === null ? estimated : { lines: input.lines, discount: input.discount };
    if (bill === undefined) throw errors.NOTHING_ESTIMATED();
    const { lines, totals } = billOf(store, billTermsOf(store, shop, jobId, today), bill);
    const over = overApproval(totals.total, approvedLimit);
    if (over > 0)
      throw errors.OVER_APPROVAL({ data: { total: totals.total, limit: approvedLimit, over } });

    const job = found(dossierOf(store, jobId), 'job');
    const number = nextNumber(store, 'invoice');
    const paper = issue(writing, jobId, {
      kind: 'invoice',
      ...paperHead(writing, job, invoiceNumber(number)),
      lines: paperLines(lines, shop),
      totals: paperTotals(totals, shop),
      approvals: approvalLines(approvals),
      payments: paymentLines(payments),
      due: totals.total - paid,
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
        lines,
        totals,
        total: totals.total,
        currency: shop.currency,
        note: input.note,
        paperId: paper.id,
        by: staff.id,
        at,
      })
      .run();
    // What the customer paid before stands against the bill from now on.
    const applied = Math.min(paid, totals.total);
    if (applied > 0)
      store
        .insert(application)
        .values({ id: newId(), jobId, invoiceId, amount: applied, by: staff.id, at })
        .run();
    note({
      job: jobId,
      invoice: invoiceNumber(number),
      total: totals.total,
      fingerprint: paper.fingerprint,
    });
    return found(accountOf(store, jobId), 'job');
  }),
);

const takePayment = os.till.takePayment.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, shop, staff, at, newId, note }) => {
    const { jobId, kind, method, amount } = input;
    const { invoice, due, paid } = found(accountOf(store, jobId), 'job');
    if (kind === 'payment' && invoice === null) throw errors.NOT_INVOICED();
    if (kind !== 'refund' && invoice !== null && amount > due)
      throw errors.OVERPAID({ data: { due } });
    if (kind === 'refund' && amount > paid) throw errors.NOTHING_TO_REFUND({ data: { paid } });
    store
      .insert(paymentTable)
      .values({
        id: newId(),
        jobId,
        kind,
        method,
        amount,
        currency: shop.currency,
        by: staff.id,
        at,
      })
      .run();
    if (kind === 'payment' && invoice !== null)
      store
        .insert(application)
        .values({ id: newId(), jobId, invoiceId: invoice.id, amount, by: staff.id, at })
        .run();
    note({ job: jobId, payment: kind, method, amount });
    return found(accountOf(store, jobId), 'job');
  }),
);

export const till = { account, terms, price, writeEstimate, approve, issueInvoice, takePayment };
