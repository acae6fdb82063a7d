import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { InvoiceId, JobId } from '../../shared/contract/ids.ts';
import type { Account } from '../../shared/contract/till/index.ts';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

/** What is taken off an issued invoice, and what becomes of the money. */

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  const facts = await desk.office.shop({});
  const taxes = [{ name: 'State', ratePpm: 62_500, kinds: ['part' as const] }];
  await desk.office.setShop({ by, ...facts, taxes });
});
afterAll(() => shop.close());

let serial = 0;
let jobId: JobId;
beforeEach(async () => {
  serial += 1;
  const intake = plainIntake(shop.by);
  const machine = { ...intake.machine, serial: `FM-5 ${serial}` };
  jobId = (await shop.desk.counter.takeIn({ ...intake, machine })).jobId;
});

const labour = { kind: 'labour' as const, description: 'Grind the valves', quantity: 1_000 };
const gasket = { kind: 'part' as const, description: 'Gasket', quantity: 2_000, unitPrice: 1_000 };

/** 60.00 of labour, 20.00 of parts, 1.25 tax. */
async function billed(): Promise<InvoiceId> {
  const account = await shop.desk.till.issueInvoice({
    by: shop.by,
    jobId,
    lines: [{ ...labour, unitPrice: 6_000 }, gasket],
  });
  return billOf(account).id;
}

function billOf({ invoice }: Account) {
  if (invoice === null) throw new Error('There is no invoice.');
  return invoice;
}

const credit = (
  invoiceId: InvoiceId,
  ...lines: Parameters<TestShop['desk']['till']['creditInvoice']>[0]['lines']
) => shop.desk.till.creditInvoice({ by: shop.by, invoiceId, lines, reason: 'Not fitted' });

const pay = (amount: number, kind: 'payment' | 'refund' | 'deposit' = 'payment') =>
  shop.desk.till.takePayment({ by: shop.by, jobId, kind, method: 'cash', amount });

describe('a line that is credited', () => {
  test('comes off what is open, with its tax', async () => {
    const account = await credit(await billed(), { line: 1 });
    expect(account).toMatchObject({
      due: 6_000,
      invoice: { credited: 2_125, open: 6_000, lineCredits: [0, 2_000], wholeLines: [1] },
      creditNotes: [
        {
          lines: [{ description: 'Gasket', quantity: 2_000, amount: 2_000 }],
          totals: { total: 2_125, taxes: [{ name: 'State', base: 2_000, amount: 125 }] },
          reason: 'Not fitted',
        },
      ],
    });
    const { papers } = await shop.desk.counter.job({ id: jobId });
    expect(papers.at(-1)).toMatchObject({ kind: 'credit-note' });
  });

  test('was paid: the money is the customer’s again, and may be given back', async () => {
    const invoiceId = await billed();
    await pay(8_125);
    expect(await credit(invoiceId, { line: 1 })).toMatchObject({
      due: -2_125,
      unapplied: 2_125,
      invoice: { open: 0, applied: 6_000 },
    });
    await expect(pay(2_126, 'refund')).rejects.toMatchObject({ code: 'NOTHING_TO_REFUND' });
    expect(await pay(2_125, 'refund')).toMatchObject({ due: 0, unapplied: 0 });
  });

  test('in parts never comes to more than the line', async () => {
    const invoiceId = await billed();
    await credit(invoiceId, { line: 1, amount: 1_500 });
    await expect(credit(invoiceId, { line: 1, amount: 501 })).rejects.toMatchObject({
      code: 'CREDITED_TOO_MUCH',
      data: { line: 1, left: 500 },
    });
    const account = await credit(invoiceId, { line: 1 });
    expect(account.creditNotes.map(({ totals }) => totals.total)).toEqual([1_594, 531]);
    await expect(credit(invoiceId, { line: 1 })).rejects.toMatchObject({ code: 'BAD_INPUT' });
  });

  test('is one of the invoice, named once', async () => {
    const invoiceId = await billed();
    for (const lines of [[{ line: 2 }], [{ line: 1 }, { line: 1 }]])
      await expect(credit(invoiceId, ...lines)).rejects.toMatchObject({ code: 'BAD_INPUT' });
  });
});

describe('an invoice that is credited whole', () => {
  test('makes way for another, which the money of the first pays', async () => {
    await pay(3_000, 'deposit');
    const first = await billed();
    const credited = await credit(first, { line: 0 }, { line: 1 });
    expect(credited).toMatchObject({ invoice: null, due: -3_000, unapplied: 3_000 });
    const second = await shop.desk.till.issueInvoice({
      by: shop.by,
      jobId,
      lines: [{ ...labour, unitPrice: 5_000 }],
    });
    expect(second).toMatchObject({
      invoice: { applied: 3_000, open: 2_000 },
      due: 2_000,
      unapplied: 0,
    });
    const numbers = second.invoices.map(({ number }) => Number(number.slice(2)));
    expect(numbers[1]).toBe((numbers[0] ?? 0) + 1);
  });

  test('may be one at no charge', async () => {
    const { desk, by } = shop;
    const intake = plainIntake(by);
    const machine = { ...intake.machine, serial: `Again ${serial}` };
    const { jobId: warrantyOf } = await desk.counter.takeIn({ ...intake, machine });
    const account = await desk.till.issueInvoice({
      by,
      jobId,
      sort: 'warranty',
      lines: [gasket],
      warrantyOf,
      reason: 'It leaks',
    });
    expect(await credit(billOf(account).id, { line: 0 })).toMatchObject({ invoice: null, due: 0 });
  });
});

test('a core that came back is not charged again by a credit', async () => {
  const { desk, by } = shop;
  const account = await desk.till.issueInvoice({
    by,
    jobId,
    lines: [
      gasket,
      { kind: 'core-credit', description: 'Old carburettor', quantity: 1_000, unitPrice: 1_200 },
    ],
  });
  const invoiceId = billOf(account).id;
  await expect(credit(invoiceId, { line: 1 })).rejects.toMatchObject({ code: 'CREDIT_CHARGES' });
  expect(await credit(invoiceId, { line: 0 }, { line: 1 })).toMatchObject({
    invoice: null,
    due: 0,
  });
});

test('a bill that comes to less than nothing is money of the customer', async () => {
  const { desk, by } = shop;
  const account = await desk.till.issueInvoice({
    by,
    jobId,
    lines: [
      { kind: 'core-credit', description: 'Old carburettor', quantity: 1_000, unitPrice: 1_200 },
    ],
  });
  expect(account).toMatchObject({ due: -1_200, unapplied: 1_200, invoice: { open: 0 } });
  expect(await pay(1_200, 'refund')).toMatchObject({ due: 0, unapplied: 0 });
});
