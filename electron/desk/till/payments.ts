import { accountOf } from '../../../db/queries/till/account.ts';
import type { Account } from '../../../shared/contract/till/index.ts';
import type { PaymentKind } from '../../../shared/work/vocabulary.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';
import { changeHands } from './change-hands.ts';

export const takePayment = os.till.takePayment.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { jobId, kind, method, amount, given, reference, keepOver } = input;
    const account = found(accountOf(writing.store, jobId), 'job');
    if (kind === 'payment' && account.invoices.length === 0) throw errors.NOT_INVOICED();
    if (kind === 'refund' && amount > account.unapplied)
      throw errors.NOTHING_TO_REFUND({ data: { free: Math.max(0, account.unapplied) } });
    if (!keepOver && amount > mostThatIsDue(kind, account))
      throw errors.OVERPAID({ data: { due: Math.max(0, account.due) } });
    const change = changeOf(input);
    if (change < 0) throw errors.GIVEN_TOO_LITTLE({ data: { short: -change } });
    const { customerId } = account;
    const { number } = changeHands(
      writing,
      { customerId, kind, method, given, change, reference },
      [{ jobId, amount }],
    );
    writing.note({ job: jobId, payment: kind, method, amount, receipt: number });
    return found(accountOf(writing.store, jobId), 'job');
  }),
);

/** A deposit may come to anything before there is a bill. */
const mostThatIsDue = (kind: PaymentKind, { invoice, due }: Account): number =>
  kind === 'refund' || (kind === 'deposit' && invoice === null) ? Number.POSITIVE_INFINITY : due;

/**
 * What goes back of the cash that was given; below zero when that is too little.
 * @throws the declared BAD_INPUT when something else than cash is counted out
 */
export function changeOf({
  kind = 'payment',
  method,
  amount,
  given,
}: {
  kind?: PaymentKind;
  method: string;
  amount: number;
  given: number | null;
}): number {
  if (given === null) return 0;
  if (method !== 'cash' || kind === 'refund')
    throw badInput([{ path: 'given', message: 'Only cash that is taken is counted out.' }]);
  return given - amount;
}
