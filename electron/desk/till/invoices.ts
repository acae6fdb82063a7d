import { nextNumber } from '../../../db/numbers.ts';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { customerMoney } from '../../../db/queries/till/customer-money.ts';
import { invoiceNumber } from '../../../db/queries/till/invoices.ts';
import { billTermsOf, customerTermsOf } from '../../../db/queries/till/terms.ts';
import { invoice as invoiceTable } from '../../../db/schema/index.ts';
import { jobCode } from '../../../shared/contract/ids.ts';
import type { Account } from '../../../shared/contract/till/index.ts';
import { atNoCharge } from '../../../shared/money/index.ts';
import { addDays } from '../../../shared/work/calendar.ts';
import { LOCAL_LAW } from '../../../shared/work/cautions.ts';
import { overApproval } from '../../../shared/work/till/approval.ts';
import { billDifferences } from '../../../shared/work/till/bill-differences.ts';
import { workToBill } from '../../../shared/work/till/work-to-bill.ts';
import type { PaymentLine } from '../../paper/content.ts';
import { os } from '../implementer.ts';
import { paperHead, termLines } from '../papers/head.ts';
import { intakeApproval } from '../papers/intake.ts';
import { issue } from '../papers/issue.ts';
import { approvalLines, paperLines, paperTotals, paymentLines } from '../papers/money.ts';
import { issueWhatIsBilled } from '../parts/billed-parts.ts';
import { markPartsToIssue } from '../parts/parts-to-issue.ts';
import { settleJob } from '../parts/promises.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { billOf } from './bill.ts';
import { settleBills } from './settle-bills.ts';
import { accountToBill, demandStorage, dueToBill, workItGoesBackTo } from './what-is-billed.ts';

/** When a customer pays, and how far a bill would bring them over what they may owe. */
function payingTerms({ store, today }: Writing, customerId: string, total: number) {
  const { onAccount, termsDays, creditLimit } = customerTermsOf(store, customerId);
  if (!onAccount) return { dueOn: null, beyond: null };
  const { owed, unapplied } = customerMoney(store, customerId);
  const wouldOwe = owed - unapplied + total;
  const over = creditLimit === null ? 0 : wouldOwe - creditLimit;
  return {
    dueOn: addDays(today, termsDays),
    beyond:
      creditLimit === null || total <= 0 || over <= 0
        ? null
        : { owed: wouldOwe, limit: creditLimit, over },
  };
}

/** What was paid towards a bill: every payment, unless some of them paid another bill of the job. */
const paymentsOnBill = ({ payments, paid, unapplied }: Account, at: string): PaymentLine[] =>
  paid === unapplied
    ? paymentLines(payments)
    : [{ at, what: 'Held of earlier payments', method: 'set against this', amount: unapplied }];

export const issueInvoice = os.till.issueInvoice.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, shop, staff, at, today, newId, note } = writing;
    const { jobId, sort, reason, beyondCredit } = input;
    const origin = sort === 'warranty' ? workItGoesBackTo(writing, input, errors) : null;
    const account = accountToBill(writing, input, errors);
    const { approvals, unapplied, approvedLimit } = account;
    const asked =
      input.lines === null
        ? dueToBill(writing, account, sort, errors)
        : { lines: input.lines, discount: input.discount };
    const bill = sort === 'warranty' ? { lines: atNoCharge(asked.lines), discount: null } : asked;
    const { lines, totals } = billOf(store, billTermsOf(store, shop, jobId, today), bill);
    // Storage is charged by the shop's rule, and not by what was approved of the work.
    if (sort === 'storage') demandStorage(writing, account, { lines, totals }, errors);
    const over = sort === 'storage' ? 0 : overApproval(totals.total, approvedLimit);
    if (over > 0)
      throw errors.OVER_APPROVAL({ data: { total: totals.total, limit: approvedLimit, over } });
    const { dueOn, beyond } = payingTerms(writing, account.customerId, totals.total);
    if (beyond !== null && !beyondCredit) throw errors.OVER_CREDIT_LIMIT({ data: beyond });

    const job = found(dossierOf(store, jobId), 'job');
    const number = nextNumber(store, 'invoice');
    const work = sort === 'work' ? workToBill(account) : null;
    const declined = work?.approval?.declined ?? [];
    const paper = issue(writing, jobId, {
      kind: 'invoice',
      ...paperHead(writing, job, invoiceNumber(number)),
      sort,
      warranty: origin === null ? null : { job: jobCode(origin.number), reason },
      lines: paperLines(lines, shop),
      totals: paperTotals(totals, shop, bill.discount),
      approvals: sort === 'work' ? [...intakeApproval(job), ...approvalLines(approvals)] : [],
      // What nobody approved by its lines, within the spending limit of intake, differs from nothing.
      differences: work?.approval ? billDifferences(work.lines, lines) : [],
      declined: declined.map(({ description, amount }) => ({ description, amount })),
      payments: paymentsOnBill(account, at),
      due: totals.total - unapplied,
      dueOn,
      note: input.note,
      terms: [...termLines(shop.invoiceTerms), LOCAL_LAW],
    });
    store
      .insert(invoiceTable)
      .values({
        id: newId(),
        number,
        jobId,
        sort,
        lines,
        totals,
        total: totals.total,
        currency: shop.currency,
        declined,
        dueOn,
        warrantyOf: origin?.id ?? null,
        reason,
        note: input.note,
        paperId: paper.id,
        by: staff.id,
        at,
      })
      .run();
    // What the customer paid before stands against the bill from now on.
    settleBills(writing, jobId);
    const issued = input.issueParts ? issueWhatIsBilled(writing, jobId, null) : [];
    settleJob(writing, jobId);
    markPartsToIssue(writing, jobId);
    note({
      job: jobId,
      invoice: invoiceNumber(number),
      sort,
      total: totals.total,
      fingerprint: paper.fingerprint,
      ...(issued.length > 0 && { issued: issued.join(', ') }),
      ...(beyond !== null && { beyondCreditLimit: beyond.over }),
    });
    return found(accountOf(store, jobId), 'job');
  }),
);
