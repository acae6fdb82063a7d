import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { JobId } from '../../shared/contract/ids.ts';
import { openTestShop, plainIntake, type TestShop, typed } from './shop.ts';

let shop: TestShop;
let jobId: JobId;

beforeAll(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  ({ jobId } = await desk.counter.takeIn(plainIntake(by)));
  const twin = await desk.specbook.addModel({
    by,
    make: 'Corvane',
    model: 'CV 2-420',
    cycle: 'four-stroke',
    cylinders: 2,
    bore: 68,
    stroke: 58,
  });
  await desk.bench.chooseEngineModel({ by, jobId, engineModelId: twin.id });
});
afterAll(() => shop.close());

const GOOD = {
  idleSpeed: 1750,
  topSpeed: 3600,
  compression: [720, 700],
  leakDown: [
    { percent: 12, path: 'crankcase' as const },
    { percent: 15, path: 'crankcase' as const },
  ],
  stopSwitch: 'works' as const,
  interlocks: 'not-fitted' as const,
  governor: 'works' as const,
  fuelTight: 'works' as const,
  notFittedWhy: 'Built without it by its maker',
};

const run = (findings: Partial<typeof GOOD> | object, passed: boolean, job = jobId) =>
  shop.desk.bench.recordTestRun({
    by: shop.by,
    jobId: job,
    findings: { ...GOOD, ...findings },
    passed,
  });

describe('a test run', () => {
  test('knows how many cylinders there are before the first of them', async () => {
    expect(await shop.desk.bench.testRuns({ jobId })).toMatchObject({
      cylinders: 2,
      compression: null,
      closed: false,
      runs: [],
    });
  });

  test('is signed off by whoever ran it, and an earlier one stays', async () => {
    await run({ governor: 'fails', leaks: 'Oil at the breather' }, false);
    const { runs } = await run({}, true);
    expect(runs).toMatchObject([
      { passed: true, by: 'Ruth Okafor', findings: { ...GOOD, outputVolts: null, leaks: '' } },
      { passed: false, findings: { governor: 'fails', leaks: 'Oil at the breather' } },
    ]);
  });

  test.each([
    [{ stopSwitch: 'fails' }, ['Stop switch: failed']],
    [{ stopSwitch: 'not-tried' }, ['Stop switch: not tried']],
    [
      { stopSwitch: 'fails', interlocks: 'fails' },
      ['Stop switch: failed', 'Safety interlocks: failed'],
    ],
    [{ stopSwitch: 'not-fitted' }, ['Stop switch: not fitted, and a tiller must have it']],
    [{ notFittedWhy: '' }, ['Safety interlocks: not fitted: say why']],
    [{ governor: 'fails' }, ['Governor: failed']],
    [{ fuelTight: 'not-tried' }, ['Fuel system: not looked at for leaks']],
    [{ leaks: 'Fuel onto the muffler' }, ['Fuel system: “Fuel onto the muffler” was written down']],
  ])('%o can’t be passed', async (findings, because) => {
    const before = shop.contents();
    await expect(run(findings, true)).rejects.toMatchObject({
      code: 'UNSAFE_TO_PASS',
      defined: true,
      data: { because },
    });
    expect(shop.contents()).toBe(before);
  });

  test('that is unsafe can be recorded as not passed', async () => {
    const { runs } = await run({ stopSwitch: 'fails' }, false);
    expect(runs[0]).toMatchObject({
      passed: false,
      against: ['Stop switch: failed'],
      findings: { stopSwitch: 'fails' },
    });
  });

  test('has a figure for each cylinder or for none', async () => {
    await expect(run({ compression: [700] }, false)).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { issues: [{ path: 'findings.compression', message: /2 cylinders/ }] },
    });
    const { runs } = await run({ compression: [], leakDown: [] }, false);
    expect(runs[0]).toMatchObject({ findings: { compression: [], leakDown: [] } });
  });

  test.each([
    [{ idleSpeed: -1 }, 'findings.idleSpeed'],
    [{ topSpeed: 30_000 }, 'findings.topSpeed'],
    [{ compression: [700, 9000] }, 'findings.compression.1'],
    [
      { leakDown: [{ percent: 101, path: 'none' }, GOOD.leakDown[1]] },
      'findings.leakDown.0.percent',
    ],
    [{ stopSwitch: 'perhaps' }, 'findings.stopSwitch'],
  ])('%o is refused at its field', async (findings, path) => {
    await expect(run(findings, false)).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { issues: [{ path }] },
    });
  });

  test('judges the speeds by the book and the tachometer, and keeps what they were held against', async () => {
    const { desk, by } = shop;
    const { engineModel } = await desk.bench.sheet({ jobId });
    if (engineModel === null) throw new Error('No engine model was chosen.');
    const source = await desk.specbook.addSource({ by, kind: 'makers-manual', title: 'CV 2-420' });
    const known = { by, engineModelId: engineModel.id, sourceId: source.id, page: '9' };
    await desk.specbook.addSpecification({
      ...known,
      feature: 'idle-speed',
      unit: 'rpm',
      low: '1700',
      high: '1900',
    });
    const top = await desk.specbook.addSpecification({
      ...known,
      feature: 'top-speed',
      unit: '1/min',
      low: '3500',
      high: '3700',
    });
    const gauge = {
      by,
      rangeLow: 100,
      rangeHigh: 20_000,
      resolution: 10,
      maxError: 10,
      calibrationDue: '2020-01-01',
    };
    const tachometer = await desk.bench.addGauge({
      ...gauge,
      name: 'Tachometer N1',
      kind: 'tachometer',
      unit: 'rpm',
    });
    expect((await desk.bench.testRuns({ jobId })).speeds).toMatchObject([
      { feature: 'idle-speed', lowBase: 1700 },
      { feature: 'top-speed', highBase: 3700 },
    ]);
    const { runs } = await run({ topSpeed: 3695, tachometer: tachometer.id }, true);
    // √((10/2/√3)² + (10/√3)²) · 2 = 12.9: nearer to 3700 than the tachometer can tell.
    expect(runs[0]?.speeds).toMatchObject([
      { feature: 'idle-speed', value: 1750, verdict: 'within' },
      {
        feature: 'top-speed',
        verdict: 'too-close',
        low: 3500,
        high: 3700,
        specificationId: top.id,
        gauge: 'Tachometer N1',
        gaugeRemark: 'calibration was due 2020-01-01',
      },
    ]);
    // Found bad, it lists the runs that hang on it.
    const touched = await desk.bench.gaugeReadings({ gaugeId: tachometer.id });
    expect(touched.runs).toMatchObject([
      {
        jobId,
        passed: true,
        speeds: [{ label: 'Idle speed' }, { words: expect.stringContaining('too close to call') }],
      },
    ]);
    await expect(run({ topSpeed: 3900, tachometer: tachometer.id }, true)).rejects.toMatchObject({
      code: 'UNSAFE_TO_PASS',
      data: { because: [expect.stringMatching(/^Top speed, no load: 3900\srpm is outside/)] },
    });
    await expect(run({ topSpeed: null }, true)).rejects.toMatchObject({
      code: 'UNSAFE_TO_PASS',
      data: { because: ['Top speed, no load: not measured, and the spec book has it'] },
    });
    // The book moves on; the run keeps what it was held against.
    await desk.specbook.addSpecification({
      ...known,
      feature: 'top-speed',
      unit: '1/min',
      low: '3300',
      high: '3400',
    });
    expect((await desk.bench.testRuns({ jobId })).runs[0]?.speeds[1]).toMatchObject({
      high: 3700,
      verdict: 'too-close',
    });
    const leaves = await desk.bench.addGauge({
      ...gauge,
      name: 'Leaves of the run',
      kind: 'feeler-gauge',
      unit: 'mm',
    });
    await expect(run({ tachometer: leaves.id }, false)).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { issues: [{ path: 'findings.tachometer' }] },
    });
  });

  test('of a job that is closed is refused', async () => {
    const { desk, by } = shop;
    const closed = await desk.counter.takeIn({
      ...plainIntake(by),
      machine: { which: 'new', kind: 'pump', engine: {} },
    });
    await desk.counter.moveJob({ by, jobId: closed.jobId, to: 'stopped', note: 'not worth it' });
    await desk.counter.handOver({
      by,
      jobId: closed.jobId,
      workDone: 'Nothing',
      customerSignature: typed('Greta Lindqvist'),
      shopSignature: typed('Ruth Okafor'),
    });
    await expect(run({ compression: [], leakDown: [] }, false, closed.jobId)).rejects.toMatchObject(
      { code: 'JOB_CLOSED' },
    );
  });
});
