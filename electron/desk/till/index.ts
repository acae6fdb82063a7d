import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { shopOf } from '../../../db/queries/office.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { billTermsOf } from '../../../db/queries/till/terms.ts';
import type { BillTerms } from '../../../shared/contract/till/index.ts';
import { dateIn } from '../../../shared/work/calendar.ts';
import type { DeskContext } from '../context.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { customerMoney, spendCredit, takeAccountPayment } from './account-payments.ts';
import { approve } from './approvals.ts';
import { billOf } from './bill.ts';
import { books } from './books/index.ts';
import { bundles } from './bundles.ts';
import { clock } from './clock/index.ts';
import { creditInvoice } from './credit-notes.ts';
import { writeEstimate } from './estimates.ts';
import { issueInvoice } from './invoices.ts';
import { limit } from './limit/index.ts';
import { takePayment } from './payments.ts';
import { rules } from './rules.ts';
import { staffCosts } from './staff-costs.ts';
import { storage } from './storage.ts';
import { terms as customerTerms } from './terms.ts';
import { warranty } from './warranty.ts';

const account = os.till.account.handler(({ input, context: { store } }) =>
  found(accountOf(store.read, input.jobId), 'job'),
);

/** Today's terms of a job, or of anybody. */
function termsToday({ store, now }: DeskContext, jobId: string | null): BillTerms {
  const shop = shopOf(store.read);
  if (jobId !== null) found(jobRowById(store.read, jobId), 'job');
  return billTermsOf(store.read, shop, jobId, dateIn(shop.timeZone, now()));
}

const terms = os.till.terms.handler(({ input, context }) => termsToday(context, input.jobId));

const price = os.till.price.handler(({ input: { jobId, ...bill }, context }) =>
  billOf(context.store.read, termsToday(context, jobId), bill),
);

export const till = {
  ...rules,
  ...customerTerms,
  ...staffCosts,
  ...bundles,
  account,
  terms,
  price,
  writeEstimate,
  approve,
  ...limit,
  issueInvoice,
  creditInvoice,
  takePayment,
  customerMoney,
  takeAccountPayment,
  spendCredit,
  ...clock,
  ...storage,
  ...warranty,
  ...books,
};
