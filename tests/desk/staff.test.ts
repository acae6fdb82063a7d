import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Staff } from '../../shared/contract/office.ts';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

/** Who works here, who decides, and what becomes of both. */

let shop: TestShop;
let ada: Staff;
beforeAll(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  ada = await desk.office.addStaff({ by, name: 'Ada Quist', role: 'bench' });
});
afterAll(() => shop.close());

const person = async (name: string) => {
  const found = (await shop.desk.office.staff({})).find((each) => each.name === name);
  if (found === undefined) throw new Error(`Nobody is called ${name}.`);
  return found;
};

test('only an owner changes the shop, the staff list, and who is an owner', async () => {
  const { desk } = shop;
  const by = ada.id;
  const before = shop.contents();
  const facts = await desk.office.shop({});
  const asked = [
    desk.office.setShop({ ...facts, by, name: 'Quist Engines' }),
    desk.office.amendStaff({ ...ada, by, role: 'owner' }),
    desk.office.addStaff({ by, name: 'Ada’s friend', role: 'owner' }),
  ];
  for (const call of asked)
    await expect(call).rejects.toMatchObject({ code: 'OWNER_WANTED', defined: true });
  expect(shop.contents()).toBe(before);
});

test('somebody who is called otherwise keeps what they did, and papers keep the name they had', async () => {
  const { desk, by } = shop;
  const { claimTicket } = await desk.counter.takeIn({ ...plainIntake(ada.id) });
  const paper = await desk.office.paper({ id: claimTicket.id });
  await desk.office.amendStaff({ ...ada, by, name: 'Ada Bell', role: 'counter' });
  expect(await person('Ada Bell')).toMatchObject({ id: ada.id, role: 'counter', active: true });
  const after = await desk.office.paper({ id: claimTicket.id });
  expect([after.pdf, after.fingerprint]).toEqual([paper.pdf, paper.fingerprint]);
  const [entry] = await desk.office.journal({ limit: 1 });
  expect(JSON.parse(entry?.detail ?? '{}')).toMatchObject({
    name: 'Ada Quist → Ada Bell',
    role: 'bench → counter',
  });
  await expect(desk.office.amendStaff({ ...ada, by, name: 'Ruth Okafor' })).rejects.toMatchObject({
    code: 'STAFF_NAME_TAKEN',
  });
});

test('somebody who leaves writes nothing more, and their clock is stopped first', async () => {
  const { desk, by } = shop;
  const ada = await person('Ada Bell');
  const intake = plainIntake(by);
  const machine = { ...intake.machine, serial: 'FM-5 0077' };
  const { jobId, code } = await desk.counter.takeIn({ ...intake, machine });
  const clock = await desk.till.clockOn({ by, staffId: ada.id, jobId });
  const leave = () => desk.office.amendStaff({ ...ada, by, active: false });
  await expect(leave()).rejects.toMatchObject({
    code: 'CLOCK_STILL_RUNS',
    data: { jobCode: code },
  });
  await desk.till.clockOff({ by, entryId: clock.id });
  expect(await leave()).toMatchObject({ active: false });
  await expect(desk.counter.addCustomer({ by: ada.id, name: 'Nobody' })).rejects.toMatchObject({
    code: 'STAFF_UNKNOWN',
  });
  expect(await desk.office.amendStaff({ ...ada, by, active: true })).toMatchObject({
    active: true,
  });
});

test('a shop keeps an owner who works here', async () => {
  const { desk, by } = shop;
  const ruth = await person('Ruth Okafor');
  const ada = await person('Ada Bell');
  for (const change of [{ active: false }, { role: 'bench' as const }])
    await expect(desk.office.amendStaff({ ...ruth, by, ...change })).rejects.toMatchObject({
      code: 'LAST_OWNER',
      defined: true,
    });
  await desk.office.amendStaff({ ...ada, by, role: 'owner' });
  expect(await desk.office.amendStaff({ ...ruth, by, active: false })).toMatchObject({
    active: false,
  });
  await expect(
    desk.office.amendStaff({ ...ada, by: ada.id, role: 'counter' }),
  ).rejects.toMatchObject({ code: 'LAST_OWNER' });
});

test('two taxes of one name that fall on the same bill are refused where they stand', async () => {
  const { desk } = shop;
  const { id: by } = await person('Ada Bell');
  const facts = await desk.office.shop({});
  const tax = { name: 'State tax', ratePpm: 62_500, kinds: ['part' as const] };
  await expect(
    desk.office.setShop({ ...facts, by, taxes: [tax, { ...tax, name: 'state TAX' }] }),
  ).rejects.toMatchObject({
    code: 'BAD_INPUT',
    data: { issues: [{ path: 'taxes.1.name', message: expect.stringMatching(/^Another tax/) }] },
  });
  const taxes = [
    { ...tax, until: '2026-06-30' },
    { ...tax, ratePpm: 65_000, from: '2026-07-01' },
  ];
  expect((await desk.office.setShop({ ...facts, by, taxes })).taxes).toHaveLength(2);
});
