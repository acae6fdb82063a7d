import { afterAll, beforeAll, expect, test } from 'vitest';
import type { JobId } from '../../shared/contract/ids.ts';
import { openTestShop, plainIntake, type TestShop, typed } from './shop.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop();
});
afterAll(() => shop.close());

const RULE = { afterDays: 30, perDay: 250, cap: 1_100 };
const noon = (date: string) => `${date}T18:00:00.000Z`;

const labour = {
  kind: 'labour' as const,
  description: 'Valve job',
  quantity: 2_000,
  unit: 'h',
  unitPrice: 8_400,
  unitCost: 3_000,
};

/** A job that was stopped: its machine is there to be collected. */
async function stoppedJob(serial: string, date: string): Promise<JobId> {
  const { desk, by } = shop;
  shop.setClock(noon(date));
  const intake = plainIntake(by);
  const { jobId } = await desk.counter.takeIn({
    ...intake,
    machine: { ...intake.machine, serial },
    promisedFor: null,
    spendingLimit: 50_000,
  });
  for (const to of ['diagnosis', 'stopped'] as const)
    await desk.counter.moveJob({ by, jobId, to, note: 'Not worth it' });
  return jobId;
}

test('storage is charged after the days without charge, billed once, and up to its cap', async () => {
  const { desk, by } = shop;
  const jobId = await stoppedJob('S-1', '2026-03-02');
  shop.setClock(noon('2026-04-05'));
  expect(await desk.till.storage({ jobId })).toMatchObject({ waited: 34, toBill: 0, line: null });
  const rules = await desk.till.rules({});
  await desk.till.setRules({ by, rules: { ...rules, storage: RULE } });
  shop.setClock(noon('2026-04-01'));
  await expect(desk.till.issueInvoice({ by, jobId, sort: 'storage' })).rejects.toMatchObject({
    code: 'NO_STORAGE',
  });
  shop.setClock(noon('2026-04-03'));
  expect(await desk.till.storage({ jobId })).toMatchObject({
    since: '2026-03-02',
    waited: 32,
    charged: 2,
    toBill: 500,
    line: { quantity: 2_000, unitPrice: 250 },
  });
  const { invoices, invoice } = await desk.till.issueInvoice({ by, jobId, sort: 'storage' });
  expect(invoices).toMatchObject([{ sort: 'storage', totals: { total: 500 } }]);
  expect(invoice).toBeNull();
  shop.setClock(noon('2026-04-04'));
  expect(await desk.till.storage({ jobId })).toMatchObject({ amount: 750, toBill: 250 });
  shop.setClock(noon('2026-05-04'));
  expect(await desk.till.storage({ jobId })).toMatchObject({
    amount: 1_100,
    toBill: 600,
    line: { quantity: 1_000, unitPrice: 600 },
  });
  expect(await desk.till.uncollected({})).toMatchObject([
    { job: { id: jobId }, storage: { waited: 63, toBill: 600 } },
  ]);
});

test('what is credited of an earlier wait is not charged with the next one', async () => {
  const { desk, by } = shop;
  const jobId = await stoppedJob('S-3', '2026-08-01');
  shop.setClock(noon('2026-09-03'));
  const [first] = (await desk.till.issueInvoice({ by, jobId, sort: 'storage' })).invoices;
  for (const to of ['diagnosis', 'stopped'] as const)
    await desk.counter.moveJob({ by, jobId, to, note: 'Looked at again' });
  if (first === undefined) throw new Error('No storage was billed.');
  const reason = 'The telephone was wrong';
  await desk.till.creditInvoice({ by, invoiceId: first.id, lines: [{ line: 0 }], reason });
  shop.setClock(noon('2026-10-05'));
  expect(await desk.till.storage({ jobId })).toMatchObject({ charged: 2, toBill: 500 });
});

test('a machine that just became ready is not told of as left behind', async () => {
  const jobId = await stoppedJob('S-2', '2026-05-05');
  shop.setClock(noon('2026-05-15'));
  const left = await shop.desk.till.uncollected({});
  expect(left.map(({ job }) => job.id)).not.toContain(jobId);
});

test('warranty work costs the customer nothing and stands with its cost on the job it goes back to', async () => {
  const { desk, by } = shop;
  const first = await stoppedJob('W-1', '2026-06-01');
  await desk.counter.handOver({
    by,
    jobId: first,
    workDone: 'Valves lapped',
    customerSignature: typed('Greta Lindqvist'),
    shopSignature: typed('Ruth Okafor'),
  });
  const { machineDetails, customerId } = await desk.counter.job({ id: first });
  const { jobId } = await desk.counter.takeIn({
    ...plainIntake(by),
    customer: { which: 'known', id: customerId },
    machine: { which: 'known', id: machineDetails.id },
    promisedFor: null,
    spendingLimit: null,
  });
  expect((await desk.till.warranty({ jobId })).earlier.map(({ id }) => id)).toEqual([first]);
  const bill = {
    by,
    jobId,
    sort: 'warranty' as const,
    lines: [labour, { ...labour, unitCost: null }],
  };
  for (const unexplained of [
    { warrantyOf: first },
    { reason: 'Valve stuck again' },
    { warrantyOf: jobId, reason: 'Valve stuck again' },
  ])
    await expect(desk.till.issueInvoice({ ...bill, ...unexplained })).rejects.toMatchObject({
      code: 'WARRANTY_UNEXPLAINED',
    });
  const { invoice, due } = await desk.till.issueInvoice({
    ...bill,
    warrantyOf: first,
    reason: 'Valve stuck again',
  });
  expect(invoice).toMatchObject({ sort: 'warranty', totals: { total: 0 } });
  expect(invoice?.lines[0]).toMatchObject({ amount: 0, discounted: 16_800, unitCost: 3_000 });
  expect(due).toBe(0);
  const { code } = await desk.counter.job({ id: first });
  const work = [{ jobId, warrantyOf: code, reason: 'Valve stuck again', cost: 6_000, unknown: 1 }];
  expect(await desk.till.warranty({ jobId: first })).toMatchObject({ work });
  expect(await desk.till.warranty({ jobId })).toMatchObject({ work });
  // It was no warranty work after all: credited whole, it is no longer told as such.
  if (invoice === null) throw new Error('No invoice was issued.');
  await desk.till.creditInvoice({
    by,
    invoiceId: invoice.id,
    lines: [{ line: 0 }, { line: 1 }],
    reason: 'The valve was bent by hand',
  });
  expect(await desk.till.warranty({ jobId: first })).toMatchObject({ work: [] });
});
