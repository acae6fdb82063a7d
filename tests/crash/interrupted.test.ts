import { createRouterClient } from '@orpc/server';
import { asc, count } from 'drizzle-orm';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { verifyJournal } from '../../db/journal.ts';
import {
  application,
  counterNumber,
  creditNote,
  invoice,
  issuedPaper,
  journal,
  payment,
  receipt,
} from '../../db/schema/index.ts';
import type { Store, WriteStore } from '../../db/store.ts';
import { desk, deskInterceptors } from '../../electron/desk/index.ts';
import type { JobId } from '../../shared/contract/ids.ts';
import { openTestShop, plainIntake, type TestShop } from '../desk/shop.ts';

/**
 * A call of the till that breaks off, at every step that it takes in the store and once more before it is
 * committed: nothing of it stays, and no number is lost. Papers are not drawn here: that is pure work between two
 * steps, and would take minutes a thousand times over; the shop that is killed draws its own.
 */

class Crash extends Error {}

/** Steps that are left until the next crash; infinite for none. */
let left = Number.POSITIVE_INFINITY;
function step(): void {
  left -= 1;
  if (left === 0) throw new Crash();
}

const STEPS = ['select', 'selectDistinct', 'insert', 'update', 'delete'];

const breaking = (store: WriteStore): WriteStore =>
  new Proxy(store, {
    get(target, name) {
      const value: unknown = Reflect.get(target, name);
      if (typeof value !== 'function') return value;
      return (...given: unknown[]): unknown => {
        if (STEPS.includes(String(name))) step();
        return Reflect.apply(value, target, given);
      };
    },
  });

let shop: TestShop;
let client: TestShop['desk'];
beforeAll(async () => {
  shop = await openTestShop();
  const { store } = shop.context;
  const frail: Store = {
    ...store,
    write: (work) =>
      store.write((inside) => {
        const value = work(breaking(inside));
        step();
        return value;
      }),
  };
  client = createRouterClient(desk, {
    context: { ...shop.context, store: frail },
    interceptors: deskInterceptors,
  });
});
afterAll(() => shop.close());

const TABLES = [invoice, creditNote, receipt, payment, application, issuedPaper, journal];

/** How many rows each table has, and the next number of everything that is numbered. */
const state = () => {
  const { read } = shop.context.store;
  return JSON.stringify([
    TABLES.map((table) => read.select({ rows: count() }).from(table).get()?.rows),
    read.select().from(counterNumber).orderBy(asc(counterNumber.kind)).all(),
  ]);
};

let crashes = 0;

/** Breaks a call off at its first step, at its second … until it comes through. */
async function throughCrashes<T>(call: () => Promise<T>): Promise<T> {
  const before = state();
  for (let after = 1; ; after += 1) {
    left = after;
    try {
      return await call();
    } catch (error) {
      if (!(error instanceof Crash)) throw error;
      crashes += 1;
      expect(state()).toBe(before);
    } finally {
      left = Number.POSITIVE_INFINITY;
    }
  }
}

let machines = 0;
async function takenIn(customerId?: Parameters<typeof client.till.customerMoney>[0]['customerId']) {
  machines += 1;
  const { jobId } = await client.counter.takeIn({
    ...plainIntake(shop.by),
    ...(customerId && { customer: { which: 'known' as const, id: customerId } }),
    machine: { which: 'new', kind: 'pump', serial: `P ${machines}`, engine: {} },
  });
  return jobId;
}

const lines = [
  { kind: 'labour' as const, description: 'Rebuild', quantity: 1_000, unitPrice: 6_000 },
  { kind: 'part' as const, description: 'Gasket', quantity: 2_000, unitPrice: 450 },
];

/** Everything that takes a number: each call of it is broken off again and again. */
async function roundOfTheTill(): Promise<void> {
  const { by } = shop;
  const first = await takenIn();
  const { customerId } = await client.till.account({ jobId: first });
  const second = await takenIn(customerId);
  const pay = (
    jobId: JobId,
    kind: 'deposit' | 'payment' | 'refund',
    amount: number,
    keepOver = false,
  ) =>
    throughCrashes(() =>
      client.till.takePayment({ by, jobId, kind, method: 'cash', amount, keepOver }),
    );
  await pay(first, 'deposit', 2_000);
  const { invoice: bill } = await throughCrashes(() =>
    client.till.issueInvoice({ by, jobId: first, lines }),
  );
  if (bill === null) throw new Error('No invoice was issued.');
  await pay(first, 'payment', 5_000, true);
  await throughCrashes(() =>
    client.till.creditInvoice({
      by,
      invoiceId: bill.id,
      lines: [{ line: 1 }],
      reason: 'Not fitted',
    }),
  );
  await pay(first, 'refund', 100);
  await throughCrashes(() => client.till.issueInvoice({ by, jobId: second, lines }));
  await throughCrashes(() => client.till.spendCredit({ by, jobId: second }));
  await throughCrashes(() =>
    client.till.takeAccountPayment({ by, customerId, method: 'card', amount: 3_000 }),
  );
}

test('after a thousand crashes between steps every number is there once, and none is missing', async () => {
  let rounds = 0;
  while (crashes < 1_000) {
    await roundOfTheTill();
    rounds += 1;
  }
  const { read } = shop.context.store;
  const numbered = {
    invoices: read.select({ number: invoice.number }).from(invoice).all(),
    creditNotes: read.select({ number: creditNote.number }).from(creditNote).all(),
    receipts: read.select({ number: receipt.number }).from(receipt).all(),
  };
  const upTo = (last: number) => Array.from({ length: last }, (_, index) => index + 1);
  const numbers = (rows: { number: number }[]) =>
    rows.map(({ number }) => number).sort((a, b) => a - b);
  expect(numbers(numbered.invoices)).toEqual(upTo(2 * rounds));
  expect(numbers(numbered.creditNotes)).toEqual(upTo(rounds));
  expect(numbers(numbered.receipts)).toEqual(upTo(4 * rounds));
  expect(verifyJournal(read)).toMatchObject({ intact: true });
}, 120_000);
