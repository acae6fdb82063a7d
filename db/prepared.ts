import type { ReadStore } from './store.ts';

/**
 * A query that is put together once for each store: that takes as long as to run it, and every call of the
 * desk asks some of them. What differs from time to time comes in by `sql.placeholder`.
 */
export function prepared<Query extends object>(
  make: (store: ReadStore) => Query,
): (store: ReadStore) => Query {
  const made = new WeakMap<ReadStore, Query>();
  return (store) => {
    const query = made.get(store) ?? make(store);
    made.set(store, query);
    return query;
  };
}
