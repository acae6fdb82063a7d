import type { Account } from '../../../shared/contract/till/index.ts';

type Owing = Pick<Account, 'due'> & {
  invoice: Pick<NonNullable<Account['invoice']>, 'dueOn'> | null;
};

/** What has to be paid or explained before the machine goes out; on account it may go out unpaid. */
export const owedNow = ({ invoice, due }: Owing): number =>
  typeof invoice?.dueOn === 'string' ? Math.min(0, due) : due;
