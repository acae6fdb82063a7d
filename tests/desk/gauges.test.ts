import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { GaugeId, JobId } from '../../shared/contract/ids.ts';
import { addCorvane, openTestShop, plainIntake, type TestShop } from './shop.ts';

let shop: TestShop;
let jobId: JobId;
let leaf: GaugeId;

beforeAll(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  const { model } = await addCorvane(shop);
  ({ jobId } = await desk.counter.takeIn(plainIntake(by)));
  await desk.bench.chooseEngineModel({ by, jobId, engineModelId: model.id });
  leaf = (
    await desk.bench.addGauge({
      by,
      name: 'Leaves, set 2',
      kind: 'feeler-gauge',
      unit: 'mm',
      rangeLow: 0.05,
      rangeHigh: 1,
      resolution: 0.01,
      maxError: 0.005,
      calibratedOn: '2026-03-01',
      calibrationDue: '2026-12-31',
      certificate: 'C 1',
    })
  ).id;
});
afterAll(() => shop.close());

const read = (text: string, place = 'c1-leg-1') =>
  shop.desk.bench.record({
    by: shop.by,
    jobId,
    feature: 'coil-air-gap',
    place,
    phase: 'final',
    text,
    unit: 'mm',
    gaugeId: leaf,
  });

const check = (on: string, good: boolean, more: object = {}) =>
  shop.desk.bench.checkGauge({
    by: shop.by,
    gaugeId: leaf,
    on,
    good,
    note: good ? '' : 'The 0.30 leaf is worn hollow',
    ...more,
  });

describe('a gauge', () => {
  test('has the register’s calibration until it is checked', async () => {
    expect(await shop.desk.bench.gauge({ gaugeId: leaf })).toMatchObject({
      gauge: { certificate: 'C 1', calibratedOn: '2026-03-01', foundBadOn: null },
      checks: [],
    });
  });

  test('takes its calibration from a good check', async () => {
    shop.setClock('2026-03-10T15:00:00.000Z');
    const { gauge, checks } = await check('2026-03-10', true, {
      certificate: 'C 2',
      dueOn: '2027-03-10',
    });
    expect(gauge).toMatchObject({
      calibratedOn: '2026-03-10',
      calibrationDue: '2027-03-10',
      certificate: 'C 2',
      expired: false,
    });
    expect(checks).toMatchObject([{ on: '2026-03-10', good: true, by: 'Ruth Okafor' }]);
  });

  test('found bad goes out of use, and lists what it touched since its last good check', async () => {
    shop.setClock('2026-03-05T15:00:00.000Z');
    await read('0.29');
    shop.setClock('2026-03-12T15:00:00.000Z');
    const inDoubt = await read('0.3');
    expect(inDoubt.gaugeRemark).toBe('');

    shop.setClock('2026-03-15T15:00:00.000Z');
    const { gauge } = await check('2026-03-15', false);
    expect(gauge.foundBadOn).toBe('2026-03-15');
    // The register keeps the calibration of the last good check: a bad one is none.
    expect(gauge.certificate).toBe('C 2');

    const touched = await shop.desk.bench.gaugeReadings({ gaugeId: leaf });
    expect(touched).toMatchObject({ since: '2026-03-10', badOn: '2026-03-15', until: null });
    expect(touched.readings).toMatchObject([
      { id: inDoubt.id, featureLabel: 'Coil air gap', jobId, handedOver: false },
    ]);
    expect(touched.readings[0]?.jobCode).toMatch(/^J\d{6}$/);
  });

  test('said of every reading that it touched, and of each that is taken all the same', async () => {
    const after = await read('0.31', 'c1-leg-2');
    expect(after.gaugeRemark).toBe('gauge was found bad on 2026-03-15');
    const { features } = await shop.desk.bench.sheet({ jobId });
    const gap = features.find(({ feature }) => feature === 'coil-air-gap');
    const remarks = (gap?.places ?? []).map(({ readings }) =>
      readings.map(({ text, gaugeRemark }) => [text, gaugeRemark]),
    );
    expect(remarks).toEqual([
      [
        ['0.29', ''],
        ['0.3', 'gauge found bad on 2026-03-15: in doubt'],
      ],
      [['0.31', 'gauge was found bad on 2026-03-15']],
    ]);
  });

  test('is in use again after a good check; what it touched meanwhile stays listed', async () => {
    shop.setClock('2026-03-20T15:00:00.000Z');
    expect((await check('2026-03-20', true)).gauge.foundBadOn).toBeNull();
    shop.setClock('2026-03-21T15:00:00.000Z');
    expect((await read('0.3')).gaugeRemark).toBe('');
    const { until, readings } = await shop.desk.bench.gaugeReadings({ gaugeId: leaf });
    expect(until).toBe('2026-03-20');
    expect(readings.map(({ text }) => text)).toEqual(['0.31', '0.3']);
  });

  test.each([
    ['a check of tomorrow', '2026-03-30', true, {}, 'on'],
    ['a due day before it', '2026-03-20', true, { dueOn: '2026-03-01' }, 'dueOn'],
    ['a bad one without a word', '2026-03-20', false, { note: '' }, 'note'],
    ['a bad one with a next date', '2026-03-20', false, { dueOn: '2027-03-20' }, 'dueOn'],
  ])('%s is refused', async (_what, on, good, more, path) => {
    const before = shop.contents();
    await expect(check(on, good, more)).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { issues: [{ path }] },
    });
    expect(shop.contents()).toBe(before);
  });
});
