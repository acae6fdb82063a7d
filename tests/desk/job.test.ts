import { createHash } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { drawPaper } from '../../electron/paper/index.ts';
import type { EstimateId, JobId } from '../../shared/contract/ids.ts';
import { addCorvane, openTestShop, plainIntake, type TestShop, typed } from './shop.ts';

/** One job from the counter to the signed work order, and everything that keeps it from cutting corners. */

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop({ drawPaper });
});
afterAll(() => shop.close());

const labour = (unitPrice: number) => ({
  kind: 'labour' as const,
  description: 'Rebuild',
  quantity: 1_500,
  unit: 'h',
  unitPrice,
});

let serial = 0;
let jobId: JobId;
beforeEach(async () => {
  serial += 1;
  const intake = plainIntake(shop.by);
  const taken = await shop.desk.counter.takeIn({
    ...intake,
    machine: { ...intake.machine, serial: `FM-5 ${serial}` },
  });
  jobId = taken.jobId;
});

const estimated = async (unitPrice = 8_000): Promise<EstimateId> => {
  const { estimates } = await shop.desk.till.writeEstimate({
    by: shop.by,
    jobId,
    lines: [labour(unitPrice)],
  });
  const last = estimates.at(-1);
  if (last === undefined) throw new Error('No estimate was written.');
  return last.id;
};

const approved = async (amount: number, unitPrice?: number) =>
  shop.desk.till.approve({
    by: shop.by,
    jobId,
    estimateId: await estimated(unitPrice),
    how: 'telephone',
    approvedBy: 'Greta Lindqvist',
    amount,
  });

const overrideEverything = async () => {
  const { holdPoints } = await shop.desk.bench.sheet({ jobId });
  for (const { key } of holdPoints)
    await shop.desk.bench.overrideHoldPoint({
      by: shop.by,
      jobId,
      key,
      reason: 'Only the carburettor was off',
    });
};

const readyAndPaid = async () => {
  const { desk, by } = shop;
  await approved(12_000);
  await desk.counter.moveJob({ by, jobId, to: 'on-the-bench' });
  await overrideEverything();
  await desk.counter.moveJob({ by, jobId, to: 'ready' });
  await desk.till.issueInvoice({ by, jobId });
  await desk.till.takePayment({ by, jobId, kind: 'payment', method: 'cash', amount: 12_000 });
};

const handOver = () =>
  shop.desk.counter.handOver({
    by: shop.by,
    jobId,
    workDone: 'New rings, valves ground in.',
    customerSignature: typed('Greta Lindqvist'),
    shopSignature: typed('Ruth Okafor'),
  });

describe('intake', () => {
  test('makes customer, machine, job and both papers in one', async () => {
    const job = await shop.desk.counter.job({ id: jobId });
    expect(job).toMatchObject({
      state: 'taken-in',
      waitsOn: 'bench',
      machine: 'Tiller Furrowmaster F5',
      customer: { name: 'Greta Lindqvist', phoneInternational: '+13125550142' },
      papers: [{ kind: 'claim-ticket' }, { kind: 'tag' }],
    });
  });

  test('a list of open jobs has the late ones at the head, the others by their number', async () => {
    const { desk, by } = shop;
    const takeIn = async (name: string, promisedFor: string | null) => {
      serial += 1;
      const intake = plainIntake(by);
      const machine = { ...intake.machine, serial: `FM-5 ${serial}` };
      const customer = { which: 'new' as const, name: `Late ${name}` };
      return (await desk.counter.takeIn({ ...intake, customer, machine, promisedFor })).jobId;
    };
    const [late, later, none] = [
      await takeIn('A', '2026-03-20'),
      await takeIn('B', '2026-03-10'),
      await takeIn('C', null),
    ];
    const listed = async () =>
      (await desk.counter.jobs({ text: 'late', states: ['taken-in'] })).map(({ id }) => id);
    expect(await listed()).toEqual([none, later, late]);
    shop.setClock('2026-03-21T15:00:00.000Z');
    expect(await listed()).toEqual([later, late, none]);
    expect((await desk.counter.jobs({ text: 'late' })).map(({ id }) => id)).toEqual([
      none,
      later,
      late,
    ]);
    shop.setClock('2026-03-02T20:00:00.000Z');
  });

  test('a machine known by its serial number is not added twice, however it is typed', async () => {
    const intake = plainIntake(shop.by);
    const before = shop.contents();
    await expect(
      shop.desk.counter.takeIn({
        ...intake,
        machine: { ...intake.machine, make: 'FURROWMASTER', serial: `fm5-${serial}` },
      }),
    ).rejects.toMatchObject({ code: 'SERIAL_TAKEN', defined: true });
    expect(shop.contents()).toBe(before);
  });

  test('a machine that changed hands keeps its history, and only when somebody says so', async () => {
    const { desk, by } = shop;
    const { machineDetails } = await desk.counter.job({ id: jobId });
    const intake = {
      ...plainIntake(by),
      customer: { which: 'new' as const, name: 'Omar Haddad' },
      signature: typed('Omar Haddad'),
    };
    const known = { which: 'known' as const, id: machineDetails.id };
    await expect(desk.counter.takeIn({ ...intake, machine: known })).rejects.toMatchObject({
      code: 'OWNED_BY_ANOTHER',
      defined: true,
      data: { customerName: 'Greta Lindqvist' },
    });
    const given = { ...known, changedHands: true };
    const { code } = await desk.counter.job({ id: jobId });
    await expect(desk.counter.takeIn({ ...intake, machine: given })).rejects.toMatchObject({
      code: 'ALREADY_IN_THE_SHOP',
      defined: true,
      data: { jobCode: code },
    });
    const taken = await desk.counter.takeIn({
      ...intake,
      machine: { ...given, takeInAgain: true },
    });
    expect(await desk.counter.job({ id: taken.jobId })).toMatchObject({
      customer: { name: 'Omar Haddad' },
      machineDetails: { id: machineDetails.id, customerName: 'Omar Haddad' },
    });
    expect(await desk.counter.job({ id: jobId })).toMatchObject({
      customer: { name: 'Greta Lindqvist' },
    });
  });

  test('a date that is past can’t be promised, and the customer is not added by halves', async () => {
    const intake = plainIntake(shop.by);
    const before = shop.contents();
    await expect(
      shop.desk.counter.takeIn({
        ...intake,
        machine: { ...intake.machine, serial: 'another' },
        promisedFor: '2026-03-01',
      }),
    ).rejects.toMatchObject({ code: 'PROMISED_IN_THE_PAST', defined: true });
    expect(shop.contents()).toBe(before);
  });

  test('somebody who doesn’t work here takes nothing in', async () => {
    const stranger = '01900000-0000-7000-8000-000000000000' as typeof shop.by;
    await expect(shop.desk.counter.takeIn(plainIntake(stranger))).rejects.toMatchObject({
      code: 'STAFF_UNKNOWN',
      defined: true,
    });
  });
});

describe('the approved amount is a limit', () => {
  test('the spending limit agreed at intake counts as the first approval', async () => {
    await estimated(6_000);
    const account = await shop.desk.till.issueInvoice({ by: shop.by, jobId });
    expect(account).toMatchObject({ approvedLimit: 10_000, invoice: { totals: { total: 9_000 } } });
  });

  test('a bill above it is refused, and no invoice number is used up', async () => {
    await approved(11_999);
    const before = shop.contents();
    await expect(shop.desk.till.issueInvoice({ by: shop.by, jobId })).rejects.toMatchObject({
      code: 'OVER_APPROVAL',
      defined: true,
      data: { total: 12_000, limit: 11_999, over: 1 },
    });
    expect(shop.contents()).toBe(before);
  });

  test('the latest approval holds, higher or lower', async () => {
    await approved(20_000);
    const account = await approved(9_000);
    expect(account.approvedLimit).toBe(9_000);
  });

  test('an old revision can’t be approved once there is a newer one', async () => {
    const first = await estimated();
    await estimated(9_000);
    await expect(
      shop.desk.till.approve({
        by: shop.by,
        jobId,
        estimateId: first,
        how: 'telephone',
        approvedBy: 'Greta Lindqvist',
        amount: 12_000,
      }),
    ).rejects.toMatchObject({ code: 'ESTIMATE_SUPERSEDED', defined: true });
  });

  test('in person it is signed', async () => {
    await expect(
      shop.desk.till.approve({
        by: shop.by,
        jobId,
        estimateId: await estimated(),
        how: 'in-person',
        approvedBy: 'Greta Lindqvist',
        amount: 12_000,
      }),
    ).rejects.toMatchObject({ code: 'SIGNATURE_WANTED', defined: true });
  });
});

describe('hold points', () => {
  test('keep a built job from being called ready', async () => {
    const { desk, by } = shop;
    await approved(12_000);
    await desk.counter.moveJob({ by, jobId, to: 'on-the-bench' });
    await expect(desk.counter.moveJob({ by, jobId, to: 'ready' })).rejects.toMatchObject({
      code: 'HOLD_POINT_OPEN',
      defined: true,
      data: { open: expect.arrayContaining([expect.stringContaining('Flywheel key')]) },
    });
    await overrideEverything();
    expect(await desk.counter.moveJob({ by, jobId, to: 'ready' })).toMatchObject({
      state: 'ready',
    });
  });

  test('one that asks for readings is not passed without them', async () => {
    await expect(
      shop.desk.bench.passHoldPoint({ by: shop.by, jobId, key: 'air-gap' }),
    ).rejects.toMatchObject({
      code: 'READINGS_MISSING',
      defined: true,
      data: { features: ['Coil air gap'] },
    });
  });

  test('reopened after ready, the job is not handed over', async () => {
    const { desk, by } = shop;
    await readyAndPaid();
    await desk.bench.reopenHoldPoint({ by, jobId, key: 'oil', reason: 'Level was low' });
    await expect(handOver()).rejects.toMatchObject({
      code: 'NOT_SETTLED',
      defined: true,
      data: { open: [{ key: 'hold-points', items: [expect.stringContaining('Oil filled')] }] },
    });
  });
});

describe('handover', () => {
  test('says all that is not settled at once', async () => {
    const { desk, by } = shop;
    await approved(12_000);
    await desk.counter.moveJob({ by, jobId, to: 'on-the-bench' });
    const refused = (...keys: string[]) =>
      expect(handOver()).rejects.toMatchObject({
        code: 'NOT_SETTLED',
        defined: true,
        data: { open: keys.map((key) => ({ key })) },
      });
    await refused('state', 'hold-points', 'invoice');
    await overrideEverything();
    await refused('state', 'invoice');
    await desk.counter.moveJob({ by, jobId, to: 'ready' });
    await desk.till.issueInvoice({ by, jobId });
    await refused('due');
  });

  test('goes out with what is not settled only when somebody wrote why, which both sign', async () => {
    const { desk, by } = shop;
    const seal = await desk.parts.add({
      by,
      number: `HO-${serial}`,
      description: 'Oil seal',
      price: 900,
    });
    await desk.parts.move({ by, partId: seal.id, kind: 'received', quantity: 1_000 });
    await approved(12_000);
    await desk.counter.moveJob({ by, jobId, to: 'on-the-bench' });
    await overrideEverything();
    await desk.counter.moveJob({ by, jobId, to: 'ready' });
    await desk.till.issueInvoice({
      by,
      jobId,
      lines: [
        { kind: 'part', description: 'Oil seal', partId: seal.id, quantity: 1_000, unitPrice: 900 },
      ],
    });
    await desk.till.takePayment({ by, jobId, kind: 'payment', method: 'cash', amount: 900 });
    await expect(handOver()).rejects.toMatchObject({
      data: { open: [{ key: 'parts-billed', items: [`1 pc HO-${serial} Oil seal`] }] },
    });
    const before = shop.contents();
    const withReason = (reason: string) =>
      desk.counter.handOver({
        by,
        jobId,
        workDone: 'Seal fitted.',
        passedOver: [{ matter: 'parts-billed', reason }],
        customerSignature: typed('Greta Lindqvist'),
        shopSignature: typed('Ruth Okafor'),
      });
    await expect(withReason('later')).rejects.toMatchObject({ code: 'BAD_INPUT' });
    expect(shop.contents()).toBe(before);
    const reason = 'She fitted it herself and will bring the box.';
    const { job, workOrder } = await withReason(reason);
    expect(job.passedOver).toMatchObject([{ matter: 'parts-billed', reason }]);
    const { content } = await desk.office.paper({ id: workOrder.id });
    expect(JSON.parse(content)).toMatchObject({
      passedOver: [{ items: [`1 pc HO-${serial} Oil seal`], reason }],
    });
    // It is billed still, and still on the shelf for it: the list says so, with the reason.
    expect(await desk.parts.billedNotIssued({})).toMatchObject([
      {
        jobId,
        state: 'handed-over',
        passedOver: reason,
        parts: [{ quantity: 1_000, onShelf: 1_000 }],
      },
    ]);
    expect(await desk.parts.jobParts({ jobId })).toMatchObject({
      billed: true,
      parts: [{ needed: 1_000, promised: 1_000, open: 1_000, missing: 0 }],
    });
    await desk.parts.issue({ by, jobId, number: `HO-${serial}` });
    expect(await desk.parts.billedNotIssued({})).toEqual([]);
    await expect(desk.parts.issue({ by, jobId, number: `HO-${serial}` })).rejects.toMatchObject({
      code: 'JOB_CLOSED',
    });
  });

  test('leaves a work order that comes out byte for byte the same', async () => {
    const { desk, by } = shop;
    await readyAndPaid();
    const { job, workOrder } = await handOver();
    expect(job.state).toBe('handed-over');
    const first = await desk.office.paper({ id: workOrder.id });
    // The heading of the shop changes; what was signed doesn't.
    const { ...facts } = await desk.office.shop({});
    await desk.office.setShop({ by, ...facts, name: 'Millbrook Engines & Sons' });
    const second = await desk.office.paper({ id: workOrder.id });
    expect(second.pdf).toBe(first.pdf);
    expect(createHash('sha256').update(Buffer.from(second.pdf, 'base64')).digest('hex')).toBe(
      first.pdfSha256,
    );
  });

  test('is found by the number of a paper in the customer’s hand', async () => {
    await readyAndPaid();
    const { job, workOrder } = await handOver();
    const { number } = workOrder;
    for (const text of [number, number.toLowerCase(), `w${Number(number.slice(2))}`]) {
      const hits = await shop.desk.counter.search({ text });
      expect(hits, text).toContainEqual(
        expect.objectContaining({ kind: 'job', reference: job.code }),
      );
    }
    const estimate = job.papers.find(({ kind }) => kind === 'estimate')?.number ?? '';
    expect(estimate).toMatch(/^E-\d{6}-1$/);
    for (const text of [estimate, estimate.slice(0, -2)])
      expect(await shop.desk.counter.search({ text })).toHaveLength(1);
  });

  test('closes the record: nothing is measured, estimated or moved afterwards', async () => {
    const { desk, by } = shop;
    await readyAndPaid();
    await handOver();
    const closed = [
      desk.bench.record({
        by,
        jobId,
        feature: 'plug-gap',
        place: 'c1-only',
        phase: 'final',
        text: '0.7',
        unit: 'mm',
      }),
      desk.bench.overrideHoldPoint({
        by,
        jobId,
        key: 'oil',
        reason: 'Too late: it is gone already.',
      }),
      desk.till.writeEstimate({ by, jobId, lines: [labour(1)] }),
    ];
    for (const call of closed) await expect(call).rejects.toMatchObject({ code: 'JOB_CLOSED' });
    await expect(
      desk.counter.moveJob({ by, jobId, to: 'on-the-bench', note: 'again' }),
    ).rejects.toMatchObject({ code: 'MOVE_REFUSED' });
  });

  test('a job that was stopped goes out unbuilt, with what is owed settled or explained', async () => {
    const { desk, by } = shop;
    await desk.counter.moveJob({ by, jobId, to: 'stopped', note: 'Not worth it' });
    const { workOrder } = await handOver();
    expect(workOrder.kind).toBe('work-order');
  });
});

describe('payments', () => {
  test('a deposit is held before the invoice and comes off what is due', async () => {
    const { desk, by } = shop;
    await desk.till.takePayment({ by, jobId, kind: 'deposit', method: 'card', amount: 5_000 });
    await approved(12_000);
    expect(await desk.till.issueInvoice({ by, jobId })).toMatchObject({ due: 7_000 });
    await expect(
      desk.till.takePayment({ by, jobId, kind: 'payment', method: 'cash', amount: 7_001 }),
    ).rejects.toMatchObject({ code: 'OVERPAID', data: { due: 7_000 } });
    await expect(
      desk.till.takePayment({ by, jobId, kind: 'refund', method: 'cash', amount: 1 }),
    ).rejects.toMatchObject({ code: 'NOTHING_TO_REFUND', data: { free: 0 } });
  });

  test('nothing is paid on an invoice that isn’t there', async () => {
    await expect(
      shop.desk.till.takePayment({
        by: shop.by,
        jobId,
        kind: 'payment',
        method: 'cash',
        amount: 1,
      }),
    ).rejects.toMatchObject({ code: 'NOT_INVOICED', defined: true });
  });
});

test('the journal tells of all of it, and its chain holds', async () => {
  expect(await shop.desk.office.verifyJournal({})).toMatchObject({
    intact: true,
    firstBroken: null,
  });
});
test('every specification that a test shop holds has its source', async () => {
  const { airGap } = await addCorvane(shop);
  expect(airGap).toMatchObject({ standing: 'single-source', page: '41' });
});
