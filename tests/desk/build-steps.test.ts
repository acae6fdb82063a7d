import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { EngineModelId, JobId } from '../../shared/contract/ids.ts';
import type { BuildStep } from '../../shared/work/bench/build-steps.ts';
import { addCorvane, openTestShop, plainIntake, type TestShop } from './shop.ts';

/** A job's own steps: whence they come, what each kind asks for, and what keeps the job on the bench. */

let shop: TestShop;
let engineModelId: EngineModelId;
let jobId: JobId;
let serial = 0;
beforeAll(async () => {
  shop = await openTestShop();
  engineModelId = (await addCorvane(shop)).model.id;
});
afterAll(() => shop.close());

const step = (key: string, more: Partial<BuildStep> = {}): BuildStep => ({
  key,
  kind: 'confirm',
  label: `Step ${key}`,
  caution: '',
  hold: true,
  needs: [],
  wires: [],
  unit: '',
  grade: false,
  note: '',
  ...more,
});

const PIXEL =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

async function takenIn(model: EngineModelId | null = null): Promise<JobId> {
  serial += 1;
  const intake = plainIntake(shop.by);
  const taken = await shop.desk.counter.takeIn({
    ...intake,
    machine: {
      ...intake.machine,
      serial: `BS ${serial}`,
      engine: { make: 'Corvane', model: `CV 17${serial}`, serial: `${77_000 + serial}` },
    },
  });
  if (model !== null)
    await shop.desk.bench.chooseEngineModel({
      by: shop.by,
      jobId: taken.jobId,
      engineModelId: model,
    });
  return taken.jobId;
}

async function modelWith(
  steps: BuildStep[] | null,
  more: { cycle?: 'two-stroke'; variantOf?: EngineModelId } = {},
) {
  serial += 1;
  const model = await shop.desk.specbook.addModel({
    by: shop.by,
    make: 'Corvane',
    model: `Bench ${serial}`,
    cycle: 'four-stroke',
    cylinders: 1,
    ...more,
  });
  if (steps !== null)
    await shop.desk.bench.reviseBuildSheet({ by: shop.by, engineModelId: model.id, steps });
  return model.id;
}

const keysOf = async (id: JobId) =>
  (await shop.desk.bench.build({ jobId: id })).steps.map(({ key }) => key);
const pass = (key: string, more: { quantity?: string; grade?: string; way?: string } = {}) =>
  shop.desk.bench.passHoldPoint({ by: shop.by, jobId, key, ...more });
const stateOf = async (key: string) =>
  (await shop.desk.bench.build({ jobId })).steps.find((each) => each.key === key);

/** The customer approves of an estimate by telephone. */
async function goAhead() {
  const { by, desk } = shop;
  const { estimates } = await desk.till.writeEstimate({
    by,
    jobId,
    lines: [{ kind: 'labour', description: 'x', quantity: 1_000, unit: 'h', unitPrice: 10 }],
  });
  const last = estimates.at(-1);
  if (last === undefined) throw new Error('No estimate was written.');
  await desk.till.approve({
    by,
    jobId,
    estimateId: last.id,
    how: 'telephone',
    approvedBy: 'Greta Lindqvist',
    amount: 10,
  });
}

beforeEach(async () => {
  jobId = await takenIn(engineModelId);
});

describe('whence the steps come', () => {
  test('until somebody writes a sheet, the usual ones are shown and nothing is taken over', async () => {
    const before = shop.contents();
    const build = await shop.desk.bench.build({ jobId });
    expect(build).toMatchObject({ begun: false, origin: 'usual', closed: false });
    expect(build.steps.map(({ key }) => key)).toEqual(
      expect.arrayContaining(['rod-cap', 'head-bolts', 'as-built', 'test-run']),
    );
    expect(shop.contents()).toBe(before);
  });

  test('begun, they stay as they were when the sheet is revised; the next job has the new ones', async () => {
    const { by, desk } = shop;
    const model = await modelWith([step('first'), step('second')]);
    const older = await takenIn(model);
    expect(await desk.bench.beginBuild({ by, jobId: older })).toMatchObject({
      begun: true,
      origin: 'model',
    });
    await desk.bench.reviseBuildSheet({ by, engineModelId: model, steps: [step('third')] });
    expect(await keysOf(older)).toEqual(['first', 'second']);
    expect(await keysOf(await takenIn(model))).toEqual(['third']);
  });

  test('they are taken over when the job first goes on the bench', async () => {
    const { by, desk } = shop;
    await goAhead();
    await desk.counter.moveJob({ by, jobId, to: 'on-the-bench' });
    expect(await desk.bench.build({ jobId })).toMatchObject({ begun: true });
  });

  test('a job that has the go-ahead is on the bench once a step of it is passed', async () => {
    await goAhead();
    await pass('flywheel-key');
    const { state, moves } = await shop.desk.counter.job({ id: jobId });
    expect(state).toBe('on-the-bench');
    expect(moves.slice(-2).map(({ to }) => to)).toEqual(['go-ahead', 'on-the-bench']);
  });

  test('another engine brings its own steps, as long as nothing was done', async () => {
    const { by, desk } = shop;
    const two = await modelWith(null, { cycle: 'two-stroke' });
    await desk.bench.beginBuild({ by, jobId });
    await desk.bench.chooseEngineModel({ by, jobId, engineModelId: two });
    expect(await keysOf(jobId)).not.toContain('valve-lash');
    await desk.bench.passHoldPoint({ by, jobId, key: 'flywheel-key' });
    await desk.bench.chooseEngineModel({ by, jobId, engineModelId });
    expect(await keysOf(jobId)).toContain('fuel-mix');
  });
});

describe('the sheet', () => {
  test('two steps of one key are refused at the second', async () => {
    await expect(
      shop.desk.bench.reviseBuildSheet({
        by: shop.by,
        engineModelId,
        steps: [step('a'), step('b'), step('a')],
      }),
    ).rejects.toMatchObject({ code: 'BAD_INPUT', data: { issues: [{ path: 'steps.2.key' }] } });
  });

  test('whoever amends an old revision is told', async () => {
    const { by, desk } = shop;
    const model = await modelWith([step('a')]);
    const revise = (basedOn: number) =>
      desk.bench.reviseBuildSheet({ by, engineModelId: model, steps: [step('b')], basedOn });
    expect(await revise(1)).toMatchObject({ revision: 2, by: 'Ruth Okafor' });
    await expect(revise(1)).rejects.toMatchObject({
      code: 'SHEET_MOVED_ON',
      defined: true,
      data: { revision: 2 },
    });
  });
});

describe('what a step asks for', () => {
  test('a quantity is a number, and is kept with its unit', async () => {
    await expect(pass('oil')).rejects.toMatchObject({
      code: 'QUANTITY_WANTED',
      defined: true,
      data: { unit: 'ml' },
    });
    // So much of what: an amount without its grade says half of it.
    await expect(pass('oil', { quantity: '600' })).rejects.toMatchObject({
      code: 'GRADE_WANTED',
      defined: true,
    });
    await pass('oil', { quantity: '0600,5', grade: 'SAE 30' });
    expect(await stateOf('oil')).toMatchObject({ state: 'passed', detail: '600.5 ml, SAE 30' });
  });

  test('wires are joined as in the diagram, or the step stays open', async () => {
    const { by, desk } = shop;
    const wires = [
      { from: 'red', to: 'red' },
      { from: 'black', to: 'green' },
    ];
    jobId = await takenIn(await modelWith([step('loom', { kind: 'wiring', wires })]));
    const crossed = [
      { from: 'red', to: 'green' },
      { from: 'black', to: 'red' },
    ];
    await expect(
      desk.bench.passHoldPoint({ by, jobId, key: 'loom', wires: crossed }),
    ).rejects.toMatchObject({
      code: 'WIRES_DIFFER',
      defined: true,
      data: { wires: [{ from: 'red', to: 'red', found: 'green' }, { found: 'red' }] },
    });
    expect(await stateOf('loom')).toMatchObject({ state: 'open' });
    await desk.bench.passHoldPoint({ by, jobId, key: 'loom', wires });
    expect(await stateOf('loom')).toMatchObject({ detail: 'red to red, black to green' });
  });

  test('which way it lies is said by the sheet or by whoever laid it', async () => {
    const lie = { kind: 'orientation' as const };
    jobId = await takenIn(
      await modelWith([step('said', { ...lie, note: 'Bead up' }), step('unsaid', lie)]),
    );
    await pass('said');
    await expect(pass('unsaid')).rejects.toMatchObject({ code: 'WAY_WANTED', defined: true });
    await pass('unsaid', { way: 'Arrow to the flywheel' });
    expect(await stateOf('unsaid')).toMatchObject({ detail: 'Arrow to the flywheel' });
  });

  test('a photo of this very step', async () => {
    const { by, desk } = shop;
    await desk.bench.addPhoto({ by, jobId, subject: 'rod-cap', bytes: PIXEL });
    await expect(pass('as-built')).rejects.toMatchObject({ code: 'PHOTO_WANTED', defined: true });
    const { id } = await desk.bench.addPhoto({ by, jobId, subject: 'as-built', bytes: PIXEL });
    await pass('as-built');
    expect(await stateOf('as-built')).toMatchObject({ detail: id, hold: false });
  });

  test('a test run that was passed, after the step was last reopened', async () => {
    const { by, desk } = shop;
    const wanted = (run: string) => ({ code: 'RUN_WANTED', defined: true, data: { run } });
    const ran = (passed: boolean) =>
      desk.bench.recordTestRun({
        by,
        jobId,
        findings: {
          idleSpeed: 1750,
          topSpeed: null,
          stopSwitch: 'works',
          interlocks: 'works',
          governor: 'works',
          fuelTight: 'works',
        },
        passed,
      });
    await expect(pass('test-run')).rejects.toMatchObject(wanted('not-run'));
    await ran(true);
    await ran(false);
    await expect(pass('test-run')).rejects.toMatchObject(wanted('not-passed'));
    expect(await stateOf('test-run')).toMatchObject({ state: 'open', run: 'not-passed' });
    await ran(true);
    await pass('test-run');
    expect(await stateOf('test-run')).toMatchObject({ state: 'passed', run: 'passed' });
    await desk.bench.reopenHoldPoint({ by, jobId, key: 'test-run', reason: 'Hunts when hot' });
    await expect(pass('test-run')).rejects.toMatchObject(wanted('before-reopening'));
    // Without a run it can be walked past in writing only.
    const reason = 'Run at the customer’s, on the machine';
    await desk.bench.overrideHoldPoint({ by, jobId, key: 'test-run', reason });
    expect(await stateOf('test-run')).toMatchObject({ state: 'overridden', reason });
  });

  test('one done before another says so', async () => {
    await pass('flywheel-key');
    expect((await stateOf('flywheel-key'))?.doneBefore[0]).toMatch(/^Piston/);
    expect(await stateOf('rod-cap')).toMatchObject({ state: 'open', doneBefore: [] });
  });

  test('one that a later one undoes is open again, and says by what', async () => {
    await pass('turned-by-hand');
    const [first] = [await stateOf('turned-by-hand')];
    expect(first).toMatchObject({ state: 'passed', openedAgain: null });
    await pass('timing-marks');
    const by = (await stateOf('timing-marks'))?.label;
    expect(await stateOf('turned-by-hand')).toMatchObject({
      state: 'open',
      order: null,
      openedAgain: { by },
    });
    const sheet = await shop.desk.bench.sheet({ jobId });
    expect(sheet.holdPoints.find(({ key }) => key === 'turned-by-hand')).toMatchObject({
      state: 'open',
      openedAgain: { by },
    });
    await pass('turned-by-hand');
    const [marks, turned] = [await stateOf('timing-marks'), await stateOf('turned-by-hand')];
    expect(turned).toMatchObject({ state: 'passed', openedAgain: null });
    expect(turned?.order).toBe((marks?.order ?? 0) + 1);
    expect(turned?.seconds).toBeGreaterThanOrEqual(0);
  });

  test('an override wants a sentence', async () => {
    const { by, desk } = shop;
    const override = (reason: string) =>
      desk.bench.overrideHoldPoint({ by, jobId, key: 'wiring', reason });
    await expect(override('all fine')).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { issues: [{ path: 'reason' }] },
    });
    expect(await stateOf('wiring')).toMatchObject({ state: 'open' });
  });

  test('only steps that are held are hold points of the sheet', async () => {
    const { holdPoints } = await shop.desk.bench.sheet({ jobId });
    expect(holdPoints.map(({ key }) => key)).not.toContain('as-built');
    expect(holdPoints.at(-1)?.key).toBe('test-run');
  });
});

describe('the kind of work', () => {
  const say = (more: {
    work: 'rebuild' | 'repair' | 'service';
    touched?: ('starter' | 'head')[];
    reason?: string;
  }) => shop.desk.bench.sayWork({ by: shop.by, jobId, ...more });

  test('is held for a rebuild until somebody says it, and brings its own steps', async () => {
    expect(await shop.desk.bench.build({ jobId })).toMatchObject({ work: null, seems: null });
    expect(await keysOf(jobId)).toContain('rod-cap');
    const build = await say({ work: 'repair', touched: ['starter'] });
    expect(build).toMatchObject({ begun: true, work: 'repair', touched: ['starter'] });
    expect(build.steps.map(({ key }) => key)).toEqual(['starter', 'guards', 'test-run']);
    await say({ work: 'service' });
    expect(await keysOf(jobId)).toContain('oil');
  });

  test('of a repair says what it touches', async () => {
    await expect(say({ work: 'repair' })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { issues: [{ path: 'touched' }] },
    });
  });

  test('changes with a reason once a step is done, and what was done stays on the list', async () => {
    await say({ work: 'repair', touched: ['starter'] });
    await pass('starter');
    const before = shop.contents();
    await expect(say({ work: 'service' })).rejects.toMatchObject({
      code: 'WORK_REASON_WANTED',
      defined: true,
    });
    expect(shop.contents()).toBe(before);
    const reason = 'The customer asked for a service as well';
    const build = await say({ work: 'service', reason });
    expect(build).toMatchObject({ work: 'service', workReason: reason });
    expect(build.steps[0]).toMatchObject({ key: 'starter', state: 'passed' });
    expect(build.steps.map(({ key }) => key)).toContain('air-filter');
  });

  test('seems to be a rebuild once the inside was measured', async () => {
    const { by, desk } = shop;
    const reading = { by, jobId, unit: 'mm', phase: 'as-received' } as const;
    await desk.bench.record({
      ...reading,
      feature: 'bore',
      place: 'c1-top-along',
      text: '68.01',
    });
    expect(await desk.bench.build({ jobId })).toMatchObject({ work: null, seems: 'rebuild' });
  });
});

describe('photos', () => {
  test('come back byte for byte, known by their first bytes', async () => {
    const { by, desk } = shop;
    const card = await desk.bench.addPhoto({ by, jobId, subject: 'oil', bytes: PIXEL });
    expect(card).toMatchObject({ mediaType: 'image/png', by: 'Ruth Okafor' });
    expect(card.size).toBe(Buffer.from(PIXEL, 'base64').length);
    expect(await desk.bench.photo({ id: card.id })).toEqual({ ...card, bytes: PIXEL });
    expect(await desk.bench.photos({ jobId })).toEqual([card]);
    const heads: [string, string][] = [
      ['image/jpeg', '\xff\xd8\xff\xe0 and so on'],
      ['image/webp', 'RIFF\x10\x00\x00\x00WEBPVP8 '],
    ];
    for (const [mediaType, head] of heads) {
      const bytes = Buffer.from(head, 'latin1').toString('base64');
      expect(await desk.bench.addPhoto({ by, jobId, subject: 'oil', bytes })).toMatchObject({
        mediaType,
      });
    }
  });

  test('what is no picture, or too large, leaves nothing behind', async () => {
    const { by, desk } = shop;
    const before = shop.contents();
    const add = (bytes: string) => desk.bench.addPhoto({ by, jobId, subject: 'oil', bytes });
    for (const bytes of ['', 'PHN2Zz48L3N2Zz4=', `${PIXEL}!!`, 'R0lGODlh'])
      await expect(add(bytes)).rejects.toMatchObject({ code: 'NOT_A_PHOTO', defined: true });
    const huge = Buffer.alloc(8 * 1024 * 1024 + 1);
    huge.set([0xff, 0xd8, 0xff]);
    await expect(add(huge.toString('base64'))).rejects.toMatchObject({
      code: 'PHOTO_TOO_LARGE',
      defined: true,
    });
    expect(shop.contents()).toBe(before);
    expect((await add(huge.subarray(0, 8 * 1024 * 1024).toString('base64'))).size).toBe(
      8 * 1024 * 1024,
    );
  });
});

// Last: from here on the shop has a sheet for every engine.
test('a variant without a sheet is built by its family’s, before the shop’s', async () => {
  const { by, desk } = shop;
  const family = await modelWith([step('of-the-family')]);
  const variant = await modelWith(null, { variantOf: family });
  const plain = await modelWith(null, { cycle: 'two-stroke' });
  const shopSteps = [step('of-the-shop'), step('valve-lash')];
  await desk.bench.reviseBuildSheet({ by, engineModelId: null, steps: shopSteps });
  expect(await keysOf(await takenIn(variant))).toEqual(['of-the-family']);
  expect(await desk.bench.buildSheet({ engineModelId: variant })).toMatchObject({
    revision: 0,
    inherited: { origin: 'family', name: expect.stringContaining('Bench') },
  });
  // A sheet for every engine names the valves; a two-stroke has none.
  expect(await keysOf(await takenIn(plain))).toEqual(['of-the-shop']);
  const amended = [step('before'), step('of-the-family')];
  await desk.bench.reviseBuildSheet({ by, engineModelId: variant, steps: amended });
  expect(await keysOf(await takenIn(variant))).toEqual(['before', 'of-the-family']);
  expect(await keysOf(await takenIn(family))).toEqual(['of-the-family']);
});
