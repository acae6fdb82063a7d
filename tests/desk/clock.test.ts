import { afterAll, beforeAll, expect, test } from 'vitest';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

let shop: TestShop;
let first: string;
let second: string;

beforeAll(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  first = (await desk.counter.takeIn({ ...plainIntake(by), spendingLimit: null })).jobId;
  const { customerId, machineId } = await desk.counter.takeIn({
    ...plainIntake(by),
    machine: { ...plainIntake(by).machine, serial: 'FM-5 0043' },
  });
  second = (
    await desk.counter.takeIn({
      ...plainIntake(by),
      customer: { which: 'known', id: customerId },
      machine: { which: 'known', id: machineId, takeInAgain: true },
    })
  ).jobId;
});
afterAll(() => shop.close());

/** The clock of the shop's wall on a day of March 2026, six hours behind UTC (five from the 8th). */
const wall = (day: number, hour: number, minute = 0) =>
  new Date(Date.UTC(2026, 2, day, hour + (day < 8 ? 6 : 5), minute)).toISOString();

test('a person works on one job at a time: to go over stops the other clock', async () => {
  const { desk, by } = shop;
  shop.setClock(wall(3, 8));
  const on = await desk.till.clockOn({ by, staffId: by, jobId: first });
  expect(on).toMatchObject({ startedAt: wall(3, 8, 1), endedAt: null, minutes: 0 });
  await expect(desk.till.clockOn({ by, staffId: by, jobId: first })).rejects.toMatchObject({
    code: 'CLOCKED_ON_ALREADY',
  });
  shop.setClock(wall(3, 9, 30));
  await expect(desk.till.clockOn({ by, staffId: by, jobId: second })).rejects.toMatchObject({
    code: 'CLOCK_RUNS',
    data: { entryId: on.id, jobCode: on.jobCode, since: on.startedAt },
  });
  expect(await desk.till.runningClocks({})).toHaveLength(1);
  shop.setClock(wall(3, 10));
  await desk.till.clockOn({ by, staffId: by, jobId: second, goesOver: true });
  const running = await desk.till.runningClocks({});
  expect(running).toMatchObject([{ jobId: second, startedAt: wall(3, 10, 1) }]);
  expect((await desk.till.clockedOnJob({ jobId: first })).entries).toMatchObject([
    { id: on.id, endedAt: wall(3, 10, 1), minutes: 120 },
  ]);
  shop.setClock(wall(3, 10, 45));
  const off = await desk.till.clockOff({ by, entryId: running[0]?.id ?? '' });
  expect(off).toMatchObject({ endedAt: wall(3, 10, 46), minutes: 45 });
  await expect(desk.till.clockOff({ by, entryId: off.id })).rejects.toMatchObject({
    code: 'CLOCK_STOPPED',
  });
});

test('a forgotten clock is asked about before anything else', async () => {
  const { desk, by } = shop;
  shop.setClock(wall(4, 15));
  const { id } = await desk.till.clockOn({ by, staffId: by, jobId: first });
  shop.setClock(wall(5, 8));
  expect(await desk.till.runningClocks({})).toMatchObject([{ id, forgotten: 'earlier-day' }]);
  const forgotten = { code: 'CLOCK_FORGOTTEN', data: { entryId: id } };
  await expect(desk.till.clockOff({ by, entryId: id })).rejects.toMatchObject(forgotten);
  await expect(
    desk.till.clockOn({ by, staffId: by, jobId: second, goesOver: true }),
  ).rejects.toMatchObject(forgotten);
  for (const endedAt of [wall(4, 14), wall(5, 23)])
    await expect(desk.till.clockOff({ by, entryId: id, endedAt })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { issues: [{ path: 'endedAt' }] },
    });
  const stopped = await desk.till.clockOff({ by, entryId: id, endedAt: wall(4, 17, 1) });
  expect(stopped).toMatchObject({ minutes: 120, forgotten: null });
});

test('corrections keep what stood before, with who and why', async () => {
  const { desk, by } = shop;
  shop.setClock(wall(6, 18));
  const entered = await desk.till.enterHours({
    by,
    staffId: by,
    jobId: first,
    startedAt: wall(6, 13),
    endedAt: wall(6, 14),
    reason: 'Forgot to clock on',
  });
  const again = { by, staffId: by, jobId: second, reason: 'Twice' };
  await expect(
    desk.till.enterHours({ ...again, startedAt: wall(6, 13, 30), endedAt: wall(6, 15) }),
  ).rejects.toMatchObject({ code: 'CLOCKED_TWICE', data: { startedAt: wall(6, 13) } });
  const corrected = await desk.till.correctHours({
    by,
    entryId: entered.id,
    jobId: second,
    startedAt: wall(6, 13, 10),
    endedAt: wall(6, 14, 30),
    reason: 'Wrong tag, and it took longer',
  });
  expect(corrected).toMatchObject({ jobId: second, minutes: 80 });
  expect(corrected.changes.map(({ what, reason, by: name }) => [what, reason, name])).toEqual([
    ['on', 'Forgot to clock on', 'Ruth Okafor'],
    ['corrected', 'Wrong tag, and it took longer', 'Ruth Okafor'],
  ]);
  await desk.till.enterHours({ ...again, startedAt: wall(6, 13), endedAt: wall(6, 13, 10) });
  await expect(
    desk.till.correctHours({
      by,
      entryId: entered.id,
      jobId: second,
      startedAt: wall(6, 13),
      endedAt: wall(6, 14),
      reason: 'Earlier',
    }),
  ).rejects.toMatchObject({ code: 'CLOCKED_TWICE' });
  const struck = await desk.till.strikeOutHours({ by, entryId: entered.id, reason: 'Not ours' });
  expect(struck).toMatchObject({ struckOut: true });
  await expect(
    desk.till.strikeOutHours({ by, entryId: entered.id, reason: 'Again' }),
  ).rejects.toMatchObject({ code: 'STRUCK_OUT' });
  const { entries, minutes } = await desk.till.clockedOnJob({ jobId: second });
  expect(entries).toHaveLength(3);
  expect(minutes).toBe(45 + 10);
});

test('hours stand by person and day, struck-out ones beside them and not in them', async () => {
  const { desk, by } = shop;
  const wren = await desk.office.addStaff({ by, name: 'Wren', role: 'bench' });
  shop.setClock(wall(9, 12));
  await desk.till.enterHours({
    by,
    staffId: wren.id,
    jobId: first,
    startedAt: wall(6, 22, 30),
    endedAt: wall(7, 1),
    reason: 'Generator for the ferry',
  });
  const hours = await desk.till.clockedHours({ from: '2026-03-02', until: '2026-03-08' });
  const of = (name: string) => hours.people.find((person) => person.name === name);
  expect(of('Wren')).toMatchObject({ minutes: 150 });
  expect(of('Wren')?.days.map(({ minutes }) => minutes)).toEqual([0, 0, 0, 0, 90, 60, 0]);
  expect(of('Ruth Okafor')?.days.map(({ minutes }) => minutes)).toEqual([0, 165, 120, 0, 10, 0, 0]);
  expect(hours.entries.filter(({ struckOut }) => struckOut)).toHaveLength(1);
  const saturday = await desk.till.clockedHours({ from: '2026-03-07', until: '2026-03-07' });
  expect(saturday.entries).toMatchObject([{ staffName: 'Wren' }]);
  expect(saturday.people.map(({ minutes }) => minutes)).toEqual([0, 60]);
  await expect(
    desk.till.clockedHours({ from: '2026-03-08', until: '2026-03-02' }),
  ).rejects.toMatchObject({ code: 'BAD_INPUT' });
});

test('clocked time is offered as lines at the shop’s rate; a clock that runs is not in them', async () => {
  const { desk, by } = shop;
  await desk.office.setShop({ ...(await desk.office.shop({})), by, labourRate: 8400 });
  shop.setClock(wall(10, 8));
  await desk.till.clockOn({ by, staffId: by, jobId: first });
  shop.setClock(wall(10, 9));
  const { lines, minutes, billedHours } = await desk.till.clockedOnJob({ jobId: first });
  expect(lines).toMatchObject([
    { kind: 'labour', quantity: 6500, unitPrice: 8400, priceFrom: 'clocked-time' },
  ]);
  expect(minutes).toBe(390 + 60);
  expect(billedHours).toBe(0);
  const { totals } = await desk.till.price({ jobId: first, lines });
  expect(totals.subtotal).toBe(54_600);
});

test('an unknown kind of work is refused at its field', async () => {
  const { desk, by } = shop;
  await expect(
    desk.till.clockOn({ by, staffId: by, jobId: second, workKind: 'Gardening', goesOver: true }),
  ).rejects.toMatchObject({ code: 'BAD_INPUT', data: { issues: [{ path: 'workKind' }] } });
});
