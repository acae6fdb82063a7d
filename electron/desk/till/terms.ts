import { eq } from 'drizzle-orm';
import { customerTermsOf } from '../../../db/queries/till/terms.ts';
import { customer, customerTerms } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';

const theCustomer = (store: ReadStore, id: string) =>
  found(
    store.select({ name: customer.name }).from(customer).where(eq(customer.id, id)).get(),
    'customer',
  );

const get = os.till.customerTerms.handler(({ input, context: { store } }) => {
  theCustomer(store.read, input.customerId);
  return customerTermsOf(store.read, input.customerId);
});

const set = os.till.setCustomerTerms.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, note }) => {
    const { by: _by, customerId, ...facts } = input;
    theCustomer(store, customerId);
    const before = customerTermsOf(store, customerId);
    const lends =
      facts.onAccount !== before.onAccount ||
      facts.termsDays !== before.termsDays ||
      facts.creditLimit !== before.creditLimit;
    if (lends && staff.role !== 'owner') throw errors.OWNER_WANTED();
    store
      .insert(customerTerms)
      .values({ customerId, ...facts })
      .onConflictDoUpdate({ target: customerTerms.customerId, set: facts })
      .run();
    note({ customer: customerId, ...facts });
    return customerTermsOf(store, customerId);
  }),
);

export const terms = { customerTerms: get, setCustomerTerms: set };
