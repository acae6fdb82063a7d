import { eq } from 'drizzle-orm';
import { nextNumber } from '../../../db/numbers.ts';
import { customerById, findCustomers } from '../../../db/queries/counter/customers.ts';
import { jobsOfCustomer } from '../../../db/queries/counter/jobs.ts';
import { findMachines } from '../../../db/queries/counter/machines.ts';
import { searchTextOf } from '../../../db/queries/search-text.ts';
import { customer as customerTable } from '../../../db/schema/index.ts';
import type { Customer } from '../../../shared/contract/counter/index.ts';
import { internationalPhone } from '../../../shared/work/counter/phone.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { findMachineAnew } from './machines.ts';
import { findJobAnew } from './search-text.ts';

type Facts = Pick<Customer, 'name' | 'phone' | 'email' | 'address' | 'reachBy' | 'note'>;

const columnsOf = ({ shop }: Writing, facts: Facts, number: number) => {
  const phoneInternational = internationalPhone(facts.phone, shop.country);
  return {
    ...facts,
    phoneInternational,
    searchText: searchTextOf(
      facts.name,
      facts.phone,
      phoneInternational,
      facts.email,
      facts.address,
      String(number),
    ),
  };
};

/** Adds a customer within a transaction: intake does it too. */
export function insertCustomer(writing: Writing, facts: Facts): Customer {
  const { store, at, newId } = writing;
  const id = newId();
  const number = nextNumber(store, 'customer');
  store
    .insert(customerTable)
    .values({ id, number, since: at, ...columnsOf(writing, facts, number) })
    .run();
  return found(customerById(store, id), 'customer');
}

const find = os.counter.findCustomers.handler(({ input, context }) =>
  findCustomers(context.store.read, input.text, input.limit),
);

const customer = os.counter.customer.handler(({ input, context: { store } }) => ({
  customer: found(customerById(store.read, input.id), 'customer'),
  machines: findMachines(store.read, '', input.id, 500),
  jobs: jobsOfCustomer(store.read, input.id),
}));

const add = os.counter.addCustomer.handler(({ input: { by, ...facts }, context, path }) =>
  write(context, path, by, (writing) => {
    const added = insertCustomer(writing, facts);
    writing.note({ customer: added.id, name: added.name });
    return added;
  }),
);

const revise = os.counter.reviseCustomer.handler(({ input: { by, id, ...facts }, context, path }) =>
  write(context, path, by, (writing) => {
    const before = found(customerById(writing.store, id), 'customer');
    writing.store
      .update(customerTable)
      .set(columnsOf(writing, facts, before.number))
      .where(eq(customerTable.id, id))
      .run();
    for (const machine of findMachines(writing.store, '', id, 500))
      findMachineAnew(writing, machine);
    for (const job of jobsOfCustomer(writing.store, id)) findJobAnew(writing, job.id);
    writing.note({ customer: id, name: facts.name, formerName: before.name });
    return found(customerById(writing.store, id), 'customer');
  }),
);

export const customers = {
  findCustomers: find,
  customer,
  addCustomer: add,
  reviseCustomer: revise,
};
