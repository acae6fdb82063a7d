import { afterAll, beforeAll, expect, test } from 'vitest';
import type { WorkOrder } from '../../electron/paper/content.ts';
import type { PaperId } from '../../shared/contract/ids.ts';
import { openTestShop, plainIntake, type TestShop, typed } from './shop.ts';

/** A typed name says who entered it, from the claim ticket to the work order; a drawn one is a signature. */

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop();
});
afterAll(() => shop.close());

const drawn = (name: string) => ({
  name,
  strokes: [
    [
      { x: 10, y: 20 },
      { x: 30, y: 25 },
    ],
  ],
});

const recordOf = async (id: PaperId) =>
  JSON.parse((await shop.desk.office.paper({ id })).content) as WorkOrder;

/** A job up to the work order: its dossier, account and record. */
async function wholeJob(sign: typeof typed | typeof drawn, serial: string) {
  const { desk, by } = shop;
  const intake = plainIntake(by);
  const customer = 'Greta Lindqvist';
  const { jobId } = await desk.counter.takeIn({
    ...intake,
    machine: { ...intake.machine, serial },
    spendingLimit: 10_000,
    signature: sign(customer),
  });
  const { estimates } = await desk.till.writeEstimate({
    by,
    jobId,
    lines: [
      { kind: 'labour', description: 'Rebuild', quantity: 1_000, unit: 'h', unitPrice: 9_000 },
    ],
  });
  const estimateId = estimates[0]?.id;
  if (estimateId === undefined) throw new Error('No estimate was written.');
  const approved = { estimateId, how: 'in-person', approvedBy: customer, amount: 9_000 } as const;
  await desk.till.approve({ by, jobId, ...approved, signature: sign(customer) });
  await desk.counter.moveJob({ by, jobId, to: 'stopped', note: 'Not worth it' });
  await desk.till.issueInvoice({ by, jobId });
  await desk.till.takePayment({ by, jobId, kind: 'payment', method: 'cash', amount: 9_000 });
  const tess = await desk.office.addStaff({ by, name: `Tess ${serial}`, role: 'counter' });
  const { job, workOrder } = await desk.counter.handOver({
    by: tess.id,
    jobId,
    workDone: 'Taken apart and looked at.',
    customerSignature: sign(customer),
    shopSignature: drawn(tess.name),
  });
  const account = await desk.till.account({ jobId });
  return { job, account, record: await recordOf(workOrder.id) };
}

test('a typed name says who entered it, in the job and in every record', async () => {
  const { job, account, record } = await wholeJob(typed, 'TYPED-1');
  expect(job).toMatchObject({
    intakeSigned: { name: 'Greta Lindqvist', typedBy: 'Ruth Okafor' },
    handoverSigned: {
      customer: { name: 'Greta Lindqvist', typedBy: 'Tess TYPED-1' },
      shop: { name: 'Tess TYPED-1', typedBy: null },
    },
  });
  expect(account.approvals).toMatchObject([{ typedBy: 'Ruth Okafor' }]);
  expect(record.approvals.map(({ how }) => how)).toEqual([
    'At intake: typed name, entered by Ruth Okafor',
    'In person: typed name, entered by Ruth Okafor',
  ]);
  expect(record.customerSignature.typedBy).toBe('Tess TYPED-1');
  expect(record.shopSignature.typedBy).toBeNull();
  const ticket = job.papers.find(({ kind }) => kind === 'claim-ticket');
  expect(ticket && (await recordOf(ticket.id))).toMatchObject({
    signature: { name: 'Greta Lindqvist', typedBy: 'Ruth Okafor' },
  });
});

test('a drawn one is told as a signature, and nobody is named beside it', async () => {
  const { job, account, record } = await wholeJob(drawn, 'DRAWN-1');
  expect(job.intakeSigned).toMatchObject({ name: 'Greta Lindqvist', typedBy: null });
  expect(job.handoverSigned?.customer.typedBy).toBeNull();
  expect(account.approvals).toMatchObject([{ typedBy: null }]);
  expect(record.approvals.map(({ how }) => how)).toEqual(['Signed at intake', 'In person']);
});
