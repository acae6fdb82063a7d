import { asc, eq, sql } from 'drizzle-orm';
import type { Customer } from '../../../shared/contract/counter/index.ts';
import { CustomerId } from '../../../shared/contract/ids.ts';
import { prepared } from '../../prepared.ts';
import { customer } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { matches } from '../search-text.ts';

const asCustomer = ({
  searchText: _searchText,
  ...row
}: typeof customer.$inferSelect): Customer => ({
  ...row,
  id: CustomerId.parse(row.id),
});

export const findCustomers = (store: ReadStore, text: string, limit: number): Customer[] =>
  store
    .select()
    .from(customer)
    .where(matches(customer.searchText, text))
    .orderBy(asc(customer.searchText))
    .limit(limit)
    .all()
    .map(asCustomer);

const rowById = prepared((store) =>
  store
    .select()
    .from(customer)
    .where(eq(customer.id, sql.placeholder('id')))
    .prepare(),
);

export function customerById(store: ReadStore, id: string): Customer | undefined {
  const row = rowById(store).get({ id });
  return row && asCustomer(row);
}
