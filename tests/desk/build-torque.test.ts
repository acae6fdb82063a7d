import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import type { GaugeId, JobId } from '../../shared/contract/ids.ts';
import { addCorvane, openTestShop, plainIntake, type TestShop } from './shop.ts';

/** Four bolts in a ring, 17 lbf·ft in two stages, with a wrench in N·m that shows every half. */

let shop: TestShop;
let wrench: GaugeId;
let jobId: JobId;
let serial = 0;
beforeAll(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  await addCorvane(shop);
  const added = await desk.bench.addGauge({
    by,
    name: 'Wrench 5–50',
    kind: 'torque-wrench',
    unit: 'N·m',
    rangeLow: 5,
    rangeHigh: 50,
    resolution: 0.5,
    maxError: 1,
  });
  wrench = added.id;
});
afterAll(() => shop.close());

beforeEach(async () => {
  serial += 1;
  const { desk, by } = shop;
  const intake = plainIntake(by);
  const taken = await desk.counter.takeIn({
    ...intake,
    machine: {
      ...intake.machine,
      serial: `BT ${serial}`,
      engine: { make: 'Corvane', model: `CV-T ${serial}`, serial: `T${serial}` },
    },
  });
  jobId = taken.jobId;
  const [model] = await desk.specbook.models({ text: 'CV 170' });
  if (model === undefined) throw new Error('The spec book has no such engine.');
  await desk.bench.chooseEngineModel({ by, jobId, engineModelId: model.id });
});

const feature = 'head-bolt-torque' as const;
const walk = () => shop.desk.bench.torqueWalk({ jobId, feature });
const pull = (stage: number, bolt: number, more: object = {}) =>
  shop.desk.bench.pullBolt({ by: shop.by, jobId, feature, stage, bolt, gaugeId: wrench, ...more });

async function pullInOrder(most: number) {
  for (let done = 0; done < most; done += 1) {
    const { next } = await walk();
    if (next === null) return;
    await pull(next.stage, next.bolt);
  }
}

const readings = async () =>
  (await shop.desk.bench.sheet({ jobId })).features
    .filter((each) => each.feature === feature)
    .flatMap(({ places }) => places.map((place) => place.readings));

test('the walk says which bolt, to what, and goes on where it was interrupted', async () => {
  expect(await walk()).toMatchObject({
    order: [1, 3, 2, 4],
    unit: 'lbf·ft',
    stages: [{ target: 8.5 }, { target: 17 }],
    next: { stage: 1, bolt: 1 },
    round: 1,
    of: 8,
  });
  await pullInOrder(5);
  expect(await walk()).toMatchObject({
    pulled: [[1, 3, 2, 4], [1]],
    next: { stage: 2, bolt: 3 },
    done: 5,
  });
});

test('the wrench’s setting is in its own unit, on a mark of its scale, for the extension in use', async () => {
  const { pulls } = await pull(1, 1);
  // 8.5 lbf·ft = 11.52 N·m.
  expect(pulls[0]).toMatchObject({ setting: 11.5, settingUnit: 'N·m', wrench: 'Wrench 5–50' });
  const longer = await pull(1, 3, { extension: 60, wrenchLength: 240 });
  // 11.52 · 240 / 300 = 9.22.
  expect(longer.pulls[1]).toMatchObject({ setting: 9, extension: 60, angle: 0 });
  const square = await pull(1, 2, { extension: 60, angle: 90, wrenchLength: 240 });
  expect(square.pulls[2]).toMatchObject({ setting: 11.5, angle: 90 });
});

test('a wrench’s length is in the register, proposed with an extension, and kept with the pull', async () => {
  const { desk, by } = shop;
  const facts = {
    by,
    unit: 'N·m',
    rangeLow: 5,
    rangeHigh: 50,
    resolution: 0.5,
    maxError: 1,
  } as const;
  const name = `Measured ${serial}`;
  const own = await desk.bench.addGauge({ ...facts, name, kind: 'torque-wrench', length: 240 });
  expect(own.length).toBe(240);
  const first = await pull(1, 1, { gaugeId: own.id, extension: 60 });
  expect(first.pulls[0]).toMatchObject({ setting: 9, wrenchLength: 240 });
  // Measured anew: what was pulled before keeps the length that it was worked out with.
  const { gauge } = await desk.bench.measureWrench({ by, gaugeId: own.id, length: 340 });
  expect(gauge.length).toBe(340);
  // 11.52 · 340 / 400 = 9.8.
  const second = await pull(1, 3, { gaugeId: own.id, extension: 60 });
  expect(second.pulls).toMatchObject([{ wrenchLength: 240 }, { setting: 10, wrenchLength: 340 }]);
  // Somebody grips it elsewhere; without an extension the length plays no part.
  const held = await pull(1, 2, { gaugeId: own.id, extension: 60, wrenchLength: 240 });
  expect(held.pulls[2]).toMatchObject({ setting: 9, wrenchLength: 240 });
  expect((await pull(1, 4, { gaugeId: own.id })).pulls[3]).toMatchObject({ wrenchLength: null });

  const leaf = { ...facts, name: `Leaf ${serial}`, kind: 'feeler-gauge', unit: 'mm' } as const;
  await expect(desk.bench.addGauge({ ...leaf, length: 100 })).rejects.toMatchObject({
    code: 'BAD_INPUT',
    data: { issues: [{ path: 'length' }] },
  });
  const { id } = await desk.bench.addGauge(leaf);
  await expect(desk.bench.measureWrench({ by, gaugeId: id, length: 100 })).rejects.toMatchObject({
    data: { issues: [{ path: 'gaugeId' }] },
  });
});

test('an extension without the wrench’s length, or folded back too far, gives no setting', async () => {
  const before = shop.contents();
  for (const more of [{ extension: 60 }, { extension: 300, angle: 180, wrenchLength: 240 }])
    await expect(pull(1, 1, more)).rejects.toMatchObject({ code: 'NO_LEVER', defined: true });
  expect(shop.contents()).toBe(before);
});

test('a bolt out of its order is refused, unless it is said to be, and then it is kept as such', async () => {
  await expect(pull(1, 2)).rejects.toMatchObject({
    code: 'OUT_OF_ORDER',
    defined: true,
    data: { stage: 1, bolt: 1 },
  });
  const after = await pull(1, 2, { outOfOrder: true });
  expect(after.pulls).toMatchObject([{ bolt: 2, outOfOrder: true }]);
  expect(after.next).toEqual({ stage: 1, bolt: 1 });
  for (const [stage, bolt] of [
    [3, 1],
    [1, 5],
  ] as const)
    await expect(pull(stage, bolt)).rejects.toMatchObject({ code: 'NO_SUCH_BOLT', defined: true });
});

test('a whole stage is a reading by the wrench, and the step can then be passed', async () => {
  const { desk, by } = shop;
  await pullInOrder(3);
  expect(await readings()).toEqual([[], []]);
  await pullInOrder(1);
  expect(await readings()).toMatchObject([
    [{ text: '11.5', unit: 'N·m', phase: 'final', gauge: { name: 'Wrench 5–50' } }],
    [],
  ]);
  // The first stage is a reading already; it does not pass for the whole.
  await expect(desk.bench.passHoldPoint({ by, jobId, key: 'head-bolts' })).rejects.toMatchObject({
    code: 'TIGHTENING_UNFINISHED',
    defined: true,
  });
  await pullInOrder(4);
  const [, last] = await readings();
  // 17 lbf·ft = 23.05 N·m, band 16 to 18; the wrench is good to 1.19 N·m.
  expect(last).toMatchObject([{ text: '23', verdict: 'within' }]);
  expect(await walk()).toMatchObject({ next: null, done: 8 });
  await desk.bench.passHoldPoint({ by, jobId, key: 'head-bolts' });
  await expect(pull(1, 1)).rejects.toMatchObject({ code: 'OUT_OF_ORDER', data: null });
});

test('with an extension the reading is the torque at the bolt, not the figure on the wrench', async () => {
  for (const bolt of [1, 3, 2, 4]) await pull(1, bolt, { extension: 60, wrenchLength: 240 });
  // 9 N·m set · 300 / 240.
  expect((await readings())[0]).toMatchObject([{ text: '11.25', unit: 'N·m' }]);
});

test('begun anew it starts from the first bolt; its readings supersede, none is lost', async () => {
  const { desk, by } = shop;
  await pullInOrder(6);
  const anew = await desk.bench.beginTorqueAnew({ by, jobId, feature });
  expect(anew).toMatchObject({ round: 2, done: 0, next: { stage: 1, bolt: 1 } });
  expect(anew.pulls).toHaveLength(6);
  await pullInOrder(8);
  expect((await walk()).pulls).toHaveLength(14);
  const [first, second] = await readings();
  expect(first).toMatchObject([{ superseded: true }, { superseded: false }]);
  expect(second).toMatchObject([{ superseded: false }]);
});

test('rod bolts in stages are walked as head bolts are, and each stage is a reading', async () => {
  const { desk, by } = shop;
  const { engineModel } = await desk.bench.sheet({ jobId });
  if (engineModel === null) throw new Error('No engine model was chosen.');
  const source = await desk.specbook.addSource({ by, kind: 'makers-manual', title: 'Rods' });
  const rods = {
    by,
    engineModelId: engineModel.id,
    feature: 'rod-bolt-torque',
    low: '11',
    high: '13',
    aim: '12',
    unit: 'N·m',
    sourceId: source.id,
    page: '5',
  } as const;
  // Before the book knows how it is done, the final torque is typed in.
  await desk.specbook.addSpecification(rods);
  const typed = await desk.bench.record({
    by,
    jobId,
    feature: 'rod-bolt-torque',
    place: 'c1-only',
    phase: 'final',
    text: '12',
    unit: 'N·m',
  });
  await desk.specbook.addSpecification({
    ...rods,
    fastener: {
      designation: '1/4-28 UNF',
      diameter: 6.35,
      pitch: 0.9071,
      propertyClass: 'grade 8',
      count: 2,
      pattern: 'in-line',
      stages: [0.5, 0.75, 1],
    },
  });
  // The thread is called what the source calls it, and never M6.35 × 0.9071.
  expect(await desk.bench.torqueWalk({ jobId, feature: 'rod-bolt-torque' })).toMatchObject({
    thread: '1/4-28 UNF, grade 8',
    count: 2,
  });
  for (const [stage, bolts] of [
    [1, 2],
    [2, 2],
    [3, 2],
  ] as const)
    for (let turn = 0; turn < bolts; turn += 1) {
      const { next } = await desk.bench.torqueWalk({ jobId, feature: 'rod-bolt-torque' });
      expect(next?.stage).toBe(stage);
      await pull(stage, next?.bolt ?? 0, { feature: 'rod-bolt-torque' });
    }
  const places = (await desk.bench.sheet({ jobId })).features.find(
    (each) => each.feature === 'rod-bolt-torque',
  )?.places;
  expect(places).toMatchObject([
    { label: 'stage 1 of 3', low: 5.5, readings: [{ text: '6', verdict: 'too-close' }] },
    { label: 'stage 2 of 3', readings: [{ text: '9' }] },
    {
      label: 'stage 3 of 3',
      // What was typed before is corrected by the walk and not lost.
      readings: [
        { id: typed.id, superseded: true },
        { text: '12', superseded: false },
      ],
    },
  ]);
});

test('a reading stays on the sheet when the book no longer has its place', async () => {
  const { desk, by } = shop;
  await pullInOrder(8);
  const { engineModel, features } = await desk.bench.sheet({ jobId });
  const held = features.find((each) => each.feature === feature)?.specification;
  if (!held || engineModel === null) throw new Error('The book has no head bolts.');
  const { low, high, aim, unit, source, page, fastener } = held;
  const revise = (stages: number[]) =>
    desk.specbook.addSpecification({
      by,
      engineModelId: engineModel.id,
      feature,
      low,
      high,
      aim,
      unit,
      page,
      sourceId: source.id,
      fastener: fastener && { ...fastener, stages },
    });
  await revise([1]);
  const places = (await desk.bench.sheet({ jobId })).features.find(
    (each) => each.feature === feature,
  )?.places;
  // The final torque was stage 2 then: it is shown as that, by the share that it was held against.
  expect(places).toMatchObject([
    { label: 'stage 1 of 1', share: 1, readings: [{ text: '11.5' }] },
    { label: 'stage 2 of 2, as it was then', share: 1, readings: [{ text: '23' }] },
  ]);
  await revise([0.5, 1]);
});

test('without a pattern in the book nothing is walked', async () => {
  for (const call of [
    shop.desk.bench.torqueWalk({ jobId, feature: 'plug-gap' }),
    shop.desk.bench.torqueWalk({ jobId, feature, cylinder: 2 }),
  ])
    await expect(call).rejects.toMatchObject({ code: 'TORQUE_UNKNOWN', defined: true });
});

test('a gauge that is no wrench is refused', async () => {
  const { desk, by } = shop;
  const leaf = await desk.bench.addGauge({
    by,
    name: `Leaf ${serial}`,
    kind: 'feeler-gauge',
    unit: 'mm',
    rangeLow: 0,
    rangeHigh: 1,
    resolution: 0.05,
    maxError: 0.01,
  });
  await expect(pull(1, 1, { gaugeId: leaf.id })).rejects.toMatchObject({
    code: 'BAD_INPUT',
    data: { issues: [{ path: 'gaugeId' }] },
  });
});
