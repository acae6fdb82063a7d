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
    const row = shop.context.store.read
      .select({ content: issuedPaper.content })
      .from(issuedPaper)
      .where(eq(issuedPaper.id, card.id))
      .get();
    expect(JSON.parse(row?.content ?? '')).toMatchObject({
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
