import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { JobId } from '../../shared/contract/ids.ts';
import { addCorvane, openTestShop, plainIntake, type TestShop } from './shop.ts';

let shop: TestShop;
let jobId: JobId;
let leaf: Awaited<ReturnType<TestShop['desk']['bench']['addGauge']>>;
let wrench: typeof leaf;

beforeAll(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  const { model } = await addCorvane(shop);
  ({ jobId } = await desk.counter.takeIn(plainIntake(by)));
  await desk.bench.chooseEngineModel({ by, jobId, engineModelId: model.id });
  leaf = await desk.bench.addGauge({
    by,
    name: 'Leaves, set 1',
    kind: 'feeler-gauge',
    unit: 'mm',
    rangeLow: 0.05,
    rangeHigh: 1,
    resolution: 0.01,
    maxError: 0.005,
    calibrationDue: '2026-01-31',
  });
  wrench = await desk.bench.addGauge({
    by,
    name: 'Click wrench',
    kind: 'torque-wrench',
    unit: 'N·m',
    rangeLow: 5,
    rangeHigh: 50,
    resolution: 0.5,
    maxError: 1,
  });
});
afterAll(() => shop.close());

const record = (text: string, more: object = {}) =>
  shop.desk.bench.record({
    by: shop.by,
    jobId,
    feature: 'coil-air-gap',
    place: 'c1-leg-1',
    phase: 'final',
    text,
    unit: 'mm',
    gaugeId: leaf.id,
    ...more,
  });

const airGapAt = async (place: string) => {
  const { features } = await shop.desk.bench.sheet({ jobId });
  const feature = features.find((each) => each.feature === 'coil-air-gap');
  return feature?.places.find(({ key }) => key === place)?.readings ?? [];
};

describe('a slip of ten', () => {
  test('is named with the likely value, and nothing is kept', async () => {
    const before = shop.contents();
    await expect(record('0.03')).rejects.toMatchObject({
      code: 'READING_QUESTIONED',
      defined: true,
      data: { kind: 'decimal', likely: 0.3, unit: 'mm' },
    });
    expect(shop.contents()).toBe(before);
  });

  test('is kept as typed when the mechanic says so, and says so ever after', async () => {
    expect(await record('0.03', { keepAsTyped: true, place: 'c1-leg-2' })).toMatchObject({
      text: '0.03',
      value: 0.03,
      verdict: 'outside',
      questioned: { kind: 'decimal', likely: 0.3 },
    });
  });
});

describe('a reading', () => {
  test('is kept as typed beside its value in the base unit, in whichever unit it came', async () => {
    expect(await record('.012"')).toMatchObject({
      text: '.012"',
      unit: 'in',
      value: 0.012,
      valueBase: 0.3048,
      verdict: 'within',
    });
  });

  test('says of its gauge what the paper has to say', async () => {
    expect((await record('0.3')).gaugeRemark).toBe('calibration was due 2026-01-31');
    expect(
      (await record('1.5', { feature: 'plug-gap', place: 'c1-only', keepAsTyped: true }))
        .gaugeRemark,
    ).toContain('outside the gauge’s range');
  });

  test('too near a limit for its gauge is too close to call', async () => {
    expect(await record('0.395')).toMatchObject({ verdict: 'too-close' });
  });

  test('a torque stage is held against its share of the final figure', async () => {
    const stage = (place: string, text: string) =>
      record(text, {
        feature: 'head-bolt-torque',
        place,
        unit: 'lbf·ft',
        gaugeId: wrench.id,
        keepAsTyped: true,
      });
    expect(await stage('c1-stage-1', '8.5')).toMatchObject({ low: expect.closeTo(10.85, 2) });
    expect(await stage('c1-stage-2', '17')).toMatchObject({ low: expect.closeTo(21.69, 2) });
  });

  test('inch-pounds typed for foot-pounds are questioned', async () => {
    await expect(
      record('204', {
        feature: 'head-bolt-torque',
        place: 'c1-stage-2',
        unit: 'lbf·ft',
        gaugeId: wrench.id,
      }),
    ).rejects.toMatchObject({
      code: 'READING_QUESTIONED',
      data: { kind: 'foot-inch', likely: 17, unit: 'lbf·ft' },
    });
  });

  test.each(['wide', '', '0.3.1', '17 lbf·ft', '--'])('‘%s’ is no air gap', async (text) => {
    await expect(record(text)).rejects.toMatchObject({
      code: expect.stringMatching(/^(READING_UNREADABLE|BAD_INPUT)$/),
      defined: true,
    });
  });

  test.each(['0', '-68.2'])(
    'a bore of %s mm is refused, and the sheet is still to be read',
    async (text) => {
      await expect(
        record(text, { feature: 'bore', place: 'c1-top-along', gaugeId: null, keepAsTyped: true }),
      ).rejects.toMatchObject({ code: 'READING_UNREADABLE', defined: true });
      expect((await shop.desk.bench.sheet({ jobId })).closed).toBe(false);
    },
  );

  test('by a gauge that measures something else is refused', async () => {
    await expect(record('0.3', { gaugeId: wrench.id })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { issues: [{ path: 'gaugeId' }] },
    });
  });

  test('of a place that the engine doesn’t have is refused', async () => {
    await expect(record('0.3', { place: 'c1-leg-3' })).rejects.toMatchObject({
      code: 'PLACE_UNKNOWN',
      data: { places: ['c1-leg-1', 'c1-leg-2'] },
    });
  });
});

describe('a correction', () => {
  test('supersedes and never edits; the old one can’t be corrected again', async () => {
    const first = await record('0.21');
    const second = await record('0.29', { supersedes: first.id });
    const standing = await airGapAt('c1-leg-1');
    expect(standing.find(({ id }) => id === first.id)).toMatchObject({
      text: '0.21',
      superseded: true,
    });
    expect(second).toMatchObject({ supersedes: first.id, superseded: false });
    await expect(record('0.3', { supersedes: first.id })).rejects.toMatchObject({
      code: 'SUPERSEDED_ALREADY',
    });
  });

  test('is of the same place', async () => {
    const first = await record('0.25');
    await expect(record('0.26', { supersedes: first.id, place: 'c1-leg-2' })).rejects.toMatchObject(
      { code: 'BAD_INPUT', data: { issues: [{ path: 'supersedes' }] } },
    );
  });
});

describe('derived values', () => {
  test('taper, out-of-round and clearance follow from the bore and the piston', async () => {
    const micrometer = await shop.desk.bench.addGauge({
      by: shop.by,
      name: 'Bore gauge',
      kind: 'bore-gauge',
      unit: 'mm',
      rangeLow: 50,
      rangeHigh: 100,
      resolution: 0.001,
      maxError: 0.004,
    });
    const bore = {
      'c1-top-along': '68.030',
      'c1-top-across': '68.041',
      'c1-middle-along': '68.020',
      'c1-middle-across': '68.024',
      'c1-bottom-along': '68.012',
      'c1-bottom-across': '68.013',
    };
    for (const [place, text] of Object.entries(bore))
      await record(text, { feature: 'bore', place, gaugeId: micrometer.id });
    await record('67.952', {
      feature: 'piston-skirt',
      place: 'c1-only',
      gaugeId: micrometer.id,
    });
    const { derived } = await shop.desk.bench.sheet({ jobId });
    const value = (feature: string) => derived.find((each) => each.feature === feature)?.value;
    expect(value('bore-taper')).toBeCloseTo(0.028, 6);
    expect(value('bore-out-of-round')).toBeCloseTo(0.011, 6);
    expect(value('piston-clearance')).toBeCloseTo(0.06, 6);
  });
});

test('a new revision of a specification leaves the verdicts of yesterday alone', async () => {
  const { desk, by } = shop;
  const { features } = await desk.bench.sheet({ jobId });
  const old = features.find(({ feature }) => feature === 'coil-air-gap')?.specification;
  if (old === null || old === undefined) throw new Error('There is no specification.');
  const before = await record('0.3', { place: 'c1-leg-2' });
  const revised = await desk.specbook.addSpecification({
    by,
    engineModelId: old.engineModelId,
    feature: 'coil-air-gap',
    low: '0.15',
    high: '0.25',
    unit: 'mm',
    sourceId: old.source.id,
    page: '7',
  });
  expect(revised).toMatchObject({ revision: 2 });
  const kept = (await airGapAt('c1-leg-2')).find(({ id }) => id === before.id);
  expect(kept).toMatchObject({ verdict: 'within', specificationId: old.id, high: 0.4 });
});
