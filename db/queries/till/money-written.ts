import { estimate, invoice, payment } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/** Whether amounts stand on a paper or in the books: they hold in the currency of then. */
export const moneyWritten = (store: ReadStore): boolean =>
  [estimate, invoice, payment].some(
    (table) => store.select({ id: table.id }).from(table).limit(1).get() !== undefined,
  );
