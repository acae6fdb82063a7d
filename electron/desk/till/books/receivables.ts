import { customerById } from '../../../../db/queries/counter/customers.ts';
import type { ReadStore } from '../../../../db/store.ts';
import type { Receivables } from '../../../../shared/contract/till/index.ts';
import { type AgeBasis, ageing } from '../../../../shared/money/books/index.ts';
import { openInvoices, unappliedMoney } from './owed.ts';

/** Who owes what at the end of a day; whose oldest invoice is the oldest comes first. */
export function receivablesOn(
  store: ReadStore,
  { timeZone, on, basis }: { timeZone: string; on: string; basis: AgeBasis },
): Receivables {
  const moment = { timeZone, on, basis, customerId: null };
  const open = openInvoices(store, moment);
  const held = unappliedMoney(store, moment);
  const customers = [...Map.groupBy(open, ({ customerId }) => customerId)].map(
    ([customerId, invoices]) => {
      const customer = customerById(store, customerId);
      return {
        customerId,
        name: customer?.name ?? '',
        phone: customer?.phone ?? '',
        aged: ageing(invoices, basis, on),
        open: invoices.reduce((sum, invoice) => sum + invoice.open, 0),
        unapplied: held
          .filter((each) => each.customerId === customerId)
          .reduce((sum, each) => sum + each.held, 0),
        invoices,
      };
    },
  );
  return {
    on,
    basis,
    aged: ageing(open, basis, on),
    open: open.reduce((sum, invoice) => sum + invoice.open, 0),
    customers,
  };
}
