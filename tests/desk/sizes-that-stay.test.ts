import { afterAll, beforeAll, expect, test } from 'vitest';
import type { CustomerId, EngineModelId, JobId, MachineId } from '../../shared/contract/ids.ts';
import { addCorvane, openTestShop, plainIntake, type TestShop, typed } from './shop.ts';

/** An engine keeps the sizes that it was given: what was bored on one job is judged as such on the next. */
let shop: TestShop;
let engineModelId: EngineModelId;
let machineId: MachineId;
let owner: CustomerId;

beforeAll(async () => {
  shop = await openTestShop();
  const { model, manual } = await addCorvane(shop);
  engineModelId = model.id;
  await shop.desk.specbook.addSpecification({
    by: shop.by,
    engineModelId,
    feature: 'bore',
    low: '68.000',
    high: '68.020',
    wearLimit: '68.100',
    unit: 'mm',
    sourceId: manual.id,
    page: '30',
  });
});
afterAll(() => shop.close());

const LABOUR = {
  kind: 'labour' as const,
  description: 'Rebuild',
  quantity: 1000,
  unit: 'h',
  unitPrice: 8000,
};

const takenIn = async (known: boolean): Promise<JobId> => {
  const { desk, by } = shop;
  const intake = plainIntake(by);
  const { jobId } = await desk.counter.takeIn(
    known
      ? {
          ...intake,
          customer: { which: 'known', id: owner },
          machine: { which: 'known', id: machineId },
        }
      : intake,
  );
  await desk.bench.chooseEngineModel({ by, jobId, engineModelId });
  return jobId;
};

/** Which machine comes back, and whose it is. */
const remember = async (jobId: JobId) => {
  const { machineDetails, customer } = await shop.desk.counter.job({ id: jobId });
  machineId = machineDetails.id;
  owner = customer.id;
};

const boreReading = (jobId: JobId, text: string) =>
  shop.desk.bench.record({
    by: shop.by,
    jobId,
    feature: 'bore',
    place: 'c1-top-along',
    phase: 'as-received',
    text,
    unit: 'mm',
    keepAsTyped: true,
  });

const decided = (jobId: JobId) =>
  shop.desk.bench.decide({
    by: shop.by,
    jobId,
    subject: 'cylinder',
    cylinder: 1,
    choice: 'next-oversize',
    step: 0.25,
    reason: 'Scored deeper than the readings show.',
  });

const finish = async (jobId: JobId, to: 'ready' | 'stopped') => {
  const { desk, by } = shop;
  const { estimates } = await desk.till.writeEstimate({ by, jobId, lines: [LABOUR] });
  const estimate = estimates.at(-1);
  if (estimate === undefined) throw new Error('No estimate was written.');
  const approval = { how: 'telephone', approvedBy: 'Greta Lindqvist', amount: 90_000 } as const;
  await desk.till.approve({ by, jobId, estimateId: estimate.id, ...approval });
  if (to === 'ready') {
    await desk.counter.moveJob({ by, jobId, to: 'on-the-bench' });
    for (const { key } of (await desk.bench.sheet({ jobId })).holdPoints)
      await desk.bench.overrideHoldPoint({
        by,
        jobId,
        key,
        reason: 'Built elsewhere, and its papers seen.',
      });
  }
  await desk.counter.moveJob({ by, jobId, to, note: 'As told' });
  await desk.till.issueInvoice({ by, jobId });
  await desk.till.takePayment({ by, jobId, kind: 'payment', method: 'cash', amount: 8_000 });
  await desk.counter.handOver({
    by,
    jobId,
    workDone: 'As told.',
    customerSignature: typed('Greta Lindqvist'),
    shopSignature: typed('Ruth Okafor'),
  });
};

test('a bore that an earlier job took oversize is judged as such when the engine comes back', async () => {
  const { desk } = shop;
  const first = await takenIn(false);
  await remember(first);
  expect(await boreReading(first, '68.26')).toMatchObject({ verdict: 'outside' });
  await decided(first);
  await finish(first, 'ready');

  const second = await takenIn(true);
  expect(await boreReading(second, '68.26')).toMatchObject({ verdict: 'within', low: 68.25 });
  const bore = (await desk.bench.sheet({ jobId: second })).features.find(
    ({ feature }) => feature === 'bore',
  );
  expect(bore?.places[0]).toMatchObject({ came: { step: 0.25 }, decided: null, low: 68.25 });
});

const otherTakenIn = async (serial: string): Promise<JobId> => {
  const { desk, by } = shop;
  const intake = plainIntake(by);
  const { jobId } = await desk.counter.takeIn({
    ...intake,
    machine: { ...intake.machine, serial },
  });
  await desk.bench.chooseEngineModel({ by, jobId, engineModelId });
  return jobId;
};

test('a job that was stopped changed no part', async () => {
  const jobId = await otherTakenIn('FM-5 0043');
  await boreReading(jobId, '68.26');
  await decided(jobId);
  await remember(jobId);
  await finish(jobId, 'stopped');
  const again = await takenIn(true);
  expect(await boreReading(again, '68.26')).toMatchObject({ verdict: 'outside' });
});

test('a bore that was machined is held to the new size in both later phases, whatever the wear limit', async () => {
  const { desk, by } = shop;
  const jobId = await otherTakenIn('FM-5 0044');
  await desk.bench.decide({
    by,
    jobId,
    subject: 'cylinder',
    cylinder: 1,
    choice: 'next-oversize',
    step: 0.5,
    reason: 'Scored again.',
  });
  for (const phase of ['after-machining', 'final'] as const) {
    const reading = {
      by,
      jobId,
      feature: 'bore',
      place: 'c1-top-along',
      phase,
      unit: 'mm',
    } as const;
    // 0.035 mm over the new band, and inside what a worn bore may measure.
    const over = await desk.bench.record({ ...reading, text: '68.555', keepAsTyped: true });
    expect(over).toMatchObject({ verdict: 'outside', low: 68.5, high: 68.52 });
    const good = await desk.bench.record({ ...reading, place: 'c1-top-across', text: '68.510' });
    expect(good.verdict).toBe('within');
  }

  const point = async () =>
    (await desk.bench.build({ jobId })).steps.find(({ key }) => key === 'final-readings');
  expect(await point()).toMatchObject({
    state: 'open',
    missingWords: [
      'Cylinder bore: middle, along the crankshaft; middle, across the crankshaft; bottom, along the crankshaft; bottom, across the crankshaft',
    ],
  });
  const pass = () => desk.bench.passHoldPoint({ by, jobId, key: 'final-readings' });
  await expect(pass()).rejects.toMatchObject({ code: 'READINGS_MISSING' });
  for (const place of [
    'c1-middle-along',
    'c1-middle-across',
    'c1-bottom-along',
    'c1-bottom-across',
  ])
    await desk.bench.record({
      by,
      jobId,
      feature: 'bore',
      place,
      phase: 'final',
      unit: 'mm',
      text: '68.511',
    });
  await pass();
  expect(await point()).toMatchObject({ state: 'passed', missing: [] });
});

test('final readings that are owed keep a machine in the shop, or are passed over with a reason', async () => {
  const { desk, by } = shop;
  const jobId = await otherTakenIn('FM-5 0045');
  await decided(jobId);
  const matters = async () =>
    (await desk.counter.handoverMatters({ jobId })).find(({ key }) => key === 'readings-missing');
  expect(await matters()).toMatchObject({ standing: 'to-explain', items: ['Cylinder bore'] });
  await desk.bench.overrideHoldPoint({
    by,
    jobId,
    key: 'final-readings',
    reason: 'The machine shop measured it and sent its own sheet along.',
  });
  expect(await matters()).toBeUndefined();
});
