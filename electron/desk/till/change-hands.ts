import { nextNumber } from '../../../db/numbers.ts';
import { customerById } from '../../../db/queries/counter/customers.ts';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { receiptNumber } from '../../../db/queries/till/payments.ts';
import { payment as paymentTable, receipt as receiptTable } from '../../../db/schema/index.ts';
import { type JobCode, jobCode } from '../../../shared/contract/ids.ts';
import { settle } from '../../../shared/money/index.ts';
import {
  PAYMENT_METHOD_LABELS,
  type PaymentKind,
  type PaymentMethod,
} from '../../../shared/work/vocabulary.ts';
import type { MoneyUse } from '../../paper/content.ts';
import { paperHead, partyOf, shopHead } from '../papers/head.ts';
import { issue } from '../papers/issue.ts';
import { PAYMENT_WORDS } from '../papers/money.ts';
import { found } from '../refuse.ts';
import type { Writing } from '../writing.ts';
import { setAgainst } from './settle-bills.ts';

/** Money that changes hands once. Amounts are minor units; none is below zero. */
export interface Handed {
  customerId: string;
  kind: PaymentKind;
  method: PaymentMethod;
  given: number | null;
  change: number;
  reference: string;
}

/** What of it is meant for a job. */
export interface Share {
  jobId: string;
  amount: number;
}

/** A share, and what becomes of it: set against the job's open invoices, oldest first, the rest kept. */
interface Spread extends Share {
  code: JobCode;
  applied: { invoiceId: string; amount: number }[];
  uses: MoneyUse[];
}

/** Takes or gives back money: a receipt with its paper, a payment for each job, and what they pay. */
export function changeHands(
  writing: Writing,
  handed: Handed,
  shares: readonly Share[],
): { number: string; receiptId: string } {
  const { store, shop, staff, at, newId } = writing;
  const { customerId, kind, method, given, change, reference } = handed;
  const spread = shares.map((share) => spreadOf(writing, kind, share));
  const amount = shares.reduce((sum, share) => sum + share.amount, 0);
  const [only] = shares.length === 1 ? shares : [];
  const number = nextNumber(store, 'receipt');
  const readable = receiptNumber(number);
  const paper = issue(writing, only?.jobId ?? null, {
    kind: 'receipt',
    ...(only === undefined
      ? {
          ...shopHead(writing, readable),
          customer: partyOf(found(customerById(store, customerId), 'customer')),
        }
      : paperHead(writing, found(dossierOf(store, only.jobId), 'job'), readable)),
    what: PAYMENT_WORDS[kind],
    back: kind === 'refund',
    method: PAYMENT_METHOD_LABELS[method],
    reference,
    amount,
    given,
    change,
    uses: spread.flatMap(({ uses }) => uses),
  });
  const receiptId = newId();
  store
    .insert(receiptTable)
    .values({
      id: receiptId,
      number,
      customerId,
      kind,
      method,
      amount,
      given,
      change,
      reference,
      currency: shop.currency,
      paperId: paper.id,
      by: staff.id,
      at,
    })
    .run();
  for (const { jobId, amount: paid, applied } of spread) {
    store
      .insert(paymentTable)
      .values({
        id: newId(),
        jobId,
        kind,
        method,
        amount: paid,
        currency: shop.currency,
        receiptId,
        reference,
        by: staff.id,
        at,
      })
      .run();
    for (const set of applied) setAgainst(writing, jobId, set);
  }
  return { number: readable, receiptId };
}

function spreadOf({ store }: Writing, kind: PaymentKind, { jobId, amount }: Share): Spread {
  const account = found(accountOf(store, jobId), 'job');
  const code = jobCode(found(dossierOf(store, jobId), 'job').number);
  const use = (what: string, used: number, open: number | null) => ({
    job: code,
    what,
    amount: used,
    open,
  });
  if (kind === 'refund') {
    const uses = [use('Money that was set against no invoice', amount, null)];
    return { jobId, amount, code, applied: [], uses };
  }
  const { invoices, unapplied } = account;
  const set = settle(
    invoices.map(({ open }) => open),
    unapplied + amount,
  );
  const paid = invoices
    .map((invoice, index) => ({ invoice, amount: set[index] ?? 0 }))
    .filter((each) => each.amount !== 0);
  const kept = amount - paid.reduce((sum, each) => sum + each.amount, 0);
  return {
    jobId,
    amount,
    code,
    applied: paid.map(({ invoice, amount: of }) => ({ invoiceId: invoice.id, amount: of })),
    uses: [
      ...paid.map(({ invoice, amount: of }) =>
        use(`Invoice ${invoice.number}`, of, invoice.open - of),
      ),
      ...(kept > 0
        ? [
            use(
              account.invoice === null
                ? 'Held for the customer until the invoice is issued'
                : 'Kept as the customer’s credit',
              kept,
              null,
            ),
          ]
        : []),
    ],
  };
}
