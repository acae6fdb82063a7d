import { nextNumber } from '../../../../db/numbers.ts';
import { customerById } from '../../../../db/queries/counter/customers.ts';
import { statementsOf } from '../../../../db/queries/till/statements.ts';
import { customerStatement } from '../../../../db/schema/index.ts';
import type { LedgerEntry } from '../../../../shared/contract/till/index.ts';
import { AGE_LABELS, AGES } from '../../../../shared/money/books/index.ts';
import { LOCAL_LAW } from '../../../../shared/work/cautions.ts';
import { LEDGER_LABELS } from '../../../../shared/work/reports.ts';
import { os } from '../../implementer.ts';
import { paperNumber, partyOf, shopHead, termLines } from '../../papers/head.ts';
import { issue } from '../../papers/issue.ts';
import { found } from '../../refuse.ts';
import { write } from '../../writing.ts';
import { ledgerOf } from './ledger.ts';

const entryOnPaper = ({ on, what, number, jobCode, amount, balance }: LedgerEntry) => ({
  on,
  what: LEDGER_LABELS[what],
  number,
  job: jobCode,
  amount,
  balance,
});

export const issueStatement = os.till.issueStatement.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, shop, note } = writing;
    const customer = found(customerById(store, input.customerId), 'customer');
    const { from, to } = input;
    const ledger = ledgerOf(store, customer, { timeZone: shop.timeZone, from, to });
    const { opening, entries, closing, openInvoices, aged, unapplied } = ledger;
    if (entries.length === 0 && opening === 0 && openInvoices.length === 0)
      throw errors.NOTHING_ON_ACCOUNT();
    const number = paperNumber('S', nextNumber(store, 'statement'));
    const paper = issue(writing, null, {
      kind: 'statement',
      ...shopHead(writing, number),
      customer: partyOf(customer),
      from,
      to,
      opening,
      entries: entries.map(entryOnPaper),
      closing,
      openInvoices: openInvoices.map((invoice) => ({
        number: invoice.number,
        job: invoice.jobCode,
        invoicedOn: invoice.invoicedOn,
        dueOn: invoice.dueOn ?? invoice.invoicedOn,
        open: invoice.open,
      })),
      ages: AGES.map((age) => ({ label: AGE_LABELS[age], amount: aged[age] })),
      unapplied,
      terms: [...termLines(shop.invoiceTerms), LOCAL_LAW],
    });
    store
      .insert(customerStatement)
      .values({ paperId: paper.id, customerId: customer.id, from, to, closing })
      .run();
    note({
      customer: customer.id,
      statement: number,
      balance: closing,
      fingerprint: paper.fingerprint,
    });
    return paper;
  }),
);

export const statements = os.till.statements.handler(({ input, context: { store } }) =>
  statementsOf(store.read, found(customerById(store.read, input.customerId), 'customer').id),
);
