import { customerById } from '../../../db/queries/counter/customers.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { customerMoney as moneyOf } from '../../../db/queries/till/customer-money.ts';
import { receiptById } from '../../../db/queries/till/payments.ts';
import { settle } from '../../../shared/money/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';
import { changeHands, type Share } from './change-hands.ts';
import { changeOf } from './payments.ts';
import { setAgainst } from './settle-bills.ts';

export const customerMoney = os.till.customerMoney.handler(({ input, context: { store } }) => {
  found(customerById(store.read, input.customerId), 'customer');
  return moneyOf(store.read, input.customerId);
});

export const takeAccountPayment = os.till.takeAccountPayment.handler(
  ({ input, context, errors, path }) =>
    write(context, path, input.by, (writing) => {
      const { customerId, method, amount, given, reference, keepOver } = input;
      found(customerById(writing.store, customerId), 'customer');
      const { open, owed } = moneyOf(writing.store, customerId);
      const last = open.at(-1);
      if (last === undefined || owed <= 0) throw errors.NOTHING_OPEN();
      if (amount > owed && !keepOver) throw errors.OVERPAID({ data: { due: owed } });
      const change = changeOf(input);
      if (change < 0) throw errors.GIVEN_TOO_LITTLE({ data: { short: -change } });
      const paid = settle(
        open.map((each) => each.open),
        amount,
      );
      const kept = amount - paid.reduce((sum, each) => sum + each, 0);
      const shares = byJob([
        ...open.map(({ jobId }, index) => ({ jobId, amount: paid[index] ?? 0 })),
        // What is over stays with the newest bill's job.
        { jobId: last.jobId, amount: kept },
      ]);
      const { receiptId, number } = changeHands(
        writing,
        { customerId, kind: 'payment', method, given, change, reference },
        shares,
      );
      writing.note({ customer: customerId, method, amount, receipt: number });
      return {
        receipt: found(receiptById(writing.store, receiptId), 'receipt'),
        money: moneyOf(writing.store, customerId),
      };
    }),
);

/** Several sums for one job are one; jobs that get nothing are left out. */
function byJob(shares: readonly Share[]): Share[] {
  const sums = new Map<string, number>();
  for (const { jobId, amount } of shares) sums.set(jobId, (sums.get(jobId) ?? 0) + amount);
  return [...sums].flatMap(([jobId, amount]) => (amount === 0 ? [] : [{ jobId, amount }]));
}

export const spendCredit = os.till.spendCredit.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store } = writing;
    const { jobId } = input;
    const { customerId, invoices } = found(accountOf(store, jobId), 'job');
    const lenders = moneyOf(store, customerId).held.filter(
      ({ jobId: of, amount, billed }) => of !== jobId && amount > 0 && billed,
    );
    let open = invoices.map((each) => each.open);
    let used = 0;
    for (const lender of lenders) {
      const set = settle(open, lender.amount);
      set.forEach((amount, index) => {
        const bill = invoices[index];
        if (amount !== 0 && bill !== undefined)
          setAgainst(writing, lender.jobId, { invoiceId: bill.id, amount });
      });
      open = open.map((amount, index) => amount - (set[index] ?? 0));
      used += set.reduce((sum, amount) => sum + amount, 0);
    }
    if (used === 0) throw errors.NO_CREDIT();
    writing.note({ job: jobId, used, from: lenders.map(({ jobCode }) => jobCode).join(', ') });
    return found(accountOf(store, jobId), 'job');
  }),
);
