import type { LineKind, PaymentMethod } from '../../work/vocabulary.ts';
import { formatRate } from '../figures.ts';

/** The accounts that the till's bookkeeping uses. Their names go into the accountant's own chart. */

export type AccountNature = 'asset' | 'liability' | 'income';

export interface BookAccount {
  readonly name: string;
  readonly nature: AccountNature;
}

export const MONEY_ACCOUNTS: Record<PaymentMethod, BookAccount> = {
  cash: { name: 'Cash', nature: 'asset' },
  card: { name: 'Card takings', nature: 'asset' },
  transfer: { name: 'Bank transfers', nature: 'asset' },
  cheque: { name: 'Cheques', nature: 'asset' },
};

/** What customers owe. */
export const RECEIVABLE: BookAccount = { name: 'Customers, owed to us', nature: 'asset' };

/** What was paid and is not applied to an invoice yet. */
export const DEPOSITS: BookAccount = { name: 'Customers, deposits held', nature: 'liability' };

/** A core is security for an old part: what was charged and did not come back is owed until it does. */
const CORES: BookAccount = { name: 'Cores held', nature: 'liability' };

const SALES: Record<LineKind, BookAccount> = {
  labour: { name: 'Sales, labour', nature: 'income' },
  part: { name: 'Sales, parts', nature: 'income' },
  outside: { name: 'Sales, outside work', nature: 'income' },
  supplies: { name: 'Sales, supplies', nature: 'income' },
  fee: { name: 'Sales, fees', nature: 'income' },
  'core-charge': CORES,
  'core-credit': CORES,
};

/** What no line accounts for; nothing, unless a bill was written by another program. */
export const OTHER_SALES: BookAccount = { name: 'Sales, other', nature: 'income' };

export const salesAccount = (kind: LineKind): BookAccount => SALES[kind];

/** One for each rule and rate, so that a rate that changed stands apart. */
export const taxAccount = ({ name, ratePpm }: { name: string; ratePpm: number }): BookAccount => ({
  name: `Tax, ${name} ${formatRate(ratePpm)}`,
  nature: 'liability',
});
