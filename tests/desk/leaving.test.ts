import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { drawPaper } from '../../electron/paper/index.ts';
import type { JobId } from '../../shared/contract/ids.ts';
import { readPaper } from '../unit/paper/reading-back.ts';
import { openTestShop, plainIntake, type TestShop, typed } from './shop.ts';

/** What a customer is told when the machine goes home, and that nobody may run one that is unsafe. */

let shop: TestShop;
let jobId: JobId;
let serial = 0;
beforeAll(async () => {
  shop = await openTestShop({ drawPaper });
});
afterAll(() => shop.close());

beforeEach(async () => {
  serial += 1;
  const intake = plainIntake(shop.by);
  ({ jobId } = await shop.desk.counter.takeIn({
    ...intake,
    machine: { ...intake.machine, serial: `LV ${serial}` },
  }));
});

const textOf = async (id: string): Promise<string> => {
  const { pdf } = await shop.desk.office.paper({ id });
  return (await readPaper(Uint8Array.from(Buffer.from(pdf, 'base64')))).text;
};
const tags = async () =>
  (await shop.desk.office.papers({ jobId })).filter(({ kind }) => kind === 'tag');
const stop = (doNotRun: boolean) =>
  shop.desk.counter.moveJob({
    by: shop.by,
    jobId,
    to: 'stopped',
    note: 'Crankcase cracked',
    doNotRun,
  });
const handOver = () =>
  shop.desk.counter.handOver({
    by: shop.by,
    jobId,
    workDone: 'Looked at',
    customerSignature: typed('Greta Lindqvist'),
    shopSignature: typed('Ruth Okafor'),
  });

describe('a machine that was stopped as unsafe', () => {
  test('has it on a new tag and on the work order, and no advice how to run it', async () => {
    const job = await stop(true);
    expect(job.doNotRun).toBe('Crankcase cracked');
    const issued = await tags();
    expect(issued).toHaveLength(2);
    const texts = await Promise.all(issued.map(({ id }) => textOf(id)));
    expect(texts.filter((text) => text.includes('DO NOT RUN: Crankcase cracked'))).toHaveLength(1);
    expect(await shop.desk.counter.leaving({ jobId })).toMatchObject({
      doNotRun: 'Crankcase cracked',
      advice: [],
    });
    const { workOrder } = await handOver();
    expect(await textOf(workOrder.id)).toContain('DO NOT RUN');
  });

  test('may be run again once work goes on, and its tag says so', async () => {
    await stop(true);
    const job = await shop.desk.counter.moveJob({ by: shop.by, jobId, to: 'diagnosis' });
    expect(job.doNotRun).toBe('');
    expect(await tags()).toHaveLength(3);
  });
});

test('one that was stopped for its price goes home without', async () => {
  await stop(false);
  expect(await tags()).toHaveLength(1);
  const { workOrder } = await handOver();
  expect(await textOf(workOrder.id)).not.toContain('DO NOT RUN');
});

test('one whose last run was unsafe is not to be run either', async () => {
  await shop.desk.bench.recordTestRun({
    by: shop.by,
    jobId,
    findings: {
      idleSpeed: null,
      topSpeed: null,
      stopSwitch: 'fails',
      interlocks: 'works',
      governor: 'works',
      fuelTight: 'works',
    },
    passed: false,
  });
  await stop(false);
  expect(await shop.desk.counter.leaving({ jobId })).toMatchObject({
    doNotRun: 'Stop switch: failed',
  });
  const { workOrder } = await handOver();
  expect(await textOf(workOrder.id)).toContain('Stop switch: failed');
});

test('a service of a two-stroke is told to mix its fuel, and not to change its oil or run it in', async () => {
  const { by, desk } = shop;
  const saw = await desk.specbook.addModel({
    by,
    make: 'Corvane',
    model: `S ${serial}`,
    cycle: 'two-stroke',
    cylinders: 1,
    fuelRatio: 50,
  });
  await desk.bench.chooseEngineModel({ by, jobId, engineModelId: saw.id });
  await desk.bench.sayWork({ by, jobId, work: 'service' });
  const { advice } = await desk.counter.leaving({ jobId });
  expect(advice.join(' ')).toContain('50:1');
  expect(advice.join(' ')).not.toMatch(/change the oil|first two hours/i);
});
