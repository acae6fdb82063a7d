export type { AccountNature } from './accounts.ts';
export {
  AGE_BASES,
  AGE_LABELS,
  AGES,
  type AgeBasis,
  type AgedAmounts,
  ageing,
  ageOf,
  daysOld,
} from './ageing.ts';
export { type ByMethod, drawerDifference, expectedInDrawer } from './drawer.ts';
export {
  applicationPostings,
  balances,
  creditNotePostings,
  invoicePostings,
  type Posting,
  paymentPostings,
} from './entries.ts';
export { type KindsTaxed, netByLine } from './net-lines.ts';
