import type { LineKind, PaymentKind, PaymentMethod } from '../../work/vocabulary.ts';
import { demandMinor, sumMinor } from '../amount.ts';
import {
  type BookAccount,
  DEPOSITS,
  MONEY_ACCOUNTS,
  OTHER_SALES,
  RECEIVABLE,
  salesAccount,
  taxAccount,
} from './accounts.ts';
import { type IssuedBill, type KindsTaxed, netByLine } from './net-lines.ts';

/**
 * Double entry: what happens at the till as postings whose debits and credits are equal. Money: integer minor
 * units. Postings of nothing are left out, and several on one account are one.
 */

export interface Posting {
  readonly account: BookAccount;
  /** One of the two is zero, the other more than that. */
  readonly debit: number;
  readonly credit: number;
}

interface Signed {
  readonly account: BookAccount;
  /** Debit above zero, credit below. */
  readonly amount: number;
}

export interface BilledAs extends IssuedBill {
  readonly lines: readonly { readonly kind: LineKind; readonly amount: number }[];
}

/** An invoice: the customer owes its total; lines and taxes earned or owe it. */
export const invoicePostings = (bill: BilledAs, kindsTaxed: KindsTaxed): Posting[] =>
  postings(billed(bill, kindsTaxed));

/** A credit note: an invoice the other way round. */
export const creditNotePostings = (bill: BilledAs, kindsTaxed: KindsTaxed): Posting[] =>
  postings(billed(bill, kindsTaxed).map(({ account, amount }) => ({ account, amount: -amount })));

/** Money in is owed to the customer until it is applied; a refund gives back what is owed. */
export function paymentPostings({
  kind,
  method,
  amount,
}: {
  kind: PaymentKind;
  method: PaymentMethod;
  amount: number;
}): Posting[] {
  const into = kind === 'refund' ? -amount : amount;
  return postings([
    { account: MONEY_ACCOUNTS[method], amount: into },
    { account: DEPOSITS, amount: -into },
  ]);
}

/** Money of a customer set against an invoice; below zero when a credit note sets it free again. */
export const applicationPostings = (amount: number): Posting[] =>
  postings([
    { account: DEPOSITS, amount },
    { account: RECEIVABLE, amount: -amount },
  ]);

function billed(bill: BilledAs, kindsTaxed: KindsTaxed): Signed[] {
  const { taxes, total } = bill.totals;
  const net = netByLine(bill, kindsTaxed);
  const told = sumMinor([...net, ...taxes.map(({ amount }) => amount)]);
  return [
    { account: RECEIVABLE, amount: total },
    ...bill.lines.map(({ kind }, index) => ({
      account: salesAccount(kind),
      amount: -(net[index] ?? 0),
    })),
    ...taxes.map((tax) => ({ account: taxAccount(tax), amount: -tax.amount })),
    { account: OTHER_SALES, amount: told - total },
  ];
}

function postings(signed: readonly Signed[]): Posting[] {
  const byAccount = Map.groupBy(signed, ({ account }) => account.name);
  return [...byAccount.values()].flatMap((group) => {
    const account = group[0]?.account;
    const amount = sumMinor(group.map((each) => each.amount));
    demandMinor(amount);
    if (account === undefined || amount === 0) return [];
    return [{ account, debit: Math.max(0, amount), credit: Math.max(0, -amount) }];
  });
}

export interface AccountBalance {
  readonly account: BookAccount;
  readonly debit: number;
  readonly credit: number;
  /** Debit less credit. */
  readonly balance: number;
}

/** What was posted on each account, in the order in which the accounts came up. */
export const balances = (all: readonly Posting[]): AccountBalance[] =>
  [...Map.groupBy(all, ({ account }) => account.name).values()].flatMap((group) => {
    const account = group[0]?.account;
    if (account === undefined) return [];
    const debit = sumMinor(group.map((posting) => posting.debit));
    const credit = sumMinor(group.map((posting) => posting.credit));
    return [{ account, debit, credit, balance: debit - credit }];
  });
