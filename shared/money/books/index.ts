export { type AccountNature, DEPOSITS, RECEIVABLE } from './accounts.ts';
export {
  AGE_BASES,
  AGE_LABELS,
  AGES,
  type AgeBasis,
  type AgedAmounts,
  ageing,
  ageOf,
  daysOld,
  type OpenItem,
} from './ageing.ts';
export { type ByMethod, drawerDifference, expectedInDrawer, type MoneyMoved } from './drawer.ts';
export {
  applicationPostings,
  type BilledAs,
  balances,
  creditNotePostings,
  invoicePostings,
  type Posting,
  paymentPostings,
} from './entries.ts';
export { type KindsTaxed, netByLine } from './net-lines.ts';
