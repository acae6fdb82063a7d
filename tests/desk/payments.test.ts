import { eq } from 'drizzle-orm';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { issuedPaper } from '../../db/schema/index.ts';
import type { JobId } from '../../shared/contract/ids.ts';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

/** Money that changes hands: receipts, change, what is kept and what may be given back. */

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop();
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

const billed = (unitPrice = 8_000) =>
  shop.desk.till.issueInvoice({
    by: shop.by,
    jobId,
    lines: [{ kind: 'labour', description: 'Rebuild', quantity: 1_000, unitPrice }],
  });

const pay = (
  amount: number,
  more: Partial<Parameters<TestShop['desk']['till']['takePayment']>[0]> = {},
) =>
  shop.desk.till.takePayment({
    by: shop.by,
    jobId,
    kind: 'payment',
    method: 'cash',
    amount,
    ...more,
  });

const contentOf = (paperId: string): unknown =>
  JSON.parse(
    shop.context.store.read
      .select({ content: issuedPaper.content })
      .from(issuedPaper)
      .where(eq(issuedPaper.id, paperId))
      .get()?.content ?? '',
  );

describe('a receipt', () => {
  test('is made out for every sum, numbered without a gap, with a paper of its own', async () => {
    await pay(2_000, { kind: 'deposit', method: 'card', reference: 'slip 88' });
    await billed();
    const { payments } = await pay(6_000, { given: 10_000 });
    expect(payments).toMatchObject([
      { kind: 'deposit', reference: 'slip 88', receipt: { given: null, change: 0 } },
      { kind: 'payment', receipt: { amount: 6_000, given: 10_000, change: 4_000 } },
    ]);
    const numbers = payments.map(({ receipt }) => Number(receipt?.number.slice(2)));
    expect(numbers[1]).toBe((numbers[0] ?? 0) + 1);
    const { papers } = await shop.desk.counter.job({ id: jobId });
    expect(
      papers
        .filter(({ kind }) => kind === 'receipt')
        .map(({ id }) => id)
        .sort(),
    ).toEqual(payments.map(({ receipt }) => receipt?.paper.id).sort());
  });

  test('tells what the money was set against, and what is left to pay', async () => {
    const { invoice } = await billed();
    const { payments } = await pay(3_000);
    const card = payments[0]?.receipt?.paper;
    if (card === undefined) throw new Error('No receipt was made out.');
    expect(contentOf(card.id)).toMatchObject({
      kind: 'receipt',
      amount: 3_000,
      uses: [{ what: `Invoice ${invoice?.number}`, amount: 3_000, open: 5_000 }],
    });
  });
});

describe('cash', () => {
  test('that is less than what is taken is refused', async () => {
    await billed();
    await expect(pay(8_000, { given: 7_900 })).rejects.toMatchObject({
      code: 'GIVEN_TOO_LITTLE',
      data: { short: 100 },
    });
  });

  test('is the only thing that is counted out', async () => {
    await billed();
    await expect(pay(8_000, { method: 'card', given: 9_000 })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { issues: [{ path: 'given' }] },
    });
  });
});

describe('more than is due', () => {
  test('is refused, unless it is to be kept for the customer', async () => {
    await billed();
    await expect(pay(9_000)).rejects.toMatchObject({ code: 'OVERPAID', data: { due: 8_000 } });
    expect(await pay(9_000, { keepOver: true })).toMatchObject({ due: -1_000, unapplied: 1_000 });
  });

  test('and kept is what may be given back, and no more', async () => {
    await billed();
    await pay(9_000, { keepOver: true });
    await expect(pay(1_001, { kind: 'refund' })).rejects.toMatchObject({
      code: 'NOTHING_TO_REFUND',
      data: { free: 1_000 },
    });
    expect(await pay(1_000, { kind: 'refund' })).toMatchObject({ due: 0, unapplied: 0 });
  });
});

describe('several jobs of one customer', () => {
  /** Two jobs of a customer of their own, billed at 60.00 and 40.00. */
  async function twoBilled() {
    const { desk, by } = shop;
    const { customerId } = await desk.till.account({ jobId });
    const { jobId: second } = await desk.counter.takeIn({
      ...plainIntake(by),
      customer: { which: 'known', id: customerId },
      machine: { which: 'new', kind: 'pump', serial: `P ${serial}`, engine: {} },
    });
    const first = jobId;
    await billed(6_000);
    jobId = second;
    await billed(4_000);
    return { customerId, first, second };
  }

  test('one sum pays their open invoices, the oldest first, with one receipt', async () => {
    const { desk, by } = shop;
    const { customerId, first, second } = await twoBilled();
    const { receipt, money } = await desk.till.takeAccountPayment({
      by,
      customerId,
      method: 'transfer',
      amount: 7_500,
      reference: 'TR 81',
    });
    expect(money).toMatchObject({
      owed: 2_500,
      unapplied: 0,
      open: [{ jobId: second, open: 2_500 }],
    });
    const accounts = [
      await desk.till.account({ jobId: first }),
      await desk.till.account({ jobId: second }),
    ];
    expect(accounts).toMatchObject([
      { due: 0, payments: [{ amount: 6_000, receipt: { id: receipt.id, amount: 7_500 } }] },
      { due: 2_500, payments: [{ amount: 1_500, receipt: { id: receipt.id } }] },
    ]);
    const over = { by, customerId, method: 'card' as const, amount: 2_501 };
    await expect(desk.till.takeAccountPayment(over)).rejects.toMatchObject({
      code: 'OVERPAID',
      data: { due: 2_500 },
    });
    const kept = await desk.till.takeAccountPayment({ ...over, keepOver: true });
    expect(kept.money).toMatchObject({ owed: 0, unapplied: 1 });
    await expect(desk.till.takeAccountPayment(over)).rejects.toMatchObject({
      code: 'NOTHING_OPEN',
    });
  });

  test('what is left over on one pays another', async () => {
    const { desk, by } = shop;
    const { customerId, first, second } = await twoBilled();
    jobId = first;
    await pay(9_000, { keepOver: true });
    expect(await desk.till.spendCredit({ by, jobId: second })).toMatchObject({ due: 1_000 });
    expect(await desk.till.account({ jobId: first })).toMatchObject({ due: 0, unapplied: 0 });
    expect(await desk.till.customerMoney({ customerId })).toMatchObject({ owed: 1_000 });
    await expect(desk.till.spendCredit({ by, jobId: second })).rejects.toMatchObject({
      code: 'NO_CREDIT',
    });
  });

  test('a deposit stays with its job when a bill of nothing was credited whole', async () => {
    const { desk, by } = shop;
    const { first, second, customerId } = await twoBilled();
    const intake = plainIntake(by);
    jobId = (
      await desk.counter.takeIn({
        ...intake,
        customer: { which: 'known', id: customerId },
        machine: { ...intake.machine, serial: 'FM-5 of a deposit' },
      })
    ).jobId;
    await pay(3_000, { kind: 'deposit' });
    const { invoice } = await billed(0);
    if (invoice === null) throw new Error('No invoice was issued.');
    await desk.till.creditInvoice({
      by,
      invoiceId: invoice.id,
      lines: [{ line: 0 }],
      reason: 'The price was missing',
    });
    for (const other of [first, second])
      await expect(desk.till.spendCredit({ by, jobId: other })).rejects.toMatchObject({
        code: 'NO_CREDIT',
      });
  });
});

describe('a customer on account', () => {
  test('pays within their days, and is asked about beyond their limit', async () => {
    const { desk, by } = shop;
    const { customerId } = await desk.till.account({ jobId });
    await desk.till.setCustomerTerms({
      by,
      customerId,
      onAccount: true,
      termsDays: 30,
      creditLimit: 5_000,
    });
    shop.setClock('2026-03-10T15:00:00.000Z');
    const bill = {
      by,
      jobId,
      lines: [{ kind: 'fee' as const, description: 'Rebuild', quantity: 1_000, unitPrice: 5_001 }],
    };
    await expect(desk.till.issueInvoice(bill)).rejects.toMatchObject({
      code: 'OVER_CREDIT_LIMIT',
      data: { owed: 5_001, limit: 5_000, over: 1 },
    });
    expect(await desk.till.issueInvoice({ ...bill, beyondCredit: true })).toMatchObject({
      invoice: { dueOn: '2026-04-09', open: 5_001 },
    });
  });

  test('takes the machine and pays later; the work order tells what brings the bill to that', async () => {
    const { desk, by } = shop;
    const { customerId } = await desk.till.account({ jobId });
    await desk.till.setCustomerTerms({ by, customerId, onAccount: true, termsDays: 30 });
    await pay(1_000, { kind: 'deposit' });
    const { invoice } = await billed();
    if (invoice === null) throw new Error('There is no invoice.');
    await desk.till.creditInvoice({
      by,
      invoiceId: invoice.id,
      lines: [{ line: 0, amount: 500 }],
      reason: 'Took longer than promised',
    });
    await desk.counter.moveJob({ by, jobId, to: 'stopped', note: 'Not worth it' });
    const { workOrder } = await desk.counter.handOver({
      by,
      jobId,
      workDone: 'Looked at',
      customerSignature: { name: 'Greta Lindqvist' },
      shopSignature: { name: 'Ruth Okafor' },
    });
    expect(contentOf(workOrder.id)).toMatchObject({
      totals: { total: 8_000 },
      payments: [
        { what: 'Deposit', amount: 1_000 },
        { what: expect.stringMatching(/^Credit note N-/), amount: 500 },
      ],
      due: 6_500,
      dueOn: invoice.dueOn,
    });
  });
});
