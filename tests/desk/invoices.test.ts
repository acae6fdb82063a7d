import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { JobId } from '../../shared/contract/ids.ts';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

/** What an invoice is issued for and from. */

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop();
});
afterAll(() => shop.close());

const lines = [
  {
    kind: 'labour' as const,
    description: 'Grind the valves',
    quantity: 2_000,
    unit: 'h',
    unitPrice: 4_000,
  },
  { kind: 'part' as const, description: 'Gasket', quantity: 1_000, unitPrice: 900, unitCost: 500 },
];

let serial = 0;
const takenIn = async (): Promise<JobId> => {
  serial += 1;
  const intake = plainIntake(shop.by);
  const machine = { ...intake.machine, serial: `FM-5 ${serial}` };
  return (await shop.desk.counter.takeIn({ ...intake, machine })).jobId;
};

let jobId: JobId;
beforeEach(async () => {
  jobId = await takenIn();
});

describe('warranty work', () => {
  test('charges nothing, keeps its cost, and needs no approval', async () => {
    const { desk, by } = shop;
    const warrantyOf = await takenIn();
    const { invoice, due } = await desk.till.issueInvoice({
      by,
      jobId,
      sort: 'warranty',
      lines,
      warrantyOf,
      reason: 'The gasket that we fitted leaks',
    });
    expect(due).toBe(0);
    expect(invoice).toMatchObject({
      sort: 'warranty',
      lines: [
        { unitPrice: 4_000, discounted: 8_000, amount: 0 },
        { unitCost: 500, discounted: 900, amount: 0 },
      ],
      totals: { subtotal: 0, total: 0 },
    });
  });

  test('says which job it goes back to, and why', async () => {
    const { desk, by } = shop;
    await expect(
      desk.till.issueInvoice({ by, jobId, sort: 'warranty', lines, reason: 'It leaks' }),
    ).rejects.toMatchObject({ code: 'WARRANTY_UNEXPLAINED', defined: true });
  });
});

test('storage is billed beside the work, and nothing else with it', async () => {
  const { desk, by } = shop;
  const rules = await desk.till.rules({});
  const storage = { afterDays: 0, perDay: 250, cap: null };
  await desk.till.setRules({ by, rules: { ...rules, storage } });
  await desk.till.issueInvoice({ by, jobId, lines });
  const bill = { by, jobId, sort: 'storage' as const };
  const days = (quantity: number) => [
    { kind: 'fee' as const, description: 'Storage', quantity, unitPrice: 250, unit: 'day' },
  ];
  // The machine is still worked on: it waits for nobody to collect it.
  await expect(desk.till.issueInvoice({ ...bill, lines: days(1_000) })).rejects.toMatchObject({
    code: 'NO_STORAGE',
  });
  for (const to of ['diagnosis', 'stopped'] as const)
    await desk.counter.moveJob({ by, jobId, to, note: 'Not worth it' });
  shop.setClock('2026-03-06T18:00:00.000Z');
  // Whatever was approved does not bound a storage invoice: its own rule does.
  await expect(desk.till.issueInvoice({ ...bill, lines })).rejects.toMatchObject({
    code: 'BAD_INPUT',
    data: { issues: [{ path: 'lines.0.kind' }] },
  });
  await expect(desk.till.issueInvoice({ ...bill, lines: days(5_000) })).rejects.toMatchObject({
    code: 'OVER_STORAGE',
    data: { due: 1_000, over: 250 },
  });
  const account = await desk.till.issueInvoice({ ...bill, lines: days(4_000) });
  expect(account).toMatchObject({
    invoice: { sort: 'work' },
    invoices: [{ sort: 'work' }, { sort: 'storage', open: 1_000 }],
    due: 9_900,
  });
  // Typed or by the rule, it is billed once.
  expect(await desk.till.storage({ jobId })).toMatchObject({ amount: 1_000, toBill: 0 });
});
