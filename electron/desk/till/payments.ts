import { accountOf } from '../../../db/queries/till/account.ts';
import { application, payment as paymentTable } from '../../../db/schema/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';

export const takePayment = os.till.takePayment.handler(({ input, context, errors, path }) =>
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
