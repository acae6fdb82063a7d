import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { drawPaper } from '../../electron/paper/index.ts';
import {
  type CustomerId,
  EngineId,
  type JobId,
  type MachineId,
} from '../../shared/contract/ids.ts';
import { readPaper } from '../unit/paper/reading-back.ts';
import { openTestShop, plainIntake, type TestShop, typed } from './shop.ts';

let shop: TestShop;
let customerId: CustomerId;
let machineId: MachineId;
let engineId: EngineId;
const jobs: JobId[] = [];

const jobAt = (index: number): JobId => {
  const id = jobs[index];
  if (id === undefined) throw new Error(`no job ${index}`);
  return id;
};

const record = (jobId: JobId, place: string, text: string, more: object = {}) =>
  shop.desk.bench.record({
    by: shop.by,
    jobId,
    feature: 'bore',
    place,
    phase: 'as-received',
    text,
    unit: 'mm',
    ...more,
  });

/** The same machine comes in three times, its bore a little wider each time. */
beforeAll(async () => {
  shop = await openTestShop({ drawPaper });
  const { desk, by } = shop;
  const model = await desk.specbook.addModel({
    by,
    make: 'Corvane',
    model: 'CV 170',
    cycle: 'four-stroke',
    cylinders: 1,
    bore: 68,
    stroke: 46,
  });
  const manual = await desk.specbook.addSource({
    by,
    kind: 'makers-manual',
    title: 'CV 170 workshop manual',
  });
  await desk.specbook.addSpecification({
    by,
    engineModelId: model.id,
    feature: 'bore',
    low: '68.00',
    high: '68.02',
    wearLimit: '68.10',
    unit: 'mm',
    sourceId: manual.id,
  });
  for (const [index, [date, hours, size]] of (
    [
      ['2024-03-04T15:00:00.000Z', 120, '68.03'],
      ['2025-03-04T15:00:00.000Z', 320, '68.05'],
      ['2026-03-04T15:00:00.000Z', 520, '68.07'],
    ] as const
  ).entries()) {
    shop.setClock(date);
    const intake = plainIntake(by);
    const taken = await desk.counter.takeIn({
      ...intake,
      customer: index === 0 ? intake.customer : { which: 'known', id: customerId },
      machine: index === 0 ? intake.machine : { which: 'known', id: machineId, takeInAgain: true },
      promisedFor: null,
      engineHours: hours,
    });
    ({ customerId, machineId } = taken);
    jobs.push(taken.jobId);
    if (index === 0)
      await desk.bench.chooseEngineModel({ by, jobId: taken.jobId, engineModelId: model.id });
    await record(taken.jobId, 'c1-top-along', size);
    await record(taken.jobId, 'c1-top-across', size);
  }
  engineId = (await desk.counter.job({ id: jobAt(0) })).machineDetails.engine.id;
});
afterAll(() => shop.close());

const history = () => shop.desk.bench.engineHistory({ engineId });

describe('running hours', () => {
  test('are kept with the job, and may be unknown', async () => {
    expect(await shop.desk.counter.job({ id: jobAt(1) })).toMatchObject({ engineHours: 320 });
    const { jobId } = await shop.desk.counter.takeIn({
      ...plainIntake(shop.by),
      machine: { which: 'new', kind: 'pump', engine: {} },
    });
    expect(await shop.desk.counter.job({ id: jobId })).toMatchObject({ engineHours: null });
  });

  test('below nothing are refused', async () => {
    await expect(
      shop.desk.counter.takeIn({ ...plainIntake(shop.by), engineHours: -1 }),
    ).rejects.toMatchObject({ code: 'BAD_INPUT', data: { issues: [{ path: 'engineHours' }] } });
  });
});

describe('an engine’s life', () => {
  test('has its jobs, the latest first, and its readings over all of them, the oldest first', async () => {
    const life = await history();
    expect(life.machine.engine).toMatchObject({ id: engineId, model: 'CV 170' });
    expect(life.engineModel).toMatchObject({ model: 'CV 170' });
    expect(life.jobs.map(({ id, engineHours }) => [id, engineHours])).toEqual([
      [jobs[2], 520],
      [jobs[1], 320],
      [jobs[0], 120],
    ]);
    const bore = life.features.find(({ feature }) => feature === 'bore');
    const place = bore?.places.find(({ key }) => key === 'c1-top-along');
    expect(place).toMatchObject({ low: 68, high: 68.02, wearLimit: 68.1 });
    expect(place?.points).toMatchObject([
      { on: '2024-03-04', hours: 120, value: 68.03, text: '68.03', phase: 'as-received' },
      { on: '2025-03-04', hours: 320, value: 68.05 },
      { on: '2026-03-04', hours: 520, value: 68.07 },
    ]);
  });

  test('has what follows from the readings, too', async () => {
    const { features } = await history();
    expect(features.find(({ feature }) => feature === 'bore-out-of-round')).toMatchObject({
      places: [{ points: [{ value: 0, on: '2024-03-04' }, {}, {}] }],
    });
  });

  test('leaves out what was corrected, and features without a reading', async () => {
    const wrong = await record(jobAt(2), 'c1-middle-along', '68.09');
    await record(jobAt(2), 'c1-middle-along', '68.06', { supersedes: wrong.id });
    const { features } = await history();
    const bore = features.find(({ feature }) => feature === 'bore');
    expect(bore?.places.find(({ key }) => key === 'c1-middle-along')?.points).toMatchObject([
      { text: '68.06' },
    ]);
    expect(bore?.places.map(({ key }) => key)).not.toContain('c1-bottom-along');
    expect(features.map(({ feature }) => feature)).not.toContain('crankpin');
  });

  test('has test runs and work done', async () => {
    await shop.desk.bench.recordTestRun({
      by: shop.by,
      jobId: jobAt(0),
      findings: {
        idleSpeed: null,
        topSpeed: null,
        stopSwitch: 'works',
        interlocks: 'works',
        governor: 'works',
        fuelTight: 'works',
      },
      passed: true,
    });
    await shop.desk.counter.moveJob({ by: shop.by, jobId: jobAt(0), to: 'stopped', note: 'sold' });
    const { workOrder } = await shop.desk.counter.handOver({
      by: shop.by,
      jobId: jobAt(0),
      workDone: 'Honed',
      customerSignature: typed('Greta Lindqvist'),
      shopSignature: typed('Ruth Okafor'),
    });
    const { pdf } = await shop.desk.office.paper({ id: workOrder.id });
    const { text } = await readPaper(Uint8Array.from(Buffer.from(pdf, 'base64')));
    expect(text).toContain('Test run: passed');
    expect((await history()).jobs.at(-1)).toMatchObject({
      workDone: 'Honed',
      state: 'handed-over',
      testRuns: [{ passed: true, by: 'Ruth Okafor' }],
    });
  });

  test('of an engine that isn’t there is not found', async () => {
    await expect(
      shop.desk.bench.engineHistory({ engineId: EngineId.parse(jobAt(0)) }),
    ).rejects.toMatchObject({ code: 'NOT_FOUND', data: { what: 'engine' } });
  });
});

describe('the clearance sheet', () => {
  test('is issued with a number of its own, as often as it is asked for', async () => {
    const { desk, by } = shop;
    const ask = { by, jobId: jobAt(1) };
    const one = await desk.bench.printClearanceSheet({ ...ask, bothUnits: true });
    const two = await desk.bench.printClearanceSheet({ ...ask, bothUnits: false });
    expect([one.number, two.number]).toEqual(['K-000001', 'K-000002']);
    expect(one).toMatchObject({ kind: 'clearance-sheet', title: 'Clearance sheet K-000001' });
    expect(one.fingerprint).not.toBe(two.fingerprint);
    const { papers } = await desk.counter.job({ id: jobAt(1) });
    expect(papers.map(({ number }) => number)).toEqual(
      expect.arrayContaining(['K-000001', 'K-000002']),
    );
  });

  test('of a job without a reading is refused, and takes no number', async () => {
    const { desk, by } = shop;
    const { jobId } = await desk.counter.takeIn({
      ...plainIntake(by),
      machine: { which: 'new', kind: 'chipper', engine: {} },
    });
    const before = shop.contents();
    await expect(
      desk.bench.printClearanceSheet({ by, jobId, bothUnits: true }),
    ).rejects.toMatchObject({ code: 'NOTHING_MEASURED', defined: true });
    expect(shop.contents()).toBe(before);
  });
});
