import { eq } from 'drizzle-orm';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { issuedPaper } from '../../db/schema/index.ts';
import { fingerprintOf } from '../../electron/paper/index.ts';
import type { JobDossier } from '../../shared/contract/counter/index.ts';
import type { JobId } from '../../shared/contract/ids.ts';
import { openTestShop, plainIntake, type TestShop, typed } from './shop.ts';

/** What is mended or promised anew after intake. */

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop();
});
afterAll(() => shop.close());

let serial = 0;
async function takenIn(): Promise<JobId> {
  serial += 1;
  const intake = plainIntake(shop.by);
  const machine = { ...intake.machine, serial: `FM-9 Q${serial}Z` };
  const { jobId } = await shop.desk.counter.takeIn({ ...intake, machine });
  return jobId;
}

const job = (id: JobId) => shop.desk.counter.job({ id });
const papers = async (id: JobId) => (await job(id)).papers.map(({ number }) => number);
/** What the journal says last. */
const lastNote = async () => {
  const [entry] = await shop.desk.office.journal({ limit: 1 });
  return { what: entry?.what, detail: JSON.parse(entry?.detail ?? '{}') };
};
const numberOf = ({ number }: JobDossier) => String(number).padStart(6, '0');

describe('a promise', () => {
  test('is moved with a reason, and every day that was promised stays on record', async () => {
    const { desk, by } = shop;
    const jobId = await takenIn();
    const move = (promisedFor: string, told: 'telephone' | null, reason = 'Rings are late') =>
      desk.counter.movePromise({ by, jobId, promisedFor, reason, told });
    await move('2026-03-27', 'telephone');
    const { job: moved, tag } = await move('2026-04-03', null, 'Rod is late, too');
    expect(moved).toMatchObject({
      promisedFor: '2026-04-03',
      promiseMoved: 2,
      customerToTell: true,
      promises: [
        { promisedFor: '2026-03-27', former: '2026-03-20', told: { how: 'telephone' } },
        { promisedFor: '2026-04-03', former: '2026-03-27', told: null, reason: 'Rod is late, too' },
      ],
    });
    expect(tag?.number).toBe(`T-${numberOf(moved)}-3`);
    expect((await desk.counter.day({})).toTell.map(({ id }) => id)).toEqual([jobId]);

    const [first, last] = moved.promises;
    if (first === undefined || last === undefined) throw new Error('There are no promises.');
    const tell = (promiseId: typeof last.id) =>
      desk.counter.tellPromise({ by, promiseId, how: 'text' });
    expect(await tell(last.id)).toMatchObject({ customerToTell: false });
    await expect(tell(last.id)).rejects.toMatchObject({ code: 'TOLD_ALREADY', defined: true });
    expect((await desk.counter.day({})).toTell).toEqual([]);
    const { job: again } = await move('2026-04-10', null);
    await move('2026-04-17', null);
    const passed = again.promises.at(-1);
    if (passed === undefined) throw new Error('There is no promise.');
    await expect(tell(passed.id)).rejects.toMatchObject({ code: 'PROMISE_MOVED_SINCE' });
  });

  test('is not given for a day that is past, for the same day, or for a job that is closed', async () => {
    const { desk, by } = shop;
    const jobId = await takenIn();
    const before = shop.contents();
    const move = (promisedFor: string) =>
      desk.counter.movePromise({ by, jobId, promisedFor, reason: 'No reason', told: null });
    await expect(move('2026-03-01')).rejects.toMatchObject({ code: 'PROMISED_IN_THE_PAST' });
    await expect(move('2026-03-20')).rejects.toMatchObject({ code: 'SAME_DAY' });
    expect(shop.contents()).toBe(before);
    await closed(jobId);
    await expect(move('2026-05-01')).rejects.toMatchObject({ code: 'JOB_CLOSED' });
  });

  test('that nobody told the customer of is no longer asked about once the machine is ready', async () => {
    const { desk, by } = shop;
    const jobId = await takenIn();
    const promisedFor = '2026-04-24';
    await desk.counter.movePromise({ by, jobId, promisedFor, reason: 'Sick', told: null });
    await desk.counter.moveJob({ by, jobId, to: 'stopped', note: 'They want it back' });
    expect(await job(jobId)).toMatchObject({ customerToTell: false, promises: [{ told: null }] });
  });
});

/** The job stopped and its machine handed back. */
async function closed(jobId: JobId) {
  const { desk, by } = shop;
  await desk.counter.moveJob({ by, jobId, to: 'stopped', note: 'They want it back' });
  await desk.counter.handOver({
    by,
    jobId,
    workDone: 'Nothing',
    customerSignature: typed('Greta Lindqvist'),
    shopSignature: typed('Ruth Okafor'),
  });
}

describe('the plates of a machine', () => {
  const plates = ({ machineDetails: { engine, ...machine } }: JobDossier) => ({
    id: machine.id,
    kind: machine.kind,
    make: machine.make,
    model: machine.model,
    serial: machine.serial,
    engine: {
      make: engine.make,
      model: engine.model,
      typeCode: engine.typeCode,
      serial: engine.serial,
      dateCode: engine.dateCode,
    },
  });

  test('are mended: it is found by the new number, papers stay, an open job gets a new tag', async () => {
    const { desk, by } = shop;
    const jobId = await takenIn();
    const before = await job(jobId);
    const was = plates(before);
    const { machine, tags } = await desk.counter.amendMachine({
      by,
      ...was,
      serial: 'FM-9 77-A',
      engine: { ...was.engine, typeCode: 'B2' },
    });
    expect(machine).toMatchObject({ serial: 'FM-9 77-A', engine: { typeCode: 'B2' } });
    expect(tags.map(({ number }) => number)).toEqual([`T-${numberOf(before)}-2`]);
    expect(await lastNote()).toEqual({
      what: 'counter.amendMachine',
      detail: { machine: was.id, serial: `${was.serial} → FM-9 77-A`, typeCode: '– → B2' },
    });
    expect((await desk.counter.jobs({ text: 'fm977a' })).map(({ id }) => id)).toEqual([jobId]);
    expect(await desk.counter.jobs({ text: was.serial })).toEqual([]);
    const after = await job(jobId);
    expect(after.papers.slice(0, 2)).toEqual(before.papers);
  });

  test('can’t be those of another machine, and what is right already is not mended', async () => {
    const { desk, by } = shop;
    const one = await job(await takenIn());
    const other = await job(await takenIn());
    const before = shop.contents();
    await expect(
      desk.counter.amendMachine({ by, ...plates(other), serial: one.machineDetails.serial }),
    ).rejects.toMatchObject({
      code: 'SERIAL_TAKEN',
      data: { machineId: one.machineDetails.id },
    });
    await expect(desk.counter.amendMachine({ by, ...plates(one) })).rejects.toMatchObject({
      code: 'NOTHING_CHANGED',
    });
    expect(shop.contents()).toBe(before);
  });
});

describe('what intake wrote down', () => {
  const facts = (of: JobDossier) => ({
    complaint: of.complaint,
    symptoms: of.symptoms,
    condition: of.condition,
    leftWith: of.leftWith,
    fuel: of.fuel,
    lastService: of.lastService,
    engineHours: of.engineHours,
    reachBy: of.reachBy,
  });

  test('is mended by a new claim ticket that names the signed one, which stays as it was', async () => {
    const { desk, by } = shop;
    const jobId = await takenIn();
    const before = await job(jobId);
    const [ticket] = before.papers;
    if (ticket === undefined) throw new Error('There is no claim ticket.');
    const signed = await desk.office.paper({ id: ticket.id });
    const {
      claimTicket,
      tag,
      job: after,
    } = await desk.counter.amendIntake({
      by,
      jobId,
      ...facts(before),
      complaint: 'Knocks, no smoke at all',
      leftWith: ['Key', 'Bag'],
      reason: 'The customer rang: it was the other machine that smokes',
    });
    const code = numberOf(before);
    expect([claimTicket?.number, tag?.number]).toEqual([`C-${code}-2`, `T-${code}-2`]);
    expect(after).toMatchObject({
      complaint: 'Knocks, no smoke at all',
      leftWith: ['Key', 'Bag'],
      amendments: [{ by: 'Ruth Okafor', reason: expect.stringMatching(/^The customer rang/) }],
    });
    expect(await desk.office.paper({ id: ticket.id })).toEqual(signed);
    const content = contentOf(`C-${code}-2`);
    expect(content).toMatchObject({
      signature: null,
      corrects: { number: `C-${code}`, fingerprint: ticket.fingerprint },
    });
    expect(fingerprintOf(content)).toBe(claimTicket?.fingerprint);
    expect((await desk.counter.jobs({ text: 'no smoke at all' })).map(({ id }) => id)).toEqual([
      jobId,
    ]);
    expect((await lastNote()).detail).toMatchObject({
      complaint: 'Smokes, no power uphill → Knocks, no smoke at all',
      leftWith: '– → Key, Bag',
    });
  });

  test('gets a paper only when what stands on it changed, or somebody signs it', async () => {
    const { desk, by } = shop;
    const jobId = await takenIn();
    const before = await job(jobId);
    const mend = (more: object) =>
      desk.counter.amendIntake({ by, jobId, ...facts(before), reason: 'Wrong', ...more });
    await expect(mend({})).rejects.toMatchObject({ code: 'NOTHING_CHANGED', defined: true });
    const hours = await mend({ engineHours: 210 });
    expect(hours).toMatchObject({ claimTicket: null, tag: null, job: { engineHours: 210 } });
    const fuel = await mend({ engineHours: 210, fuel: 'Half full, last year’s' });
    expect([fuel.claimTicket === null, fuel.tag]).toEqual([false, null]);
    const signature = typed('Greta Lindqvist');
    await mend({ engineHours: 210, fuel: 'Half full, last year’s', signature });
    const code = numberOf(before);
    expect(await papers(jobId)).toEqual([`C-${code}`, `T-${code}`, `C-${code}-2`, `C-${code}-3`]);
    expect(contentOf(`C-${code}-3`)).toMatchObject({
      signature: { name: 'Greta Lindqvist' },
      corrects: { number: `C-${code}-2` },
    });
    await closed(jobId);
    await expect(mend({ fuel: 'None' })).rejects.toMatchObject({ code: 'JOB_CLOSED' });
  });
});

test('a customer who is called otherwise is found by the new name, with machines and jobs', async () => {
  const { desk, by } = shop;
  const jobId = await takenIn();
  const { customer, machineDetails } = await job(jobId);
  const { id, phone, email, address, reachBy, note } = customer;
  const name = 'Greta Quistgaard';
  await desk.counter.reviseCustomer({ by, id, name, phone, email, address, reachBy, note });
  const hits = await desk.counter.search({ text: 'quistgaard' });
  expect(hits.map((hit) => hit.id)).toEqual(expect.arrayContaining([jobId, id, machineDetails.id]));
});

/** What a paper says, by its number. */
function contentOf(number: string) {
  const row = shop.context.store.read
    .select()
    .from(issuedPaper)
    .where(eq(issuedPaper.number, number))
    .get();
  return JSON.parse(row?.content ?? 'null');
}
