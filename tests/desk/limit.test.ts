import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { JobId, PartId } from '../../shared/contract/ids.ts';
import { addCorvane, openTestShop, plainIntake, type TestShop } from './shop.ts';

/** The approved amount is a limit: where work waits for it, what it is measured by, and how it goes on. */

let shop: TestShop;
let piston: PartId;
let plug: PartId;
let engineModelId: Awaited<ReturnType<typeof addCorvane>>['model']['id'];
beforeAll(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  const { model } = await addCorvane(shop);
  engineModelId = model.id;
  const add = async (number: string, description: string, price: number) => {
    const { id } = await desk.parts.add({ by, number, description, price });
    await desk.parts.move({ by, partId: id, kind: 'received', quantity: 50_000 });
    return id;
  };
  piston = await add('HV 25', 'Piston, standard size, CV 170', 6_000);
  plug = await add('PL 1', 'Spark plug', 500);
});
afterAll(() => shop.close());

const labour = {
  kind: 'labour' as const,
  description: 'Rebuild',
  quantity: 2_000,
  unit: 'h',
  unitPrice: 8_000,
};

let serial = 0;
let jobId: JobId;
beforeEach(async () => {
  serial += 1;
  const intake = plainIntake(shop.by);
  const taken = await shop.desk.counter.takeIn({
    ...intake,
    spendingLimit: null,
    machine: {
      ...intake.machine,
      serial: `FM-9 ${serial}`,
      engine: { ...intake.machine.engine, engineModelId },
    },
  });
  jobId = taken.jobId;
});

const approve = async (amount: number) => {
  const { estimates } = await shop.desk.till.account({ jobId });
  const latest = estimates.at(-1);
  if (latest === undefined) throw new Error('Nothing is estimated.');
  return shop.desk.till.approve({
    by: shop.by,
    jobId,
    estimateId: latest.id,
    how: 'telephone',
    approvedBy: 'Greta Lindqvist',
    amount,
  });
};

const approved = async (amount = 16_000) => {
  await shop.desk.till.writeEstimate({ by: shop.by, jobId, lines: [labour] });
  return approve(amount);
};

const decideOnPiston = () =>
  shop.desk.bench.decide({
    by: shop.by,
    jobId,
    subject: 'piston',
    cylinder: 1,
    choice: 'replace',
    reason: 'The skirt is scored.',
  });

const issue = (partId: PartId, quantity = 1_000) =>
  shop.desk.parts.move({ by: shop.by, jobId, partId, kind: 'issued', quantity });
const firstStep = async () => {
  const { steps } = await shop.desk.bench.build({ jobId });
  const step = steps.find(
    ({ kind, state, needs }) => kind === 'confirm' && state === 'open' && needs.length === 0,
  );
  return step?.key ?? '';
};
const pass = async () =>
  shop.desk.bench.passHoldPoint({ by: shop.by, jobId, key: await firstStep() });
const pull = () =>
  shop.desk.bench.pullBolt({
    by: shop.by,
    jobId,
    feature: 'head-bolt-torque',
    stage: 1,
    bolt: 1,
    outOfOrder: true,
  });
const clockOn = () =>
  shop.desk.till.clockOn({ by: shop.by, staffId: shop.by, jobId, workKind: '' });
const over = (data: object) => ({ code: 'OVER_APPROVAL', data });

describe('a decision that adds a part', () => {
  test('stops steps, torque, parts and clocks, until the customer is asked again', async () => {
    await approved();
    await pass();
    await pull();
    await decideOnPiston();
    const ahead = await shop.desk.till.billAhead({ jobId });
    expect(ahead).toMatchObject({
      approved: 16_000,
      limit: 16_000,
      stopped: true,
      estimate: { total: 16_000, approved: true },
    });
    expect(ahead.beyond).toContainEqual(
      expect.objectContaining({
        because: 'decided',
        priceToSet: false,
        line: expect.objectContaining({ partId: piston, amount: 6_000 }),
      }),
    );
    const { total } = ahead;
    expect(total).toBe(22_000);
    const refusal = over({ total, limit: 16_000, over: 6_000 });
    await expect(pass()).rejects.toMatchObject(refusal);
    await expect(pull()).rejects.toMatchObject(refusal);
    await expect(clockOn()).rejects.toMatchObject(refusal);
    await expect(issue(piston)).rejects.toMatchObject(refusal);
    // Measuring goes on: it is how one learns what to ask.
    await shop.desk.bench.record({
      by: shop.by,
      jobId,
      feature: 'coil-air-gap',
      place: 'c1-leg-1',
      phase: 'as-received',
      text: '0.3',
      unit: 'mm',
    });

    await approve(22_000);
    await issue(piston);
    await pass();
    await pull();
    const clock = await clockOn();
    await shop.desk.till.clockOff({ by: shop.by, entryId: clock.id });
  });

  test('decided before the estimate was written, it is the estimate’s to hold', async () => {
    await decideOnPiston();
    await approved();
    expect(await shop.desk.till.billAhead({ jobId })).toMatchObject({
      total: 16_000,
      stopped: false,
    });
    await pass();
  });

  test('a new revision that is not approved yet stops by its own figure', async () => {
    await approved();
    await shop.desk.till.writeEstimate({
      by: shop.by,
      jobId,
      lines: [{ ...labour, quantity: 3_000 }],
    });
    await expect(pass()).rejects.toMatchObject(over({ total: 24_000, limit: 16_000, over: 8_000 }));
    expect(await shop.desk.till.billAhead({ jobId })).toMatchObject({
      estimate: { approved: false },
      beyond: [],
    });
  });
});

describe('parts from the shelf', () => {
  test('are stopped by what they would bring the bill to, and not before', async () => {
    await approved(17_000);
    await issue(plug, 2_000);
    await expect(issue(plug)).rejects.toMatchObject(
      over({ total: 17_500, limit: 17_000, over: 500 }),
    );
    // What comes back makes room.
    await shop.desk.parts.move({
      by: shop.by,
      jobId,
      partId: plug,
      kind: 'returned',
      quantity: 1_000,
    });
    await issue(plug);
    expect(await shop.desk.till.billAhead({ jobId })).toMatchObject({ total: 17_000, over: 0 });
  });

  test('the spending limit of intake holds before any estimate', async () => {
    const intake = plainIntake(shop.by);
    const taken = await shop.desk.counter.takeIn({
      ...intake,
      spendingLimit: 700,
      machine: { ...intake.machine, serial: `FM-9 ${serial} B` },
    });
    jobId = taken.jobId;
    await issue(plug);
    await expect(issue(plug)).rejects.toMatchObject(over({ total: 1_000, limit: 700, over: 300 }));
  });

  test('where nothing was agreed, estimated or decided there is nothing to pass', async () => {
    await issue(piston);
    await pass();
    expect(await shop.desk.till.billAhead({ jobId })).toMatchObject({
      total: 6_000,
      limit: 0,
      stopped: false,
      estimate: null,
    });
  });
});

test('a part with a core is stopped by both, and put into the estimate as both', async () => {
  const { desk, by } = shop;
  const { id: starter } = await desk.parts.add({
    by,
    number: `ST ${serial}`,
    description: 'Starter motor, rebuilt',
    price: 9_000,
    coreCharge: 2_500,
  });
  await desk.parts.move({ by, partId: starter, kind: 'received', quantity: 5_000 });
  await approved(27_000);
  await expect(issue(starter)).rejects.toMatchObject(
    over({ total: 27_500, limit: 27_000, over: 500 }),
  );
  await approve(27_500);
  await issue(starter);
  const ahead = await desk.till.billAhead({ jobId });
  expect(ahead.beyond).toMatchObject([
    { because: 'issued', line: { kind: 'part', amount: 9_000 } },
    {
      because: 'issued',
      line: {
        kind: 'core-charge',
        description: `Core charge, Starter motor, rebuilt ST ${serial}`,
      },
    },
  ]);
  // Written into the estimate, with the credit for the old one, nothing is left beyond it.
  const core = {
    description: `Core charge, Starter motor, rebuilt ST ${serial}`,
    quantity: 1_000,
    unitPrice: 2_500,
  };
  const lines = [
    labour,
    { ...core, kind: 'part' as const, description: 'Starter', partId: starter, unitPrice: 9_000 },
    { ...core, kind: 'core-charge' as const },
    { ...core, kind: 'core-credit' as const, description: 'Core came back' },
  ];
  await desk.till.writeEstimate({ by, jobId, lines });
  expect(await desk.till.billAhead({ jobId })).toMatchObject({ total: 25_000, beyond: [] });
});

describe('hours before any estimate', () => {
  const inHand = async (diagnosisFee: number | null) => {
    const intake = plainIntake(shop.by);
    shop.setClock('2026-03-04T14:00:00.000Z');
    const taken = await shop.desk.counter.takeIn({
      ...intake,
      spendingLimit: 10_000,
      diagnosisFee,
      machine: { ...intake.machine, serial: `FM-9 ${serial} H${diagnosisFee}` },
    });
    jobId = taken.jobId;
    const { id } = await clockOn();
    shop.setClock('2026-03-04T17:00:00.000Z');
    const ahead = await shop.desk.till.billAhead({ jobId });
    await shop.desk.till.clockOff({ by: shop.by, entryId: id });
    return ahead;
  };

  test('count against the spending limit at the shop’s rate', async () => {
    const { desk, by } = shop;
    await desk.office.setShop({ by, ...(await desk.office.shop({})), labourRate: 6_000 });
    const { total, stopped, beyond } = await inHand(null);
    expect(stopped).toBe(true);
    expect(beyond).toMatchObject([
      { because: 'clocked', line: { unit: 'h', unitPrice: 6_000, amount: total } },
    ]);
    // Three hours, less the moments that the calls themselves took.
    expect(total).toBeGreaterThan(17_800);
    expect(total).toBeLessThanOrEqual(18_000);
  });

  test('are what the diagnosis fee pays for, where one was agreed', async () => {
    expect(await inHand(4_500)).toMatchObject({ total: 0, stopped: false, beyond: [] });
  });
});

test('clocked time counts once it passes the hours estimated, running clocks too', async () => {
  shop.setClock('2026-03-03T14:00:00.000Z');
  await approved();
  const { id } = await clockOn();
  shop.setClock('2026-03-03T17:00:00.000Z');
  const ahead = await shop.desk.till.billAhead({ jobId });
  expect(ahead.stopped).toBe(true);
  expect(ahead.beyond).toMatchObject([
    { because: 'clocked', line: { description: 'Rebuild', unit: 'h' } },
  ]);
  await expect(pass()).rejects.toMatchObject({ code: 'OVER_APPROVAL' });
  await shop.desk.till.clockOff({ by: shop.by, entryId: id });
});

describe('the tolerance of the shop', () => {
  test('lets so much pass, and the invoice and the bench keep the same limit', async () => {
    const { desk, by } = shop;
    const rules = await desk.till.rules({});
    await desk.till.setRules({
      by,
      rules: { ...rules, tolerancePpm: 100_000, toleranceCap: 1_000 },
    });
    await approved();
    await issue(plug, 2_000);
    await expect(issue(plug)).rejects.toMatchObject(over({ limit: 17_000 }));
    await desk.till.setRules({ by, rules: { ...rules, tolerancePpm: 0, toleranceCap: null } });
    await expect(pass()).rejects.toMatchObject(over({ limit: 16_000 }));
  });
});

describe('the owner', () => {
  test('lets a bill pass with a reason, until the next approval', async () => {
    const { desk, by } = shop;
    await approved();
    await decideOnPiston();
    await expect(
      desk.till.overrideLimit({ by, jobId, amount: 16_000, reason: 'Regular customer.' }),
    ).rejects.toMatchObject({ code: 'LIMIT_NOT_RAISED', data: { limit: 16_000 } });
    await expect(
      desk.till.overrideLimit({ by, jobId, amount: 22_000, reason: 'ok' }),
    ).rejects.toMatchObject({ code: 'BAD_INPUT' });
    const account = await desk.till.overrideLimit({
      by,
      jobId,
      amount: 22_000,
      reason: 'Regular customer, on a boat until Monday.',
    });
    expect(account).toMatchObject({
      approvedAmount: 16_000,
      approvedLimit: 22_000,
      overrides: [{ amount: 22_000, by: 'Ruth Okafor' }],
    });
    await pass();
    await approve(16_000);
    await expect(pass()).rejects.toMatchObject({ code: 'OVER_APPROVAL' });
  });

  test('is the only one who may', async () => {
    const { desk, by } = shop;
    const bench = await desk.office.addStaff({ by, name: `Ivo Brandt ${serial}`, role: 'bench' });
    await approved();
    await expect(
      desk.till.overrideLimit({ by: bench.id, jobId, amount: 90_000, reason: 'It will be fine.' }),
    ).rejects.toMatchObject({ code: 'OWNER_WANTED' });
  });
});

test('once the invoice is issued there is nothing left to stop', async () => {
  await approved();
  await shop.desk.till.issueInvoice({ by: shop.by, jobId });
  await decideOnPiston();
  expect(await shop.desk.till.billAhead({ jobId })).toMatchObject({
    total: 16_000,
    stopped: false,
    beyond: [],
  });
});

describe('what the diagnosis found', () => {
  const note = (kind: 'labour' | 'part', description: string) =>
    shop.desk.bench.noteFinding({
      by: shop.by,
      jobId,
      check: kind === 'labour' ? 'compression' : 'spark',
      found: 'wants-work',
      words: description,
      work: [{ kind, description }],
    });

  test('is told in what the bill is heading to, stops no work, and is unknown without a price', async () => {
    await approved(16_000);
    await note('labour', 'Reseat both valves');
    await note('part', 'Ignition coil');
    const ahead = await shop.desk.till.billAhead({ jobId });
    expect(ahead.total).toBeGreaterThan(16_000);
    expect(ahead).toMatchObject({ stopped: false, unpriced: ['Ignition coil'] });
    expect(ahead.beyond.map(({ because, line }) => [because, line.description])).toEqual([
      ['found', 'Ignition coil'],
      ['found', 'Reseat both valves'],
    ]);
    // Written into an estimate, it is found no more, but estimated.
    await shop.desk.till.writeEstimate({ by: shop.by, jobId, lines: [labour] });
    expect(await shop.desk.till.billAhead({ jobId })).toMatchObject({ beyond: [], unpriced: [] });
  });
});

test('what was decided and has no price stands in the way of the handover, billed or not', async () => {
  const { desk, by } = shop;
  await approved(100_000);
  await desk.bench.decide({
    by,
    jobId,
    subject: 'cylinder',
    cylinder: 1,
    choice: 'hone',
    reason: 'Glazed; the size is good.',
  });
  const unpriced = async () =>
    (await desk.counter.handoverMatters({ jobId })).find(({ key }) => key === 'unpriced');
  expect((await desk.till.billAhead({ jobId })).unpriced).toHaveLength(1);
  expect(await unpriced()).toMatchObject({ standing: 'to-explain', items: [expect.any(String)] });
  await desk.till.issueInvoice({ by, jobId });
  expect(await unpriced()).toMatchObject({ standing: 'to-explain' });
});
